using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ScriptOrStyleFromAuthor : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site) =>
        from page in site.Pages
        from written in page.Shape.Written
        select new Finding(
            RuleId.Of(GetType()), Level.Warning, plan.Client, written.At, $"This page has {written.What}, which Gradus did not write.",
            "Put styles into a style file of the theme, and leave scripts out: nobody can tell what they do on a client's phone.");
}
