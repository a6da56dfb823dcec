using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>How the dose of a use walks its ladder over a span of its weeks.</summary>
/// <param name="FullWeeks">Those that are not lighter and in which it may grow, in rising order.</param>
/// <param name="Need">How many full weeks it takes at least to get to the high end.</param>
/// <param name="IsFinished">Whether it gets there.</param>
/// <param name="Coarse">Steps that are larger than the practice lets a week grow, because there is no smaller one.</param>
public sealed record UseGrowth(Series<int> FullWeeks, int Need, bool IsFinished, Series<CoarseStep> Coarse)
{
    internal static UseGrowth Of(WalkedWeeks walked) => new(walked.Full, walked.Walk.Need, walked.Walk.IsFinished, walked.Coarse);
}

/// <summary>How a week is lighter than others.</summary>
public enum Lightness
{
    /// <summary>It is not.</summary>
    Full,

    /// <summary>Its dose is cut from that of the last full week.</summary>
    Cut,

    /// <summary>It should be cut, and nothing can be taken away.</summary>
    Uncut,

    /// <summary>The coach wrote its dose.</summary>
    ByCoach,
}
