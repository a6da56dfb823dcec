namespace Gradus.Domain;

/// <summary>Why a dose line was refused, for the coach who wrote it.</summary>
/// <param name="Column">Where in the line as written, from 0; the line's length where something is missing at its end.</param>
/// <param name="Length">How many characters are meant, at least 1.</param>
/// <param name="Message">What is wrong, one sentence.</param>
/// <param name="Help">The one thing to do about it.</param>
public sealed record DoseFault(DoseFaultKind Kind, int Column, int Length, string Message, string Help);

/// <summary>The two ways a line can be wrong.</summary>
public enum DoseFaultKind
{
    /// <summary>It is no dose line, or a number is out of its bounds.</summary>
    Unreadable,

    /// <summary>A term has nothing to act on.</summary>
    TermWithoutEffect,
}
