using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What belongs to weeks, as a page writes it for its script.</summary>
public static class WeekData
{
    /// <summary>"1 2=30 seconds;3=45 seconds".</summary>
    public static string Of(Inline.Figure figure) => string.Join(';', figure.ByWeek.Select(r => $"{Numbers(r.Weeks)}={r.Said}"));

    /// <summary>A figure as an auditor compares it: what stands there, and what a script puts in its place.</summary>
    public static string Whole(string words, string byWeek) => $"{words} ({byWeek})";

    /// <summary>Numbers as an attribute has them.</summary>
    public static string Numbers(IEnumerable<int> weeks) =>
        string.Join(' ', weeks.Select(w => FormattableString.Invariant($"{w}")));
}
