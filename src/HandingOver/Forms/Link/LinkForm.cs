using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>A site to be put on a host: a folder under a name that nobody can guess, in the folder <c>hosted.files</c> of the
/// target, where nothing else is that tells of anybody. That folder is what is copied to the host, whole.</summary>
/// <param name="links">The link of a client; null for one who has none.</param>
public sealed class LinkForm(Func<ClientId, SiteLink?> links) : IForm
{
    public const string FolderName = "hosted.files";

    public string Word => "link";

    public string Help => "as a folder for a host";

    public Rendition Takes => Rendition.Pages;

    /// <summary>No place has it: where a site stands is in no way told by the client.</summary>
    public string Ending => ".link";

    public string PlaceOf(ClientId client, string target) =>
        Path.Combine(target, FolderName, links(client)?.Name ?? client.Text + Ending);

    public PublicationResult Write(Site site, TargetFolder target)
    {
        var place = PlaceOf(site.Client, target.Root);
        var folder = Path.GetDirectoryName(place) ?? place;
        DiskTrouble.Writing(folder, () =>
        {
            target.RefuseVanished();
            InTheWay.RefuseLink(folder);
            Directory.CreateDirectory(folder);
            HostFiles.Put(folder);
            return folder;
        });
        return FolderForm.Write(site, Places.In(folder, Path.GetFileName(place)), target, Exchange.Put);
    }

    public bool Stands(string place, ClientId client) => Folder.Stands(place, client);

    public string? HashOf(string place) => Folder.HashOf(place);

    /// <exception cref="HandOverException">As for any folder.</exception>
    public Site Read(string place, ClientId client) => Folder.Read(place, client);

    public string Said(PublicationResult result) =>
        $"{result.InFiles}: {result.Place}\n  Copy {Path.GetDirectoryName(result.Place)} to the host, whole; the address is "
        + $"{links(result.Client)?.Address}";

    /// <summary>The folders for a host that nobody's link names, in ordinal order: of clients who have another link by now, or
    /// are no longer in the practice.</summary>
    /// <param name="named">Every link there is.</param>
    /// <exception cref="HandOverException">The target cannot be read.</exception>
    public static Series<string> Strangers(string target, IEnumerable<SiteLink> named)
    {
        var folder = Path.Combine(target, FolderName);
        var known = named.Select(link => link.Name).ToHashSet(StringComparer.Ordinal);
        if (!Directory.Exists(folder))
            return [];
        return DiskTrouble.Reading(folder, () =>
            Directory
                .EnumerateDirectories(folder)
                .Where(place => SiteLink.IsName(Path.GetFileName(place)) && !known.Contains(Path.GetFileName(place)))
                .Order(StringComparer.Ordinal)
                .ToSeries()
        );
    }

    /// <summary>Takes away the folder of a link that nobody is to use any more.</summary>
    /// <exception cref="HandOverException">It could not be taken away.</exception>
    public static void Remove(string target, SiteLink link)
    {
        var places = Places.In(Path.Combine(target, FolderName), link.Name);
        DiskTrouble.Writing(places.Site, () =>
        {
            // Renamed first: what is half removed has a name that the next publish clears away.
            if (Directory.Exists(places.Site))
                Directory.Move(places.Site, places.New);
            Leftovers.Remove(places.New);
            return places;
        });
    }

    /// <summary>Puts right what a publish that was killed left in the folder for the host.</summary>
    internal static void PutRight(string target)
    {
        var folder = Path.Combine(target, FolderName);
        if (Directory.Exists(folder))
            Leftovers.PutRight(folder, name => SiteLink.IsName(name) || HostFiles.Names.Contains(name));
    }

    private static FolderForm Folder { get; } = new();
}
