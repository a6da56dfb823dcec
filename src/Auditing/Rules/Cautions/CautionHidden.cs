using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class CautionHidden : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        site
            .Sightings.OfType<Sighting.Hidden>()
            .Select(hidden =>
                this.Found(
                    Level.Error,
                    plan.Client,
                    hidden.At,
                    $"Here {hidden.What} is on the page, but not for everybody: it is hidden by {hidden.By}.",
                    "Show it to everybody: on the screen, in print and to a screen reader."
                )
            )
            .Concat(
                from session in plan.Sessions
                let page = site.Page(session.Path)
                where page is not null
                let signs = site.Asked(plan).SignsOn(session.Path, session.Exercises).Kinds.SelectMany(k => k.Signs).ToArray()
                from seen in page.Signs
                where !IsOne(seen, signs)
                select this.Found(
                    Level.Error,
                    plan.Client,
                    seen.At,
                    $"A script puts this part away until '{seen.Belongs}' is done, and it is not one caution of these alone.",
                    $"Let an element of the class '{PageClass.Caution}' hold one caution, and one of the class "
                        + $"'{PageClass.Belongs}' in it the line of its exercises."
                )
            );

    /// <summary>That it is whole, another rule sees.</summary>
    private static bool IsOne(SignSeen seen, PageSign[] signs) =>
        signs.Any(s => s.Where == seen.Belongs && seen.Lines.All(s.Lines().Contains));
}
