using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>The shapes of a body: limbs with round ends, each as thick as it is on most people; drawn so, no source.</summary>
internal sealed class BodyShapes(Skeleton body, Camera camera, IReadOnlyList<SidedPart> works)
{
    private const double ThighWidth = 17,
        ShankWidth = 12.5,
        FootWidth = 8,
        UpperArmWidth = 11,
        ForearmWidth = 9,
        HandWidth = 7.5,
        NeckWidth = 10,
        TrunkWidth = 19,
        HeadWidth = 23;

    /// <summary>Each limb, the trunk and the head: what is drawn together, with the depth at which it lies.</summary>
    public IEnumerable<(Shape[] Shapes, double Near)> All()
    {
        foreach (var side in Enum.GetValues<BodySide>())
        {
            var name = side == BodySide.Working ? "working" : "other";
            var (arm, leg) = (body.ArmOf(side), body.LegOf(side));
            var (armTone, legTone) = (ToneOf(side, isArm: true), ToneOf(side, isArm: false));
            yield return Together(
                Line(name + "-thigh", legTone, ThighWidth, leg.Root, leg.Middle),
                Line(name + "-shank", legTone, ShankWidth, leg.Middle, leg.End),
                Foot(name + "-foot", legTone, leg)
            );
            yield return Together(
                Line(name + "-upper-arm", armTone, UpperArmWidth, arm.Root, arm.Middle),
                Line(name + "-forearm", armTone, ForearmWidth, arm.Middle, arm.End),
                Line(name + "-hand", armTone, HandWidth, arm.End, arm.End.Towards(arm.Tip, 0.8))
            );
        }

        var trunk = works.Any(w => !w.IsPaired && w.Part != BodyPart.Head) ? Tone.Work : Tone.Near;
        yield return Together(
            Line("spine", trunk, TrunkWidth, body.Hips, body.LowBack, body.MidBack, body.Shoulders) with
            {
                IsInside = true,
            },
            Outline(trunk)
        );
        var head = works.Any(w => w.Part == BodyPart.Head) ? Tone.Work : Tone.Near;
        var middle = body.Chin.Towards(body.Crown, 0.5);
        yield return Together(
            Line("neck", head, NeckWidth, body.Shoulders, body.Chin),
            Line("", head, 8, middle + body.Neck.Out(new(0.045, 0, -0.012)), middle + body.Neck.Out(new(0.058, 0, -0.016))),
            Line("head", head, HeadWidth, body.Chin.Towards(body.Crown, 0.42), body.Chin.Towards(body.Crown, 0.6))
        );
    }

    /// <summary>As wide as shoulders, flanks and hips are.</summary>
    private Shape Outline(Tone tone)
    {
        (Spot At, Frame Frame, double Half)[] levels =
        [
            (body.Hips, body.Pelvis, 0.045),
            (body.LowBack, body.Pelvis, 0.026),
            (body.MidBack, body.Chest, 0.032),
            (body.Shoulders, body.Chest, 0.088),
        ];
        var right = levels.Select(l => l.At - (l.Frame.Aside * l.Half));
        var left = levels.Reverse().Select(l => l.At + (l.Frame.Aside * l.Half));
        return new("", tone, right.Concat(left).Select(camera.See).ToSeries(), TrunkWidth, IsFilled: true);
    }

    private static (Shape[] Shapes, double Near) Together(params Shape[] shapes) =>
        (shapes, shapes.SelectMany(s => s.Points).Average(p => p.Near));

    /// <summary>Flesh is thicker behind the heel than at the toes: the sole is what matters, so it is drawn along it.</summary>
    private Shape Foot(string part, Tone tone, Limb leg)
    {
        var up = leg.Last.Up * (FootWidth / 2 / Camera.Scale);
        Spot[] places = [leg.End, leg.Heel + up + (leg.Last.Ahead * 0.012), leg.Ball + up, leg.Tip + up];
        return new(part, tone, places.Select(camera.See).ToSeries(), FootWidth, IsFilled: true);
    }

    private Shape Line(string part, Tone tone, double width, params Spot[] places) =>
        new(part, tone, places.Select(camera.See).ToSeries(), width);

    private Tone ToneOf(BodySide side, bool isArm) =>
        works.Any(w => w.IsPaired && w.Side == side && w.IsOfArm == isArm && w.IsOfLeg != isArm) ? Tone.Work
        : side == BodySide.Other && !camera.IsFromFront && !camera.IsFromAbove ? Tone.Far
        : Tone.Near;
}
