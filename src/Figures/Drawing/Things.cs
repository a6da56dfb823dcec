using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>What is held, worn or lain on.</summary>
internal static class Things
{
    public static IEnumerable<(Shape[] Shapes, double Near)> Of(Posed posed, Camera camera)
    {
        foreach (var thing in posed.Pose.Things)
        {
            var (points, width, filled) = Outline(thing, posed.Body, camera);
            yield return ([new("", Tone.Thing, points, width, filled)], points.Average(p => p.Near) + 4);
        }
    }

    private static (Series<Seen> Points, double Width, bool Filled) Outline(Thing thing, Skeleton body, Camera camera)
    {
        var at = BodyParts.Middle(body, thing.At);
        var arm = body.ArmOf(thing.At.Side);
        Series<Seen> Line(Spot from, Spot to) => [camera.See(from), camera.See(to)];
        switch (thing.Kind)
        {
            case ThingKind.Bottle:
                return (Line(at - (arm.Last.Ahead * 0.05), at + (arm.Last.Ahead * 0.07)), 9, false);
            case ThingKind.Weight:
                return (Line(at - (arm.Last.Ahead * 0.05), at + (arm.Last.Ahead * 0.05)), 9, false);
            case ThingKind.Stick:
                return (Line(at - (arm.Last.Ahead * 0.3), at + (arm.Last.Ahead * 0.3)), 4, false);
            case ThingKind.Bag:
                var under = arm.End.Towards(arm.Tip, 0.8);
                return (
                    new[]
                    {
                        under,
                        under - new Spot(0.05, 0.05, 0.06),
                        under - new Spot(0.05, 0.05, 0.17),
                        under - new Spot(-0.05, -0.05, 0.17),
                        under - new Spot(-0.05, -0.05, 0.06),
                    }
                        .Select(camera.See)
                        .ToSeries(),
                    4,
                    true
                );
            case ThingKind.Backpack:
                var (low, high) = (body.LowBack.Towards(body.MidBack, 0.5), body.Shoulders);
                var behind = body.Chest.Ahead * -0.095;
                return (Line(low + behind, high + behind), 20, false);
            default:
                return Cushion(thing.At, body, camera);
        }
    }

    /// <summary>Under the head, under a hand or a knee, or between both of the legs.</summary>
    private static (Series<Seen> Points, double Width, bool Filled) Cushion(SidedPart at, Skeleton body, Camera camera)
    {
        var (a, b) = (BodyParts.Middle(body, at), BodyParts.Middle(body, at with { Side = BodySide.Other }));
        if (at.IsOfLeg && a != b)
        {
            var (one, other) = (camera.See(a), camera.See(b));
            return ([one.Towards(other, 0.3), one.Towards(other, 0.7)], 14, false);
        }

        if (camera.IsFromAbove && at.Part == BodyPart.Head)
        {
            Spot[] corners = [new(-0.09, -0.13, -0.1), new(0.09, -0.13, -0.1), new(0.09, 0.13, -0.1), new(-0.09, 0.13, -0.1)];
            return (corners.Select(c => camera.See(a + c)).ToSeries(), 6, true);
        }

        var radius = at.Part == BodyPart.Head ? BodyParts.HeadRadius : 0.05;
        var below = a - new Spot(0, 0, radius + 0.012);
        return ([camera.See(below - new Spot(0.08, 0.03, 0)), camera.See(below + new Spot(0.08, 0.03, 0))], 8, false);
    }
}
