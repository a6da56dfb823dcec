using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>The floor, and whatever else a body rests on.</summary>
internal static class Places
{
    private const double Thick = 3;

    /// <summary>Behind the body.</summary>
    /// <param name="both">Start and end: what stands in one stands in the other.</param>
    public static IEnumerable<Shape> Of(IReadOnlyList<Posed> both, Camera camera)
    {
        var contacts = both.SelectMany(p => p.Pose.Contacts.OfType<Contact.On>().Select(c => (Posed: p, Contact: c))).ToArray();
        var walls = both[0].Walls;
        foreach (var surface in contacts.Select(c => c.Contact.Surface).Distinct().Order())
        {
            var places = contacts
                .Where(c => c.Contact.Surface == surface)
                .SelectMany(c => BodyParts.Resting(c.Posed.Body, c.Contact.Part).Select(p => p.At))
                .ToArray();
            var middle = places.Aggregate(default(Spot), (sum, p) => sum + p) * (1.0 / places.Length);
            var side = contacts.First(c => c.Contact.Surface == surface).Contact.Part.Side;
            foreach (var shape in Of(surface, middle, walls, side, camera))
                yield return shape;
        }
    }

    private static IEnumerable<Shape> Of(Surface surface, Spot at, Walls walls, BodySide side, Camera camera)
    {
        switch (surface)
        {
            case Surface.Step:
                yield return Box(camera, at.X - 0.02, at.X + 0.28, at.Y, 0.2, 0, Walls.Step, filled: true);
                break;
            case Surface.Chair:
                yield return Box(camera, at.X - 0.14, at.X + 0.12, at.Y, 0.13, Walls.Chair - 0.02, Walls.Chair, filled: true);
                if (!camera.IsFromAbove)
                {
                    yield return Line(
                        camera,
                        new(at.X - 0.13, at.Y - 0.12, 0),
                        new(at.X - 0.13, at.Y - 0.12, camera.IsFromFront ? Walls.Chair : 0.5)
                    );
                    yield return Line(camera, new(at.X + 0.11, at.Y + 0.12, 0), new(at.X + 0.11, at.Y + 0.12, Walls.Chair));
                }

                break;
            case Surface.Table:
                yield return Box(camera, at.X - 0.12, at.X + 0.3, at.Y, 0.2, Walls.Table - 0.02, Walls.Table, filled: true);
                if (!camera.IsFromAbove)
                    yield return Line(camera, new(at.X + 0.27, at.Y, 0), new(at.X + 0.27, at.Y, Walls.Table));
                break;
            case Surface.Wall when !camera.IsFromFront:
                yield return Upright(camera, new(walls.Ahead, at.Y, 0));
                break;
            case Surface.BackWall when !camera.IsFromFront:
                yield return Upright(camera, new(walls.Behind, at.Y, 0));
                break;
            case Surface.SideWall when camera.IsFromFront:
                yield return Upright(camera, new(at.X, Skeleton.Sign(side) * walls.Beside, 0));
                break;
            case Surface.Bar:
                yield return Line(camera, new(at.X, -0.4, Walls.Bar), new(at.X, 0.4, Walls.Bar));
                break;
        }
    }

    private static Shape Upright(Camera camera, Spot foot) =>
        camera.IsFromAbove
            ? Line(camera, foot with { Y = foot.Y - 0.4 }, foot with { Y = foot.Y + 0.4 })
            : Line(camera, foot, foot with { Z = 1.0 });

    private static Shape Line(Camera camera, Spot from, Spot to) =>
        new("", Tone.Place, [camera.See(from), camera.See(to)], Thick);

    /// <summary>A box as it is seen: its outline from that side.</summary>
    private static Shape Box(
        Camera camera,
        double back,
        double ahead,
        double y,
        double half,
        double low,
        double high,
        bool filled
    )
    {
        Spot[] corners =
            camera.IsFromAbove
                ? [new(back, y - half, 0), new(ahead, y - half, 0), new(ahead, y + half, 0), new(back, y + half, 0)]
            : camera.IsFromFront ? [new(0, y - half, low), new(0, y + half, low), new(0, y + half, high), new(0, y - half, high)]
            : [new(back, 0, low), new(ahead, 0, low), new(ahead, 0, high), new(back, 0, high)];
        return new("", Tone.Place, corners.Select(camera.See).ToSeries(), 1, filled);
    }
}
