using static Gradus.Figures.BodySide;
using static Gradus.Figures.JointAngle;
using static Gradus.Figures.Proportions;

namespace Gradus.Figures;

/// <summary>Where every joint is, worked out from the hips outwards: lengths are those of <see cref="Proportions"/>, angles those
/// asked for.</summary>
public sealed class Skeleton
{
    private readonly Limb[] arms;
    private readonly Limb[] legs;

    /// <param name="hips">Half-way between the hips.</param>
    /// <param name="pelvis">Which way the pelvis looks.</param>
    public Skeleton(Spot hips, Frame pelvis, JointAngles angles)
    {
        Hips = hips;
        Pelvis = pelvis;
        LowBack = hips + (pelvis.Up * TrunkPart);
        var belly = Bent(pelvis, angles);
        MidBack = LowBack + (belly.Up * TrunkPart);
        Chest = Bent(belly, angles);
        Shoulders = MidBack + (Chest.Up * TrunkPart);
        Neck = Chest.Bowed(angles[NeckFlexion]).Turned(-angles[NeckRotation]);
        Chin = Shoulders + (Neck.Up * Proportions.Neck);
        Crown = Chin + (Neck.Up * Head);
        arms = [Arm(Working, angles), Arm(Other, angles)];
        legs = [Leg(Working, angles), Leg(Other, angles)];
    }

    public Spot Hips { get; }

    public Frame Pelvis { get; }

    /// <summary>A third of the way up the trunk.</summary>
    public Spot LowBack { get; }

    /// <summary>Two thirds of the way up the trunk.</summary>
    public Spot MidBack { get; }

    public Frame Chest { get; }

    /// <summary>Half-way between the shoulders.</summary>
    public Spot Shoulders { get; }

    public Frame Neck { get; }

    public Spot Chin { get; }

    public Spot Crown { get; }

    public Limb ArmOf(BodySide side) => arms[(int)side];

    public Limb LegOf(BodySide side) => legs[(int)side];

    /// <summary>+1 for the side that <see cref="Frame.Aside"/> looks to, -1 for the other.</summary>
    public static int Sign(BodySide side) => side == Other ? 1 : -1;

    /// <summary>Half of what the trunk does, at one of its two places.</summary>
    private static Frame Bent(Frame frame, JointAngles angles) =>
        frame.Bowed(angles[TrunkFlexion] / 2).Rolled(angles[TrunkSideBending] / 2).Turned(-angles[TrunkRotation] / 2);

    /// <summary>Flexion about the line between the two joints, then abduction, then rotation about the limb itself: the order of
    /// the joint coordinate system of the International Society of Biomechanics for the hip (Wu 2002, from memory), taken for the
    /// shoulder too.</summary>
    private static Frame Ball(Frame parent, double flexion, double abduction, double rotation, int sign) =>
        parent.Bowed(-flexion).Rolled(sign * abduction).Turned(-sign * rotation);

    private Limb Arm(BodySide side, JointAngles a)
    {
        var sign = Sign(side);
        var shoulder = Shoulders + (Chest.Aside * (sign * ShoulderWidth / 2));
        var upper = Ball(Chest, a[ShoulderFlexion, side], a[ShoulderAbduction, side], a[ShoulderRotation, side], sign);
        var elbow = shoulder - (upper.Up * UpperArm);
        var lower = upper.Bowed(-a[ElbowFlexion, side]).Turned(-sign * a[ForearmPronation, side]);
        var wrist = elbow - (lower.Up * Forearm);
        var hand = lower.Rolled(sign * a[WristExtension, side]);
        return new(shoulder, elbow, wrist, wrist - (hand.Up * Hand), upper, lower, hand);
    }

    private Limb Leg(BodySide side, JointAngles a)
    {
        var sign = Sign(side);
        var hip = Hips + (Pelvis.Aside * (sign * HipWidth / 2));
        var upper = Ball(Pelvis, a[HipFlexion, side], a[HipAbduction, side], a[HipRotation, side], sign);
        var knee = hip - (upper.Up * Thigh);
        var lower = upper.Bowed(a[KneeFlexion, side]);
        var ankle = knee - (lower.Up * Shank);
        var foot = lower.Bowed(-a[AnkleDorsiflexion, side]);
        var ball = ankle + foot.Out(new(BallAhead, 0, -AnkleHeight));
        var toes = foot.Bowed(-a[ToeExtension, side]);
        return new(hip, knee, ankle, ball + (toes.Ahead * Toes), upper, lower, foot)
        {
            Heel = ankle + foot.Out(new(-HeelBehind, 0, -AnkleHeight)),
            Ball = ball,
        };
    }
}

/// <summary>An arm from shoulder to fingers, or a leg from hip to toes.</summary>
/// <param name="Root">Shoulder or hip.</param>
/// <param name="Middle">Elbow or knee.</param>
/// <param name="End">Wrist or ankle.</param>
/// <param name="Tip">End of the fingers or of the toes.</param>
/// <param name="Upper">Which way the upper arm or the thigh looks.</param>
/// <param name="Lower">Likewise forearm or shank.</param>
/// <param name="Last">Likewise hand or foot.</param>
public sealed record Limb(Spot Root, Spot Middle, Spot End, Spot Tip, Frame Upper, Frame Lower, Frame Last)
{
    /// <summary>Of a leg.</summary>
    public Spot Heel { get; init; }

    /// <summary>Of the foot.</summary>
    public Spot Ball { get; init; }
}
