namespace Gradus.Domain;

/// <summary>How the sets of a dose go over the sides of the body.</summary>
/// <param name="First">The side that is worked first: the one that <c>plus</c> names, otherwise the left one; of one side that
/// one.</param>
/// <param name="MoreOnFirst">How many sets it has more than the other.</param>
public sealed record WorkedSides(SideOrder Order, Side First, int MoreOnFirst)
{
    /// <summary>Whether each side has its own turn.</summary>
    public bool TakeTurns => Order is SideOrder.Each or SideOrder.Alternate;

    /// <summary>Whether a side is the first or the second to have its turn; null where the sides have none.</summary>
    public Turn? TurnOf(Side? side) => TakeTurns && side is { } one ? (one == First ? Turn.First : Turn.Second) : null;

    /// <summary>The side a piece of work begins on; null where both work at once, or there are no sides.</summary>
    public Side? Begins => Order is SideOrder.None or SideOrder.Both ? null : First;

    /// <summary>The sides at work, the first one first. A dose without a side works both, as far as a body is
    /// concerned.</summary>
    public Series<Side> All => Order == SideOrder.One ? [First] : [First, First.Other()];
}

public enum Turn
{
    First,
    Second,
}

public enum SideOrder
{
    /// <summary>There are no sides.</summary>
    None,

    One,

    /// <summary>All sets of one side, then all of the other.</summary>
    Each,

    /// <summary>Set by set in turn.</summary>
    Alternate,

    /// <summary>Both at once.</summary>
    Both,
}
