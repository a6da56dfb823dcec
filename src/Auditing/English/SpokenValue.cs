using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A figure of a dose that a coach wrote into a text by hand.</summary>
/// <param name="Number">In the unit of the kind, both ends included; 1 for a side.</param>
/// <param name="Start">Where it stands in the text, from 0.</param>
/// <param name="Length">In characters, at least 1.</param>
public sealed record SpokenValue(SpokenKind Kind, Count Number, int Start, int Length)
{
    public SpokenBound Bound { get; init; }

    /// <summary>None for every kind but a side.</summary>
    public SpokenSide Side { get; init; }

    /// <summary>What is done in that time, as far as the sentence says it, likeliest first.</summary>
    public Series<Verb> Verbs { get; init; } = [];

    /// <summary>Whether the sentence asks for the work in this amount, so that a dose in another amount is against it: "stay for
    /// five breaths" asks, "take five breaths and lift" does not.</summary>
    public bool IsAsked { get; init; }
}

/// <summary>What a figure counts.</summary>
public enum SpokenKind
{
    /// <summary>Seconds of work.</summary>
    Time,

    /// <summary>Seconds between sets.</summary>
    Rest,

    /// <summary>Seconds between repetitions.</summary>
    Pause,

    /// <summary>Seconds of waiting, for whatever: a rest, a pause, a beat of a movement.</summary>
    Wait,

    /// <summary>Seconds between the sides.</summary>
    Switch,
    Sets,
    Repetitions,

    /// <summary>Pushes, lifts, holds: repetitions, or sets where the dose has none.</summary>
    Efforts,

    /// <summary>Sets or repetitions: "twice".</summary>
    Times,
    Breaths,

    /// <summary>Per cent of the hardest.</summary>
    Percent,

    /// <summary>From 0 to 10.</summary>
    Felt,
    Metres,

    /// <summary>Repetitions left undone.</summary>
    Leave,
    Side,
}

/// <summary>Whether a figure is the number itself, or an end of it: "at least 30 seconds", "up to a minute".</summary>
public enum SpokenBound
{
    Exact,
    AtLeast,
    AtMost,
}

public enum SpokenSide
{
    None,

    /// <summary>Both, one after the other: "each side", "then the other leg".</summary>
    Each,

    /// <summary>Both, however: "on both sides".</summary>
    All,

    /// <summary>Both at once.</summary>
    Both,

    /// <summary>"One side only".</summary>
    One,
    Left,
    Right,
}
