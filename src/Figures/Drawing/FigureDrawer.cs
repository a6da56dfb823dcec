using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>Draws a movement: its start and its end, on one piece of paper.</summary>
public static class FigureDrawer
{
    private const double Margin = 6;

    /// <summary>Room for an arrow or a letter beside the body.</summary>
    private const double Beside = 16;
    private const int Moments = 8;

    /// <summary>A way that is shorter than this is not drawn: nobody would see it.</summary>
    private const double ShortestWay = 2.5;

    /// <param name="end">Null where nothing moves.</param>
    /// <param name="feel">Where it is felt; null where nobody said.</param>
    public static Figure Draw(Posed start, Posed? end, FeelPlace? feel = null)
    {
        var pose = end?.Pose ?? start.Pose;
        var camera = new Camera(pose.View, pose.Base.IsSideLying);
        var works = Works(start.Pose, end?.Pose, feel);
        Posed[] both = end is null ? [start] : [start, end];
        var places = Places.Of(both, camera).ToArray();
        var bodies = both.Select(posed => Bodies(posed, camera, works).ToArray()).ToArray();
        var feels = both.Select(posed => feel is null ? [] : new[] { FeelPlaces.Shape(posed.Body, feel, camera) }).ToArray();
        var ways = end is null ? [] : Ways(start, end, camera).ToArray();
        var bounds = Around(bodies.SelectMany(b => b).SelectMany(b => b).Concat(places), ways, camera);
        return new(Of(0, []), end is null ? null : Of(1, ways), bounds);

        Drawing Of(int which, IReadOnlyList<Seen[]> moving)
        {
            var flesh = bodies[which].SelectMany(b => b).ToArray();
            var arrows = moving
                .Concat(Pushes(both[which], camera))
                .Select(way => Arrow.Beside(way, flesh, bounds))
                .SelectMany(way => Arrow.Along(way))
                .ToArray();
            IEnumerable<Shape[]> groups =
            [
                [.. Floor(camera, bounds), .. places],
                .. bodies[which],
                feels[which],
                arrows,
            ];
            return new(
                groups.Where(g => g.Length > 0).Select(g => g.ToSeries()).ToSeries(),
                Letters.Place(both[which].Body, works, flesh.Concat(arrows), bounds, camera)
            );
        }
    }

    /// <summary>The limbs that move or push, and the one in which it is felt; the trunk where no limb does.</summary>
    private static SidedPart[] Works(Pose start, Pose? end, FeelPlace? feel)
    {
        var pose = end ?? start;
        var moves = pose.Moves is { } said ? Both(said, pose) : [];
        SidedPart[] all = [.. moves, .. pose.Pushes.Concat(start.Pushes).Select(p => p.Part), .. FeelPlaces.LimbOf(feel)];
        var limbs = all.Where(p => p.IsPaired).Distinct().ToArray();
        if (limbs.Length == 0)
            return [.. all.Distinct()];
        // The side that works has the colour: the limb that it carries or follows has none.
        var working = limbs.Where(p => p.Side == BodySide.Working).ToArray();
        var isBoth = pose.MovesBoth || working.Any(w => limbs.Contains(w with { Side = BodySide.Other }));
        return working.Length == 0 || isBoth ? limbs : working;
    }

    private static IEnumerable<SidedPart> Both(SidedPart moves, Pose pose) =>
        pose.MovesBoth && moves.IsPaired ? [moves, moves with { Side = BodySide.Other }] : [moves];

    private static IEnumerable<Shape[]> Bodies(Posed posed, Camera camera, SidedPart[] works) =>
        new BodyShapes(posed.Body, camera, works)
            .All()
            .Concat(Things.Of(posed, camera))
            .OrderBy(s => s.Near)
            .Select(s => s.Shapes);

    /// <summary>The way that each moving part goes from start to end.</summary>
    private static IEnumerable<Seen[]> Ways(Posed start, Posed end, Camera camera)
    {
        if (end.Pose.Moves is not { } moves)
            yield break;
        foreach (var part in Both(moves, end.Pose))
        {
            var way = Enumerable
                .Range(0, Moments + 1)
                .Select(i => camera.See(BodyParts.Middle(Between(start, end, (double)i / Moments), part)))
                .ToArray();
            if (way[0].DistanceTo(way[^1]) >= ShortestWay)
                yield return way;
        }
    }

    /// <summary>Towards what pushes, from the side that it pushes from.</summary>
    private static IEnumerable<Seen[]> Pushes(Posed posed, Camera camera) =>
        posed.Pose.Pushes.Select(push =>
        {
            var at = BodyParts.Middle(posed.Body, push.Part);
            var way = Direction(push, posed.Body);
            return new[] { camera.See(at - (way * 0.17)), camera.See(at - (way * 0.03)) };
        });

    private static Spot Direction(Push push, Skeleton body)
    {
        var inwards = -Skeleton.Sign(push.Part.Side);
        return push.Direction switch
        {
            PushDirection.Ahead => new(1, 0, 0),
            PushDirection.Back => new(-1, 0, 0),
            PushDirection.Up => new(0, 0, 1),
            PushDirection.Down => new(0, 0, -1),
            PushDirection.In => body.Pelvis.Aside * inwards,
            PushDirection.Out => body.Pelvis.Aside * -inwards,
        };
    }

    /// <summary>The body at a share of the way.</summary>
    private static Skeleton Between(Posed start, Posed end, double share)
    {
        var angles = new JointAngles();
        foreach (var angle in JointAngles.All)
            angles[angle] = start.Angles[angle] + ((end.Angles[angle] - start.Angles[angle]) * share);
        var (a, b) = (start.Root.Frame, end.Root.Frame);
        var up = a.Up.Towards(b.Up, share).Unit;
        var ahead = a.Ahead.Towards(b.Ahead, share);
        ahead = (ahead - (up * ahead.Dot(up))).Unit;
        var aside = new Spot(
            (up.Y * ahead.Z) - (up.Z * ahead.Y),
            (up.Z * ahead.X) - (up.X * ahead.Z),
            (up.X * ahead.Y) - (up.Y * ahead.X)
        );
        return new(start.Root.Hips.Towards(end.Root.Hips, share), new(ahead, aside, up), angles);
    }

    private static IEnumerable<Shape> Floor(Camera camera, Bounds bounds)
    {
        if (!camera.IsFromAbove)
            yield return new("", Tone.Place, [new(bounds.Left + 2, 1.5, 0), new(bounds.Right - 2, 1.5, 0)], 3);
    }

    private static Bounds Around(IEnumerable<Shape> shapes, IEnumerable<Seen[]> ways, Camera camera)
    {
        var edges = shapes
            .SelectMany(s => s.Points.Select(p => (p.X, p.Y, Half: s.Width / 2)))
            .Concat(ways.SelectMany(w => w).Select(p => (p.X, p.Y, Half: 4.0)))
            .ToArray();
        var bottom = edges.Max(e => e.Y + e.Half);
        return new(
            Math.Floor(edges.Min(e => e.X - e.Half) - Margin - Beside),
            Math.Floor(edges.Min(e => e.Y - e.Half) - Margin - Beside / 2),
            Math.Ceiling(edges.Max(e => e.X + e.Half) + Margin + Beside),
            Math.Ceiling(camera.IsFromAbove ? bottom + Margin + Beside / 2 : Math.Max(bottom, 0) + 4)
        );
    }
}
