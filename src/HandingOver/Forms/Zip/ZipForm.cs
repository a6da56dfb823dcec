using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>One zip: not compressed, in ordinal order, all under one folder named by the client, and the same bytes on any
/// machine.</summary>
public sealed class ZipForm : IForm
{
    private const string Suffix = ".zip";

    public string Word => "zip";

    public string Help => "as one zip file";

    public Rendition Takes => Rendition.Pages;

    public string Ending => Suffix;

    public PublicationResult Write(Site site, TargetFolder target) => Write(site, target, NewFile.Put);

    internal static PublicationResult Write(Site site, TargetFolder target, Action<Places> put)
    {
        var files = SiteFile.AllOf(site);
        var bytes = SiteZip.BytesOf(site.Client, files);
        var places = Places.Of(target.Root, site.Client, Suffix);
        return DiskTrouble.Writing(places.Site, () =>
        {
            target.RefuseVanished();
            InTheWay.RefuseLink(places.Site);
            if (Directory.Exists(places.Site))
                throw new HandOverException($"'{places.Site}' is a folder where the client's zip should be.", InTheWay.MoveIt);
            if (NewFile.Stands(places, bytes))
                return PublicationResult.Of(site, places, false, new([], files, []));
            var changes = Changes.Between(files, FilesOfBefore(places.Site, site.Client));
            places.Replace(() => NewFile.Build(places, bytes), put);
            return PublicationResult.Of(site, places, true, changes);
        });
    }

    public bool Stands(string place, ClientId client) => PublishedZip.IsSiteOf(place, client);

    public string? HashOf(string place) => SiteHash.OfFile(place);

    /// <summary>Nothing is unpacked onto the disk. Whatever could reach out of the client's folder, hide from the auditor or fill
    /// the memory is refused.</summary>
    /// <exception cref="HandOverException">The zip is not there or cannot be read, is damaged, too large, locked or not laid out
    /// as Gradus does it, has an entry that is no plain file in the client's own folder or stands there twice, or a page is not
    /// UTF-8.</exception>
    public Site Read(string place, ClientId client) =>
        DiskTrouble.Reading(place, () => PublishedSite.Of(place, client, PublishedZip.FilesOf(place, client)));

    public string Said(PublicationResult result) => $"{result.InFiles}: {result.Place}";

    /// <summary>What the zip that is to be replaced holds; one that is not there, or has no byte, holds nothing.</summary>
    /// <exception cref="HandOverException">It is something other than a whole zip of a site of this client.</exception>
    private static Series<SiteFile> FilesOfBefore(string zip, ClientId client)
    {
        if (!File.Exists(zip) || new FileInfo(zip).Length == 0)
            return [];
        Exception? cause = null;
        try
        {
            var files = PublishedZip.FilesOf(zip, client);
            if (files.Any(file => file.Path == PagePath.Home))
                return files;
        }
        catch (HandOverException refused)
        {
            cause = refused;
        }
        throw new HandOverException($"'{zip}' is something other than a whole site of '{client}'.", InTheWay.MoveIt, cause);
    }
}
