using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class CautionAltered : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        site
            .Sightings.OfType<Sighting.Altered>()
            .Select(altered =>
                this.Found(
                    Level.Error,
                    plan.Client,
                    altered.At,
                    $"Here {altered.What} is not as it must stand: {altered.How}.",
                    "Show it whole and in its own words, a caution under the name of its kind, with the exercises it belongs to."
                )
            );
}
