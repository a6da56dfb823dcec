using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class UnexplainedTerm : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from page in site.Pages
        from term in plan.TermsOn(page.Path)
        let used = page.Shown.FirstOrDefault(line => WholeWords.Places(line.Text, Spacing.Collapse(term.Words)).Any())
        where used is not null && !IsExplained(page.Shown, term)
        select this.Found(
            Level.Error,
            plan.Client,
            used.At,
            $"This page uses '{term.Words}' and does not say \"{term.Explanation}\" beside '{term.Word}'.",
            "Show every word of the page with its explanation, word for word; the plain theme does it in terms.html."
        );

    /// <summary>The explanation stands in the line of the word, or in the next one.</summary>
    private static bool IsExplained(Series<TextLine> lines, Inline.Term term) =>
        Enumerable
            .Range(0, lines.Count)
            .Any(at => Holds(lines, at, term.Explanation) && (Holds(lines, at, term.Word) || Holds(lines, at - 1, term.Word)));

    private static bool Holds(Series<TextLine> lines, int at, string text) =>
        at >= 0 && WholeWords.Places(lines[at].Text, Spacing.Collapse(text)).Any();
}
