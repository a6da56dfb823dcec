namespace Gradus.Figures;

/// <summary>Lengths as shares of standing height. Where no other source is named: Drillis R and Contini R, Body segment
/// parameters (1966), as tabulated in Winter DA, Biomechanics and Motor Control of Human Movement; second-hand, two independent
/// quotations agree.</summary>
public static class Proportions
{
    public const double UpperArm = 0.186,
        Forearm = 0.146,
        Hand = 0.108,
        Thigh = 0.245,
        Shank = 0.246,
        FootLength = 0.152,
        AnkleHeight = 0.039,
        HipHeight = 0.530,
        ShoulderHeight = 0.818,
        ShoulderWidth = 0.259,
        HipWidth = 0.191,
        Head = 0.130;

    /// <summary>Hip to shoulder, computed.</summary>
    public const double Trunk = ShoulderHeight - HipHeight;

    /// <summary>Shoulder to chin, computed: what head and trunk leave of the height.</summary>
    public const double Neck = 1 - Head - ShoulderHeight;

    /// <summary>The trunk bends at two places, at a third and at two thirds of it; drawn so, no source.</summary>
    public const double TrunkPart = Trunk / 3;

    /// <summary>How far the heel stands behind the ankle, and the ball of the foot before it; common practice, no
    /// source.</summary>
    public const double HeelBehind = 0.035,
        BallAhead = 0.075;

    public const double Toes = FootLength - HeelBehind - BallAhead;

    /// <summary>Of the body that is drawn: what centimetres are counted in.</summary>
    public const double HeightInCentimetres = 170;
}
