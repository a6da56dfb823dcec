namespace Gradus.Domain;

/// <summary>A one-sided sport.</summary>
/// <param name="StanceQuestion">What decides which side is which.</param>
/// <param name="Roles">The sport's names of sides, for the right-handed stance; the left-handed is the mirror image.</param>
public sealed record Sport(
    SportId Id,
    string Name,
    string StanceQuestion,
    Series<Role> Roles,
    Series<Demand> Demands,
    Location At
);

/// <param name="Name">In small letters, as a dose line is read.</param>
/// <param name="Shown">With the capitals that the coach gave it.</param>
/// <param name="RightHanded">The body side it means for a right-handed player.</param>
/// <param name="Limb">Of which limb it is a side: arm or leg.</param>
public sealed record Role(string Name, string Shown, Side RightHanded, Limb Limb)
{
    /// <summary>The body side it means for a player of that stance.</summary>
    public Side For(Side stance) => stance == Side.Right ? RightHanded : RightHanded.Other();
}

/// <summary>The range a position of the sport needs.</summary>
/// <param name="Side">A role of the sport, left, right, or null for either.</param>
/// <param name="Motion">By the name of the way in which it is measured.</param>
/// <param name="Mode">Whose reading counts; null where nobody has said it, and then nothing is judged.</param>
/// <param name="AtLeast">In the motion's unit.</param>
public sealed record Demand(
    string Position,
    string Motion,
    string? Side,
    RangeMode? Mode,
    decimal AtLeast,
    string Because,
    Location At
);
