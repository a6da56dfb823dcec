namespace Gradus.Figures;

/// <summary>One way in which one joint moves, with its sign by the neutral-zero convention of the American Academy of Orthopaedic
/// Surgeons: 0 in the anatomical position.</summary>
public enum JointAngle
{
    /// <summary>Of the trunk: flexion is positive.</summary>
    TrunkFlexion,

    /// <summary>Positive to the side that works.</summary>
    TrunkSideBending,

    /// <summary>Positive to the side that works.</summary>
    TrunkRotation,

    /// <summary>Flexion is positive.</summary>
    NeckFlexion,

    /// <summary>Positive to the side that works.</summary>
    NeckRotation,

    /// <summary>Flexion is positive, extension negative.</summary>
    ShoulderFlexion,

    /// <summary>Abduction is positive; with the arm raised ahead it goes out to the side.</summary>
    ShoulderAbduction,

    /// <summary>Internal rotation is positive.</summary>
    ShoulderRotation,
    ElbowFlexion,

    /// <summary>Pronation is positive; at 0 the palm looks at the body.</summary>
    ForearmPronation,

    /// <summary>Extension is positive: the back of the hand comes up.</summary>
    WristExtension,

    /// <summary>Flexion is positive, extension negative.</summary>
    HipFlexion,

    /// <summary>Abduction is positive.</summary>
    HipAbduction,

    /// <summary>Internal rotation is positive.</summary>
    HipRotation,
    KneeFlexion,

    /// <summary>Dorsiflexion is positive.</summary>
    AnkleDorsiflexion,

    /// <summary>Extension is positive: the toes come up.</summary>
    ToeExtension,
}

/// <summary>One side of the body in a drill. Who is drawn works with the right; whoever works with the left is the mirror
/// image.</summary>
public enum BodySide
{
    Working,
    Other,
}

/// <summary>A way of moving on one side; of trunk and neck the side is <see cref="BodySide.Working"/>.</summary>
public readonly record struct SidedAngle(JointAngle Angle, BodySide Side)
{
    /// <summary>Whether there are two of it.</summary>
    public bool IsPaired => Angle >= JointAngle.ShoulderFlexion;
}

/// <summary>All angles of a body, in radians inside and in degrees outside.</summary>
public sealed class JointAngles
{
    private const int Kinds = (int)JointAngle.ToeExtension + 1;

    /// <summary>How many numbers there are: one for each kind and side.</summary>
    public const int Count = 2 * Kinds;

    private readonly double[] radians = new double[Count];

    /// <summary>Every angle there is, each once.</summary>
    public static readonly IReadOnlyList<SidedAngle> All =
    [
        .. from angle in Enum.GetValues<JointAngle>()
        from side in Enum.GetValues<BodySide>()
        let sided = new SidedAngle(angle, side)
        where side == BodySide.Working || sided.IsPaired
        select sided,
    ];

    /// <summary>In degrees.</summary>
    public double this[SidedAngle angle]
    {
        get => double.RadiansToDegrees(radians[Index(angle.Angle, angle.Side)]);
        set => radians[Index(angle.Angle, angle.Side)] = double.DegreesToRadians(value);
    }

    /// <summary>In radians.</summary>
    internal double this[JointAngle angle, BodySide side = BodySide.Working]
    {
        get => radians[Index(angle, side)];
        set => radians[Index(angle, side)] = value;
    }

    public JointAngles Copy()
    {
        var copy = new JointAngles();
        radians.CopyTo(copy.radians, 0);
        return copy;
    }

    private static int Index(JointAngle angle, BodySide side) => ((int)side * Kinds) + (int)angle;
}
