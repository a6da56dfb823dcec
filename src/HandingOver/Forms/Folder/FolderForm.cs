using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>A folder named by the client, with every page and file in it. It belongs to Gradus alone: a file that somebody put
/// into it counts as a change, and is gone once the site is published again.</summary>
public sealed class FolderForm : IForm
{
    public string Word => "folder";

    public string Help => "as a folder";

    public Rendition Takes => Rendition.Pages;

    public string Ending => "";

    public PublicationResult Write(Site site, TargetFolder target) => Write(site, target, Exchange.Put);

    internal static PublicationResult Write(Site site, TargetFolder target, Action<Places> put) =>
        Write(site, Places.Of(target.Root, site.Client), target, put);

    internal static PublicationResult Write(Site site, Places places, TargetFolder target, Action<Places> put)
    {
        var files = SiteFile.AllOf(site);
        return DiskTrouble.Writing(places.Site, () =>
        {
            target.RefuseVanished();
            RefuseOther(places.Site);
            var changes = Changes.Between(files, places.Site);
            if (changes.Any)
                places.Replace(() => NewFolder.Build(places, changes), put);
            return PublicationResult.Of(site, places, changes.Any, changes);
        });
    }

    public bool Stands(string place, ClientId client) => File.Exists(Path.Combine(place, PagePath.Home));

    public string? HashOf(string place) => Directory.Exists(place) ? SiteHash.OfFolder(place) : null;

    /// <summary>Files that end in <c>.html</c>, in whatever case, are its pages, all others its assets, hidden ones
    /// too.</summary>
    /// <exception cref="HandOverException">The folder is not there or cannot be read, holds a link, is too large, or a page is
    /// not UTF-8.</exception>
    public Site Read(string place, ClientId client) =>
        DiskTrouble.Reading(place, () => PublishedSite.Of(place, client, PublishedFolder.FilesOf(place)));

    public string Said(PublicationResult result) => $"{result.InFiles}: {Path.Combine(result.Place, PagePath.Home)}";

    /// <summary>A folder with something in it and no front page is nobody's site.</summary>
    /// <exception cref="HandOverException">A link, a file or such a folder stands there.</exception>
    private static void RefuseOther(string folder)
    {
        InTheWay.RefuseLink(folder);
        if (File.Exists(folder))
            throw new HandOverException($"'{folder}' is a file where the client's folder should be.", InTheWay.MoveIt);
        if (
            Directory.Exists(folder)
            && Directory.EnumerateFileSystemEntries(folder).Any()
            && !File.Exists(Path.Combine(folder, PagePath.Home))
        )
            throw new HandOverException($"'{folder}' holds something that is no site.", InTheWay.MoveIt);
    }
}
