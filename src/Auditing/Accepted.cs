using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a coach accepts, and what it comes to today.</summary>
/// <param name="Fits">What was found of that rule in that file, and is what the coach saw.</param>
/// <param name="Others">What was found of that rule in that file, and says something else.</param>
/// <param name="Known">The page of the rule; null where there is no such rule.</param>
/// <param name="Nearest">The rule that was probably meant, where there is no such rule.</param>
/// <param name="Days">How many days from today on it may hold at most; null where that is left to the coach.</param>
public sealed record Accepted(
    Acceptance Acceptance,
    Series<Finding> Fits,
    Series<Finding> Others,
    RulePage? Known,
    string? Nearest,
    int? Days
)
{
    /// <summary>A rule that is at error level alone cannot be accepted, whether or not it finds anything.</summary>
    public bool IsRefused => Known is null || IsErrorAlone(Known) || Fits.Concat(Others).Any(f => f.Level == Level.Error);

    /// <param name="today">The day after the last one is too late.</param>
    public bool Holds(DateOnly today) => !IsRefused && today <= Acceptance.Until && !IsTooLong(today);

    /// <summary>Whether its last day is further away than the rule allows.</summary>
    public bool IsTooLong(DateOnly today) => Days is { } days && Acceptance.Until > today.AddDays(days);

    /// <summary>Each acceptance beside what it fits.</summary>
    /// <param name="pages">Those of every rule, wherever it is judged.</param>
    public static Series<Accepted> Of(Series<Acceptance> accepted, IEnumerable<Finding> findings, IEnumerable<RulePage> pages)
    {
        var known = pages.ToDictionary(p => p.Rule);
        var found = findings.ToLookup(f => (f.Rule, f.At.File));
        return accepted
            .Select(a => new Accepted(
                a,
                found[(a.Rule, a.File)].Where(f => IsWhatWasSeen(a, f)).ToSeries(),
                found[(a.Rule, a.File)].Where(f => !IsWhatWasSeen(a, f)).ToSeries(),
                known.GetValueOrDefault(a.Rule),
                Domain.Nearest.To(a.Rule.Text, known.Keys.Select(k => k.Text)),
                RuleBook.Rules.FirstOrDefault(r => r.Id == a.Rule)?.AcceptedDays
            ))
            .ToSeries();
    }

    /// <summary>A warning about a client is accepted for the reason that it gave, and no other: new pain is a new
    /// warning.</summary>
    private static bool IsWhatWasSeen(Acceptance acceptance, Finding finding) =>
        acceptance.Saw is { } saw ? Spacing.Collapse(saw) == Spacing.Collapse(finding.Message) : finding.Client is null;

    /// <summary>As the line of the page that begins with "Level:" has it.</summary>
    private static bool IsErrorAlone(RulePage page) =>
        page.Text.Split('\n').FirstOrDefault(l => l.StartsWith("Level: ", StringComparison.Ordinal)) is { } line
        && !WholeWords.Places(line, "warning").Any()
        && !WholeWords.Places(line, "note").Any();
}
