using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class LabelMissing : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from page in site.Pages
        from nameless in page.Shape.Nameless
        select this.Found(
            Level.Error,
            plan.Client,
            nameless.At,
            $"Somebody who hears this page comes upon {nameless.What}, and is told no name.",
            "Give it words: text inside it, 'alt' for a picture, a label for a field, 'aria-label' or 'aria-labelledby' "
                + "for a part of the page."
        );
}
