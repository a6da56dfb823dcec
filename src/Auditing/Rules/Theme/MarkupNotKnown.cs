using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class MarkupNotKnown : ISiteRule, ISheetRule
{
    private const string DataHelp = "Leave it out: the page contract names the data attributes that a page may have.";

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var spoken = site.Asked(plan).Spoken;
        foreach (var page in site.Pages)
        foreach (
            var cause in page
                .Shape.Strange.Concat(
                    page.Shape.Words.Where(w => IsStrange(w.Name, spoken))
                        .Select(w => new StrangeMarkup($"the attribute '{w.Name}'", DataHelp, w.At))
                )
                .GroupBy(s => s.What, StringComparer.Ordinal)
                .Select(same => same.ToArray())
        )
            yield return this.Wrong(
                plan,
                cause[0].At,
                $"This page has {cause[0].What}, which no page may have{Count(cause.Length)}.",
                cause[0].Help
            );
    }

    public IEnumerable<Finding> Check(IntakeSheet sheet, IntakeSheetSeen seen) =>
        from strange in seen.Strange.Concat(
            seen.Data.Where(d => !KnownMarkup.IsData(d.Name))
                .Select(d => new StrangeMarkup($"the attribute '{d.Name}'", DataHelp, d.At))
        )
        group strange by strange.What into same
        let first = same.First()
        select this.Found(
            Level.Error,
            null,
            first.At,
            $"The intake sheet has {first.What}, which no sheet may have{Count(same.Count())}.",
            first.Help
        );

    private static bool IsStrange(string name, IReadOnlyDictionary<string, string> spoken) =>
        name.StartsWith("data-", StringComparison.Ordinal) && !KnownMarkup.IsData(name) && !spoken.ContainsKey(name);

    private static string Count(int times) => times == 1 ? "" : FormattableString.Invariant($", {times} times");
}
