using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>A pose that was worked out: a body of height 1 on what it rests on.</summary>
/// <param name="Walls">Where they stand; what is level is where it always is.</param>
/// <param name="Unmet">What was said and cannot be.</param>
public sealed record Posed(Pose Pose, Skeleton Body, JointAngles Angles, Standing Root, Walls Walls, Series<Unmet> Unmet)
{
    /// <summary>Whether the middle of the mass lies above what the body rests on, or a hand or a wall holds it.</summary>
    public bool IsBalanced => Balance.IsHeld(this);
}

/// <summary>Something that was said and cannot be.</summary>
/// <param name="Sentence">As it follows "because": "the working hand does not reach the wall".</param>
/// <param name="Part">Of which part; null of the trunk as a whole.</param>
public sealed record Unmet(string Sentence, SidedPart? Part);

/// <summary>Where the pelvis is and which way it looks.</summary>
/// <param name="Frame">Of the pelvis.</param>
public sealed record Standing(Spot Hips, Frame Frame);

/// <summary>How far ahead, beside and behind the walls stand, in heights of the body.</summary>
public sealed record Walls(double Ahead, double Beside, double Behind)
{
    public static readonly Walls Usual = new(0.36, 0.38, -0.12);

    public const double Step = 0.09,
        Chair = 0.238,
        Table = 0.425,
        Bar = 1.25;

    /// <summary>How far a place is from a surface, on the side where the body is; below 0 inside it.</summary>
    /// <param name="side">Whose side the wall beside is on.</param>
    public double From(Surface surface, Spot at, BodySide side) =>
        surface switch
        {
            Surface.Floor => at.Z,
            Surface.Step => at.Z - Step,
            Surface.Chair => at.Z - Chair,
            Surface.Table => at.Z - Table,
            Surface.Bar => at.Z - Bar,
            Surface.Wall => Ahead - at.X,
            Surface.SideWall => Beside - (Skeleton.Sign(side) * at.Y),
            Surface.BackWall => at.X - Behind,
        };
}
