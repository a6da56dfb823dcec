using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A number, or a range, with what it counts.</summary>
/// <param name="Number">Seconds, where it is a time.</param>
/// <param name="From">Its first token in the sentence.</param>
/// <param name="To">Behind its last token.</param>
internal sealed record SpokenAmount(Count Number, SpokenUnit Unit, int From, int To);

internal enum SpokenUnit
{
    /// <summary>Nothing that a dose counts.</summary>
    None,
    Seconds,
    Sets,

    /// <summary>Repetitions by that name, or a number behind "sets of".</summary>
    Repetitions,

    /// <summary>Pushes, lifts: repetitions or sets.</summary>
    Efforts,

    /// <summary>Turns, squats.</summary>
    Moves,
    Times,
    Breaths,
    Percent,
    OutOfTen,
    Metres,
}
