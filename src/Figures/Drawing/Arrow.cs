namespace Gradus.Figures;

/// <summary>A line with a head at its end.</summary>
internal static class Arrow
{
    private const double Width = 3.6,
        HeadLength = 11,
        HeadWidth = 6.5;

    /// <summary>What is shorter would be a head alone.</summary>
    private const double Shortest = 24;

    /// <summary>The same way, long enough to be seen and beside the body where there is room, for on the body it is hard to
    /// see.</summary>
    public static Seen[] Beside(Seen[] way, IReadOnlyList<Shape> body, Bounds bounds)
    {
        var length = way[0].DistanceTo(way[^1]);
        if (length < Shortest)
            way = [way[^1].Towards(way[0], Shortest / length), way[^1]];
        var best = (Way: way, Free: double.MinValue);
        foreach (var distance in new[] { 0.0, 10, 16, 22, 30 })
            for (var i = 0; i < (distance == 0 ? 1 : 16); i++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * i / 16);
                var moved = way.Select(p => new Seen(p.X + (cos * distance), p.Y + (sin * distance), p.Near)).ToArray();
                if (!moved.All(p => bounds.Holds(p, HeadWidth)))
                    continue;
                var free = Math.Min(moved.Min(p => Free.Around(p, body)) - HeadWidth, 2) - (distance * 0.2);
                if (free > best.Free + 1e-6)
                    best = (moved, free);
            }

        return best.Way;
    }

    public static IEnumerable<Shape> Along(IReadOnlyList<Seen> way)
    {
        var tip = way[^1];
        // The head looks where the way comes in, over its own length.
        var back = way.LastOrDefault(p => p.DistanceTo(tip) >= HeadLength, way[0]);
        var length = Math.Max(back.DistanceTo(tip), 0.001);
        var (x, y) = ((tip.X - back.X) / length, (tip.Y - back.Y) / length);
        var neck = new Seen(tip.X - (x * HeadLength), tip.Y - (y * HeadLength), tip.Near);
        var line = way.TakeWhile(p => p.DistanceTo(tip) > HeadLength).Append(neck).ToArray();
        if (line.Length > 1)
            yield return new("", Tone.Arrow, [.. line], Width);
        yield return new(
            "",
            Tone.Arrow,
            [
                tip,
                new(neck.X - (y * HeadWidth), neck.Y + (x * HeadWidth), tip.Near),
                new(neck.X + (y * HeadWidth), neck.Y - (x * HeadWidth), tip.Near),
            ],
            1,
            IsFilled: true
        );
    }
}
