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
            );
}
