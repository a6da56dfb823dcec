using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class GoodUntilMissing : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site) =>
        from page in site.Pages
        where !page.Shown.Any(l => WholeWords.Places(l.Text, plan.GoodUntil).Any())
        select new Finding(
            RuleId.Of(GetType()), Level.Error, plan.Client, Location.Whole(page.Path), $"This page does not say \"{plan.GoodUntil}\"",
            "Show on every page how long it may be used, word for word; the plain theme does it in foot.html.");
}
