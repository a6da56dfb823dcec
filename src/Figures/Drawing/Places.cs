using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>The floor, and whatever else a body rests on; how large each is, is drawn so, no source.</summary>
internal sealed class Places
{
    private const double Thick = 3,
        Thin = 1.5,
        WallHeight = 1.0,
        Beyond = 0.07,
        MatBeyond = 0.11;

    private readonly Camera camera;
    private readonly Walls walls;
    private readonly (SidedPart Part, Surface Surface, Spot At)[] resting;
    private readonly Posed[] both;

    private Places(Posed[] both, Camera camera)
    {
        (this.both, this.camera, walls) = (both, camera, both[0].Walls);
        resting =
        [
            .. from posed in both
            from contact in posed.Pose.Contacts.OfType<Contact.On>()
            from place in BodyParts.Resting(posed.Body, contact.Part)
            select (contact.Part, contact.Surface, place.At),
        ];
    }

    /// <summary>Behind the body.</summary>
    /// <param name="both">Start and end: what stands in one stands in the other.</param>
    public static IEnumerable<Shape> Of(Posed[] both, Camera camera)
    {
        var places = new Places(both, camera);
        return places.Mat().Concat(places.resting.Select(r => r.Surface).Distinct().Order().SelectMany(places.Shown));
    }

    /// <summary>From above nothing else says that somebody lies or sits on the floor.</summary>
    private IEnumerable<Shape> Mat()
    {
        if (!camera.IsFromAbove || both[0].Pose.Base.Position.HeightOf() != Height.Floor)
            yield break;
        var all = both.SelectMany(p => BodyParts.Everywhere(p.Body)).Select(p => p.At.At).ToArray();
        var (back, ahead) = (all.Min(p => p.X) - MatBeyond, all.Max(p => p.X) + MatBeyond);
        var (right, left) = (all.Min(p => p.Y) - Beyond, all.Max(p => p.Y) + Beyond);
        Spot[] corners =
        [
            new(back, right, 0),
            new(ahead, right, 0),
            new(ahead, left, 0),
            new(back, left, 0),
            new(back, right, 0),
        ];
        yield return new("", Tone.Place, corners.Select(camera.See).ToSeries(), Thin);
    }

    private IEnumerable<Shape> Shown(Surface surface)
    {
        var own = resting.Where(r => r.Surface == surface).ToArray();
        var at = own.Aggregate(default(Spot), (sum, r) => sum + r.At) * (1.0 / own.Length);
        var top = own.Max(r => r.At.Z) + Beyond;
        return surface switch
        {
            Surface.Step => [Box(at.X - 0.02, at.X + 0.28, at.Y, 0.2, 0, Walls.Step)],
            Surface.Chair => Chair(at),
            Surface.Table => Table(at, own.Any(r => r.Part.Part == BodyPart.Forearm) ? own.Max(r => r.At.X) - 0.01 : at.X + 0.3),
            Surface.Wall when !camera.IsFromFront => [Upright(at with { X = walls.Ahead }, top)],
            Surface.BackWall when !camera.IsFromFront => [Upright(at with { X = walls.Behind }, top)],
            Surface.SideWall when camera.IsFromFront =>
            [
                Upright(at with { Y = Skeleton.Sign(own[0].Part.Side) * walls.Beside }, top),
            ],
            Surface.Bar => [Line(new(at.X, -0.4, Walls.Bar), new(at.X, 0.4, Walls.Bar))],
            _ => [],
        };
    }

    private IEnumerable<Shape> Chair(Spot at)
    {
        yield return Box(at.X - 0.14, at.X + 0.12, at.Y, 0.13, Walls.Chair - 0.02, Walls.Chair);
        if (camera.IsFromAbove)
            yield break;
        // From the front the back legs and the back hide behind the body.
        var back = new Spot(at.X - 0.13, at.Y - 0.12, 0);
        yield return Line(back, back with { Z = camera.IsFromFront ? Walls.Chair : 0.5 });
        var ahead = new Spot(at.X + 0.11, at.Y + 0.12, 0);
        yield return Line(ahead, ahead with { Z = Walls.Chair });
    }

    /// <param name="edge">Where it ends ahead: a hand may hang over it.</param>
    private IEnumerable<Shape> Table(Spot at, double edge)
    {
        yield return Box(at.X - 0.12, edge, at.Y, 0.2, Walls.Table - 0.02, Walls.Table);
        if (!camera.IsFromAbove)
            yield return Line(new(edge - 0.03, at.Y, 0), new(edge - 0.03, at.Y, Walls.Table));
    }

    /// <summary>As high as whatever touches it, and no lower than somebody stands.</summary>
    private Shape Upright(Spot at, double top) =>
        camera.IsFromAbove
            ? Line(at with { Y = at.Y - 0.4 }, at with { Y = at.Y + 0.4 })
            : Line(at with { Z = 0 }, at with { Z = Math.Max(WallHeight, top) });

    private Shape Line(Spot from, Spot to) => new("", Tone.Place, [camera.See(from), camera.See(to)], Thick);

    /// <summary>A box as it is seen: its outline from that side.</summary>
    private Shape Box(double back, double ahead, double y, double half, double low, double high)
    {
        Spot[] corners =
            camera.IsFromAbove
                ? [new(back, y - half, 0), new(ahead, y - half, 0), new(ahead, y + half, 0), new(back, y + half, 0)]
            : camera.IsFromFront ? [new(0, y - half, low), new(0, y + half, low), new(0, y + half, high), new(0, y - half, high)]
            : [new(back, 0, low), new(ahead, 0, low), new(ahead, 0, high), new(back, 0, high)];
        return new("", Tone.Place, corners.Select(camera.See).ToSeries(), 1, IsFilled: true);
    }
}
