using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class FileListWrong : ISiteRule
{
    private const string Help =
        "Publish the site again: with a wrong list a browser keeps an old copy, or none, for when there is no network.";

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var list = site.Texts.FirstOrDefault(t => t.Path == PagePath.FileList);
        if (list is not null && list.Text != site.FileList)
            yield return this.Found(
                Level.Error,
                plan.Client,
                Location.Whole(list.Path),
                "This list does not name the edition and the files of this site as they are.",
                Help
            );
        if (list is null && site.Files.Contains(BuiltScript.Worker.Path))
            yield return this.Found(
                Level.Error,
                plan.Client,
                Location.Whole(PagePath.FileList),
                "This site keeps itself for when there is no network, and has no list of its files.",
                Help
            );
    }
}
