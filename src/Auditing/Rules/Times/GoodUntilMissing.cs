using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class GoodUntilMissing : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var day = plan.GoodUntil.Day.Iso();
        foreach (var page in site.Pages)
        {
            if (!page.Shown.Any(l => WholeWords.Stand(l.Text, plan.GoodUntil.Sentence)))
                yield return this.Wrong(
                    plan,
                    page.At,
                    $"This page does not say \"{plan.GoodUntil.Sentence}\"",
                    "Show on every page how long it may be used, word for word; the plain theme does it in foot.html."
                );
            foreach (var past in page.Shape.Past.Where(p => p.Day != day || p.Text != plan.GoodUntil.Past))
                yield return this.Wrong(
                    plan,
                    past.At,
                    $"This page would say \"{past.Text}\" after {past.Day}, but its last day is {day}.",
                    $"Let it say \"{plan.GoodUntil.Past}\" and write {PageData.GoodUntil}=\"{day}\"; the plain theme does it "
                        + "in top.html."
                );
            if (
                page.Shape.Scripts.FirstOrDefault(s => s.Source == BuiltScript.Page.Path) is { } script
                && page.Shape.Past.Count == 0
            )
                yield return this.Wrong(
                    plan,
                    script.At,
                    "This page has the script that ends its use, and nothing that the script could show.",
                    "Put back what the plain theme has for it in top.html, or take the script out."
                );
        }
    }
}
