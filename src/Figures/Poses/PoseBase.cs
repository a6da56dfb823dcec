using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>How the whole body is held: what it is written with at the start of a pose.</summary>
/// <param name="Name">As a coach writes it.</param>
/// <param name="Bow">How far the pelvis leans ahead, in degrees: 0 upright, 90 face down, -90 on the back.</param>
/// <param name="HipHeight">Where the hips are, about.</param>
/// <param name="Usual">What is so unless something else is said, in the words of a pose.</param>
public sealed record PoseBase(string Name, Position Position, double Bow, double HipHeight, View View, string Usual)
{
    /// <summary>One leg stands or kneels ahead of the other.</summary>
    public bool HasFront => Position is Position.HalfKneeling or Position.SplitStance;

    public bool IsSideLying => Position is Position.SideLying;

    /// <summary>The side that works lies below.</summary>
    public bool WorksBelow => Name == "side-lying on the working side";

    public static readonly Series<PoseBase> All =
    [
        new("standing", Position.Standing, 0, 0.53, View.Side, "feet on floor, elbow flexion 8, shoulder abduction 6"),
        new(
            "split-stance",
            Position.SplitStance,
            0,
            0.48,
            View.Side,
            "front foot on floor, rear ball on floor, front hip flexion 30, front knee flexion 25, rear hip extension 15, "
                + "rear knee flexion 15, elbow flexion 8"
        ),
        new("squat", Position.Squat, 20, 0.32, View.Side, "feet on floor, hip flexion 90, knee flexion 100, shoulder flexion 60"),
        new(
            "half-kneeling",
            Position.HalfKneeling,
            0,
            0.30,
            View.Side,
            "front foot on floor, rear knee on floor, rear ball on floor, front hip flexion 88, front knee flexion 88, "
                + "rear knee flexion 95, rear ankle dorsiflexion 0, rear toe extension 60, elbow flexion 10"
        ),
        new(
            "kneeling",
            Position.Kneeling,
            0,
            0.28,
            View.Side,
            "knees on floor, insteps on floor, knee flexion 90, ankle plantarflexion 60, elbow flexion 10"
        ),
        new(
            "seated-on-heels",
            Position.Kneeling,
            0,
            0.16,
            View.Side,
            "knees on floor, insteps on floor, hip flexion 85, knee flexion 150, ankle plantarflexion 60, elbow flexion 40, "
                + "shoulder flexion 10"
        ),
        new(
            "hands-and-knees",
            Position.HandsAndKnees,
            90,
            0.28,
            View.Side,
            "knees on floor, hands on floor, insteps on floor, hip flexion 90, knee flexion 90, shoulder flexion 90, "
                + "wrist extension 90, forearm pronation 90, ankle plantarflexion 60, neck extension 15"
        ),
        new(
            "supine",
            Position.Supine,
            -90,
            0.055,
            View.Side,
            "back on floor, head on floor, shoulder abduction 15, forearm pronation 90"
        ),
        new(
            "prone",
            Position.Prone,
            90,
            0.055,
            View.Side,
            "belly on floor, chest on floor, head on floor, ankle plantarflexion 60, shoulder abduction 12, forearm pronation 60"
        ),
        new(
            "side-lying",
            Position.SideLying,
            0,
            0.15,
            View.Front,
            "lower flank on floor, hip flexion 40, knee flexion 80, lower shoulder flexion 90, lower elbow flexion 60, "
                + "shoulder flexion 30, elbow flexion 30"
        ),
        new(
            "side-lying on the working side",
            Position.SideLying,
            0,
            0.15,
            View.Front,
            "lower flank on floor, hip flexion 40, knee flexion 80, lower shoulder flexion 90, lower elbow flexion 60, "
                + "shoulder flexion 30, elbow flexion 30"
        ),
        new(
            "sitting",
            Position.Sitting,
            0,
            0.29,
            View.Side,
            "seat on chair, feet on floor, hip flexion 88, knee flexion 88, elbow flexion 60, shoulder flexion 15"
        ),
        new(
            "floor-sitting",
            Position.FloorSitting,
            0,
            0.052,
            View.Side,
            "seat on floor, heels on floor, hip flexion 88, knee flexion 4, elbow flexion 20"
        ),
        new("hanging", Position.Hanging, 0, 0.9, View.Front, "hands on bar, shoulder flexion 178, knee flexion 10"),
    ];
}
