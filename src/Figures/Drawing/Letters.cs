namespace Gradus.Figures;

/// <summary>Where the letter of the working side stands: beside what works, where most is free.</summary>
internal static class Letters
{
    private const double Half = 9;
    private const int Directions = 24;

    public static Seen Place(
        Skeleton body,
        IReadOnlyList<SidedPart> works,
        IEnumerable<Shape> shapes,
        Bounds bounds,
        Camera camera
    )
    {
        var part = works.Where(w => w.IsPaired).Select(w => (SidedPart?)w).FirstOrDefault()
            ?? new(BodyPart.Shoulder, BodySide.Working);
        var at = camera.See(BodyParts.Middle(body, part with { Side = BodySide.Working }));
        var all = shapes.ToArray();
        var best = (Place: at, Free: double.MinValue);
        foreach (var distance in new[] { 20.0, 26, 32, 40 })
            for (var i = 0; i < Directions; i++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * i / Directions);
                var place = new Seen(at.X + (cos * distance), at.Y + (sin * distance), 0);
                if (!bounds.Holds(place, Half))
                    continue;
                var free = Math.Min(Free.Around(place, all) - Half, 3) - (distance * 0.15);
                if (free > best.Free + 1e-6)
                    best = (place, free);
            }

        return best.Place;
    }
}
