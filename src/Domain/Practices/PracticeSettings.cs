namespace Gradus.Domain;

/// <summary>What a practice decides once for all its programmes.</summary>
/// <param name="GetReady">Before each use.</param>
/// <param name="Transition">Between two uses where position and equipment stay.</param>
/// <param name="TransitionStanding">Between the floor and standing.</param>
/// <param name="TransitionChange">Any other change of position or equipment.</param>
/// <param name="LighterShare">Per cent of the sets that a lighter week keeps.</param>
/// <param name="GrowAtMost">Per cent that a dose grows by from one full week to the next, at most; common practice, no
/// source.</param>
/// <param name="LargeStep">Per cent of growth from week to week above which a step is called large; common practice, no
/// source.</param>
/// <param name="AnswersLast">How many days an answer about health is good for.</param>
/// <param name="EaseOffAbove">Pain, 0 to 10, above which to do less (reference-values.md, Pain).</param>
/// <param name="StopAbove">Pain, 0 to 10, above which to stop (reference-values.md, Pain).</param>
/// <param name="DaysBackOneWeek">Days without training after which the last week is done again.</param>
/// <param name="DaysBackToFirst">Days without training after which the first week is.</param>
/// <param name="YouthEffort">Per cent of the hardest that somebody under 18 is asked for at most.</param>
/// <param name="Youngest">Years of age below which nobody is trained; common practice, no source.</param>
/// <param name="ReadingGrade">The Flesch-Kincaid grade that texts stay at or below (reference-values.md, Reading).</param>
/// <param name="StretchTarget">Stretch of one motion and side in a session (reference-values.md, Stretching).</param>
/// <param name="OnePosition">Time on end in one position above which that is said; common practice, no source.</param>
/// <param name="HardDaysApart">Days from one hard contraction of a motion and side to the next, at least: 2 leaves a day between;
/// common practice, no source.</param>
/// <param name="AnswersOnPages">Which answers about health the client's pages repeat.</param>
public sealed record PracticeSettings(
    DoseSettings Dose,
    Seconds GetReady,
    Seconds Transition,
    Seconds TransitionChange,
    Seconds TransitionStanding,
    int LighterShare,
    int GrowAtMost,
    int LargeStep,
    int AnswersLast,
    int EaseOffAbove,
    int StopAbove,
    int DaysBackOneWeek,
    int DaysBackToFirst,
    int YouthEffort,
    int Youngest,
    int ReadingGrade,
    Seconds StretchTarget,
    Seconds OnePosition,
    int HardDaysApart,
    AnswersOnPages AnswersOnPages
)
{
    public static readonly PracticeSettings Default = new(
        DoseSettings.Default,
        new(5),
        new(10),
        new(30),
        new(45),
        60,
        30,
        30,
        180,
        2,
        5,
        7,
        14,
        60,
        13,
        8,
        new(60),
        new(20 * 60),
        2,
        AnswersOnPages.Needed
    );
}

/// <summary>Which answers about health stand on a client's pages, which others may come to see.</summary>
public enum AnswersOnPages
{
    /// <summary>Those that change what the client does or must check: every one but a "no".</summary>
    Needed,

    All,
}
