using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class MetadataHandedOver : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        site.Metadata.Select(seen =>
            this.Found(
                Level.Error,
                plan.Client,
                Location.Whole(seen.Path),
                $"'{seen.Path}' {seen.What}, beside what it shows.",
                "Publish the site again, which cleans the pictures and clips of the practice; if the file is the theme's, "
                    + "save it without notes, comments and the place."
            )
        );
}
