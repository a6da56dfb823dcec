using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What is said where a client measures alone.</summary>
public static class MeasureWords
{
    public static string Note(Plan plan) => plan.Words.Say("guide-measure-note", ("n", plan.Course.EaseOffAbove));

    /// <summary>What stands beside each number.</summary>
    public static IEnumerable<string> Tries(Words words) =>
        Enumerable.Range(1, HomeTest.Tries).Select(n => words.Say("guide-try", ("n", n)));

    /// <summary>What stands on paper above the lines for the numbers.</summary>
    public static string OnPaper(PlannedUse use, Words words) =>
        words.Say("log-measured", ("exercise", use.Title), ("unit", use.Unit));
}
