using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class FileListWrong : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        if (site.Texts.FirstOrDefault(t => t.Path == PagePath.FileList) is { } list && list.Text != site.FileList)
            yield return this.Found(
                Level.Error,
                plan.Client,
                Location.Whole(list.Path),
                "This list does not name the edition and the files of this site as they are.",
                "Publish the site again: with a wrong list a browser keeps an old copy, or none, for when there is no network."
            );
    }
}
