using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class PageWithoutCautions : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        foreach (var path in Paths(plan).Where(path => site.Page(path) is null))
        {
            yield return this.Wrong(
                plan,
                Location.Whole(path),
                "This page, with its cautions, is not there.",
                "Publish again; if a theme is in use, look at its templates."
            );
        }

        foreach (var missing in site.Sightings.OfType<Sighting.Missing>())
        {
            yield return this.Wrong(
                plan,
                missing.At,
                $"This page tells somebody to move, but {missing.What} is not on it.",
                "Show all cautions and notes of the page's exercises before the first instruction; in a theme, include "
                    + "cautions.html."
            );
        }
    }

    private static IEnumerable<string> Paths(Plan plan) =>
        plan.Sessions.Select(s => s.Path).Concat(plan.Exercises.Select(e => e.Path)).Prepend(PagePath.BeforeYouStart);
}
