using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class PageUnplanned : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var planned = plan
            .Sessions.Select(s => s.Path)
            .Concat(plan.Exercises.Select(e => e.Path))
            .Concat([PagePath.Home, PagePath.BeforeYouStart, PagePath.Weeks])
            .Concat(plan.Progress is null ? [] : [PagePath.Progress])
            .ToHashSet(StringComparer.Ordinal);
        // One page holds them all where somebody may have put one into it twice.
        return site
            .Pages.Where(page => !planned.Remove(page.Path))
            .Select(page =>
                this.Found(
                    Level.Error,
                    plan.Client,
                    page.At,
                    $"The page '{page.Path}' is not planned for {plan.ClientName}, or is here twice.",
                    "Publish the site again, which takes it away; a page that nobody planned may hold what this client "
                        + "must not do."
                )
            );
    }
}
