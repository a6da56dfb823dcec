namespace Gradus.Figures;

/// <summary>What may rest on something, hold something, move or push.</summary>
public enum BodyPart
{
    Head,
    Chest,
    Back,
    Belly,
    Seat,

    /// <summary>The lower flank of somebody who lies on it.</summary>
    Flank,
    Shoulder,
    Elbow,
    Forearm,
    Hand,
    Hip,
    Thigh,
    Knee,
    Foot,
    Heel,
    Ball,
    Instep,
}

/// <summary>A part of one side; of head and trunk the side says nothing.</summary>
public readonly record struct SidedPart(BodyPart Part, BodySide Side)
{
    /// <summary>Whether there are two of it.</summary>
    public bool IsPaired => Part >= BodyPart.Shoulder;

    public bool IsOfArm => Part is BodyPart.Shoulder or BodyPart.Elbow or BodyPart.Forearm or BodyPart.Hand;

    public bool IsOfLeg => Part >= BodyPart.Hip;
}

/// <summary>A place inside the body, with the flesh around it.</summary>
/// <param name="Radius">From there to the skin, in heights of the body; drawn so, no source.</param>
public readonly record struct Fleshed(Spot At, double Radius);

/// <summary>Where the parts of a body are.</summary>
internal static class BodyParts
{
    public const double HeadRadius = 0.062,
        TrunkRadius = 0.055,
        SeatRadius = 0.052,
        HipRadius = 0.060,
        ShoulderRadius = 0.036,
        KneeRadius = 0.034,
        ElbowRadius = 0.024,
        WristRadius = 0.016,
        FingerRadius = 0.008,
        InstepRadius = 0.030;

    /// <summary>Where it rests when it rests on something: one place, or two of a part that lies flat.</summary>
    public static Fleshed[] Resting(Skeleton body, SidedPart part)
    {
        var (arm, leg) = (body.ArmOf(part.Side), body.LegOf(part.Side));
        return part.Part switch
        {
            BodyPart.Head => [HeadOf(body)],
            BodyPart.Chest => [new(body.MidBack, TrunkRadius), new(body.Shoulders, TrunkRadius)],
            BodyPart.Back => [new(body.Hips, TrunkRadius), new(body.MidBack, TrunkRadius), new(body.Shoulders, TrunkRadius)],
            BodyPart.Belly => [new(body.Hips, TrunkRadius), new(body.LowBack, TrunkRadius)],
            BodyPart.Seat => [new(body.Hips, SeatRadius)],
            BodyPart.Flank => [new(leg.Root, HipRadius), new(arm.Root, ShoulderRadius)],
            BodyPart.Shoulder => [new(arm.Root, ShoulderRadius)],
            BodyPart.Elbow => [new(arm.Middle, ElbowRadius)],
            BodyPart.Forearm => [new(arm.Middle, ElbowRadius), new(arm.End, WristRadius)],
            BodyPart.Hand => [new(arm.End, WristRadius), new(arm.Tip, FingerRadius)],
            BodyPart.Hip => [new(leg.Root, HipRadius)],
            BodyPart.Thigh => [new(leg.Root.Towards(leg.Middle, 0.5), HipRadius)],
            BodyPart.Knee => [new(leg.Middle, KneeRadius)],
            BodyPart.Foot => [new(leg.Heel, 0), new(leg.Ball, 0)],
            BodyPart.Heel => [new(leg.Heel, 0)],
            BodyPart.Ball => [new(leg.Ball, 0), new(leg.Tip, 0)],
            BodyPart.Instep => [new(leg.End, InstepRadius), new(leg.Tip, FingerRadius)],
        };
    }

    /// <summary>The one place that stands for it: what is followed when it moves, where it pushes.</summary>
    public static Spot Middle(Skeleton body, SidedPart part)
    {
        var (arm, leg) = (body.ArmOf(part.Side), body.LegOf(part.Side));
        return part.Part switch
        {
            BodyPart.Head => HeadOf(body).At,
            BodyPart.Chest or BodyPart.Back => body.MidBack,
            BodyPart.Belly => body.LowBack,
            BodyPart.Seat => body.Hips,
            BodyPart.Flank or BodyPart.Hip => leg.Root,
            BodyPart.Shoulder => arm.Root,
            BodyPart.Elbow => arm.Middle,
            BodyPart.Forearm => arm.Middle.Towards(arm.End, 0.5),
            BodyPart.Hand => arm.End.Towards(arm.Tip, 0.5),
            BodyPart.Thigh => leg.Root.Towards(leg.Middle, 0.5),
            BodyPart.Knee => leg.Middle,
            BodyPart.Foot or BodyPart.Instep => leg.Ball.Towards(leg.End, 0.4),
            BodyPart.Heel => leg.Heel,
            BodyPart.Ball => leg.Ball,
        };
    }

    /// <summary>Where on the skin a hand is laid.</summary>
    /// <param name="hand">Whose hand: on the trunk it lies on its own side, on the chest on the other.</param>
    public static Spot UnderHand(Skeleton body, SidedPart part, BodySide hand)
    {
        var (arm, leg, own) = (body.ArmOf(part.Side), body.LegOf(part.Side), Skeleton.Sign(hand));
        var inwards = -Skeleton.Sign(part.Side);
        return part.Part switch
        {
            BodyPart.Head => HeadOf(body).At + body.Neck.Out(new(-HeadRadius, own * 0.02, 0)),
            BodyPart.Chest => body.MidBack.Towards(body.Shoulders, 0.7) + body.Chest.Out(new(TrunkRadius + 0.02, -own * 0.06, 0)),
            BodyPart.Back => body.LowBack + body.Pelvis.Out(new(-TrunkRadius - 0.02, own * 0.03, 0)),
            BodyPart.Belly => body.LowBack + body.Pelvis.Out(new(TrunkRadius + 0.02, own * 0.02, 0)),
            BodyPart.Seat or BodyPart.Flank or BodyPart.Hip => leg.Root + body.Pelvis.Out(new(0.01, own * 0.06, 0.04)),
            BodyPart.Shoulder => arm.Root + body.Chest.Out(new(ShoulderRadius, 0, 0.01)),
            BodyPart.Elbow => arm.Middle,
            BodyPart.Forearm => arm.Middle.Towards(arm.End, 0.7),
            BodyPart.Hand => arm.End.Towards(arm.Tip, 0.5),
            BodyPart.Thigh => leg.Root.Towards(leg.Middle, 0.6) + (leg.Upper.Ahead * 0.055),
            BodyPart.Knee => leg.Middle + (leg.Upper.Ahead * 0.012) + (leg.Upper.Aside * (inwards * 0.045)),
            BodyPart.Foot or BodyPart.Heel or BodyPart.Ball or BodyPart.Instep => leg.End + (leg.Last.Ahead * 0.04),
        };
    }

    /// <summary>Every place that may not go through the floor.</summary>
    public static (SidedPart Part, Fleshed At)[] Everywhere(Skeleton body) =>
        [
            (new(BodyPart.Head, BodySide.Working), HeadOf(body)),
            (new(BodyPart.Seat, BodySide.Working), new(body.Hips, SeatRadius)),
            (new(BodyPart.Back, BodySide.Working), new(body.MidBack, TrunkRadius * 0.9)),
            .. OfSide(body, BodySide.Working),
            .. OfSide(body, BodySide.Other),
        ];

    private static (SidedPart Part, Fleshed At)[] OfSide(Skeleton body, BodySide side)
    {
        var (arm, leg) = (body.ArmOf(side), body.LegOf(side));
        return
        [
            (new(BodyPart.Shoulder, side), new(arm.Root, ShoulderRadius)),
            (new(BodyPart.Elbow, side), new(arm.Middle, ElbowRadius)),
            (new(BodyPart.Hand, side), new(arm.End, WristRadius)),
            (new(BodyPart.Hand, side), new(arm.Tip, FingerRadius)),
            (new(BodyPart.Knee, side), new(leg.Middle, KneeRadius)),
            (new(BodyPart.Heel, side), new(leg.Heel, 0)),
            (new(BodyPart.Foot, side), new(leg.End, InstepRadius * 0.8)),
            (new(BodyPart.Ball, side), new(leg.Ball, 0)),
            (new(BodyPart.Ball, side), new(leg.Tip, 0)),
        ];
    }

    private static Fleshed HeadOf(Skeleton body) => new(body.Chin.Towards(body.Crown, 0.5), HeadRadius);
}
