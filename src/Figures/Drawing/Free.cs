namespace Gradus.Figures;

/// <summary>How much room there is on paper.</summary>
internal static class Free
{
    /// <summary>How far the edge of the nearest shape is; below 0 on one.</summary>
    public static double Around(Seen at, IEnumerable<Shape> shapes) =>
        shapes.SelectMany(Lines).Select(l => Distance(at, l.From, l.To) - l.Half).DefaultIfEmpty(double.MaxValue).Min();

    private static IEnumerable<(Seen From, Seen To, double Half)> Lines(Shape shape)
    {
        for (var i = 0; i + 1 < shape.Points.Count; i++)
            yield return (shape.Points[i], shape.Points[i + 1], shape.Width / 2);
        if (shape.IsFilled)
            yield return (shape.Points[^1], shape.Points[0], shape.Width / 2);
    }

    private static double Distance(Seen at, Seen from, Seen to)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = (dx * dx) + (dy * dy);
        var share = length == 0 ? 0 : Math.Clamp((((at.X - from.X) * dx) + ((at.Y - from.Y) * dy)) / length, 0, 1);
        return from.Towards(to, share).DistanceTo(at);
    }
}
