namespace Gradus.Domain;

/// <summary>One number of a dose that lies outside what the exercise allows.</summary>
/// <param name="Words">A part of a sentence for the coach: "hold 90 s, the exercise allows 30 to 60 s".</param>
public sealed record Departure(DepartureSide Side, string Words);

/// <summary>On which side of the envelope.</summary>
public enum DepartureSide
{
    /// <summary>More time, count or effort of an action, more sets, less rest; also what cannot be compared.</summary>
    Hard,

    /// <summary>The other way, more rest among it.</summary>
    Easy,
}
