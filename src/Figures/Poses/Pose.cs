using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>What a body does at one moment, as far as somebody said so; what is not said follows from it.</summary>
/// <param name="Base">What the whole body rests on.</param>
/// <param name="Angles">Those that are said, in degrees: held to the letter.</param>
/// <param name="Contacts">What rests on what, that of the base among it.</param>
/// <param name="View">Where it is seen from.</param>
public sealed record Pose(PoseBase Base, Series<SaidAngle> Angles, Series<Contact> Contacts, View View)
{
    /// <summary>How far the trunk leans ahead, in degrees: 0 upright, 90 level; null where nobody said.</summary>
    public double? Lean { get; init; }

    public Series<Thing> Things { get; init; } = [];

    /// <summary>The part that goes from start to end; null where nobody said.</summary>
    public SidedPart? Moves { get; init; }

    /// <summary>Whether that part of the other side does so too.</summary>
    public bool MovesBoth { get; init; }

    public Series<Push> Pushes { get; init; } = [];

    /// <summary>Whose leg stands ahead, where one does.</summary>
    public BodySide Front { get; init; }
}

/// <param name="Degrees">With the sign of <see cref="JointAngle"/>.</param>
public sealed record SaidAngle(SidedAngle Of, double Degrees);

/// <summary>What a body may rest on.</summary>
public enum Surface
{
    Floor,
    Step,
    Chair,
    Table,

    /// <summary>The wall ahead.</summary>
    Wall,
    SideWall,
    BackWall,
    Bar,
}

/// <summary>A part of the body on something, or on another part of the same body.</summary>
public abstract record Contact(SidedPart Part)
{
    /// <summary>How far above it or away from it, in heights of the body; 0 on it.</summary>
    public double Off { get; init; }

    public sealed record On(SidedPart Part, Surface Surface) : Contact(Part);

    /// <summary>A hand laid on a part of the body.</summary>
    public sealed record OnBody(SidedPart Part, SidedPart Under) : Contact(Part);
}

/// <summary>A thing that is held, worn or lain on.</summary>
/// <param name="At">Where it is: a hand, the head, the back, or the knees and feet that it lies between.</param>
public sealed record Thing(ThingKind Kind, SidedPart At);

public enum ThingKind
{
    Bottle,
    Bag,
    Weight,
    Backpack,
    Cushion,
    Stick,
}

/// <summary>A part that pushes without moving.</summary>
public sealed record Push(SidedPart Part, PushDirection Direction);

public enum PushDirection
{
    Ahead,
    Back,
    Up,
    Down,
    In,
    Out,
}

/// <summary>Where somebody looks from.</summary>
public enum View
{
    Side,
    Front,
    Above,
}
