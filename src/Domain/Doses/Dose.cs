namespace Gradus.Domain;

/// <summary>What one exercise asks: sets of a piece of work, and the terms beside it. With ranges it is an envelope; with single numbers
/// only it is settled. <c>dose.md</c> fixes how it is written, and DoseLine reads it.</summary>
/// <param name="Sets">1 to 100; 1 where the line names none.</param>
/// <param name="Parts">The work of one set, in order, nothing between the parts; at least one.</param>
public sealed record Dose(Count Sets, Series<DosePart> Parts, DoseTerms Terms);

/// <summary>A piece of one set: an action, or a bracketed group of actions done several times over.</summary>
public abstract record DosePart
{
    private DosePart()
    {
    }

    public sealed record Single(DoseAction Action) : DosePart;

    /// <param name="Times">Rounds of the group, 1 to 100, with nothing between them.</param>
    public sealed record Group(Count Times, Series<DoseAction> Actions) : DosePart;
}

/// <summary>One verb with its amount.</summary>
/// <param name="Times">The count written before the verb, 1 to 100; null where none is written, which is done once and counts no repetition.</param>
public sealed record DoseAction(Count? Times, Verb Verb, Amount Amount, Effort? Effort);

public enum Verb
{
    Hold,
    Breathe,
    Press,
    Pull,
    Raise,
    Move,
    Carry,
}

/// <summary>How much of a verb.</summary>
public abstract record Amount
{
    private Amount()
    {
    }

    /// <param name="Seconds">1 s to 60 min.</param>
    public sealed record Span(Count Seconds) : Amount;

    /// <param name="Number">1 to 100.</param>
    public sealed record Breaths(Count Number) : Amount;

    /// <param name="Number">1 to 100.</param>
    public sealed record Reps(Count Number) : Amount;

    /// <param name="Number">1 to 3600.</param>
    public sealed record Metres(Count Number) : Amount;
}

/// <summary>How hard: a share of the hardest the client could do there as the client perceives it, or a felt effort.</summary>
public abstract record Effort
{
    private Effort()
    {
    }

    /// <param name="Percent">1 to 100.</param>
    public sealed record Steady(Count Percent) : Effort;

    /// <summary>Equal steps from the first effort to the last, both included, up or down.</summary>
    /// <param name="Steps">2 to 20.</param>
    public sealed record Ramp(Count First, Count Last, int Steps) : Effort;

    /// <param name="Rating">0 to 10.</param>
    public sealed record Felt(int Rating) : Effort;
}
