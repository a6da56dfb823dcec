using System.Text;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Hands a site over as a folder or as a zip, in one step: whoever looks sees the whole site of before or the whole new
/// one. Both may stand beside each other; each is published on its own.</summary>
/// <remarks>The client's folder belongs to Gradus alone. A file that somebody put into it counts as a change, and is gone once
/// the site is published again: what is handed over is exactly what was audited. So does the client's zip.</remarks>
public static class Publication
{
    /// <summary>Hands over one site; the target is held for this one only. A publish of several clients opens the target
    /// once.</summary>
    /// <exception cref="HandOverException">It could not be done; the site that stood there still stands whole.</exception>
    public static PublicationResult Write(Site site, string target)
    {
        using var folder = TargetFolder.Open(target);
        return Write(site, folder);
    }

    /// <summary>Hands over one site into the client's own folder of the target. Sites of different clients may be written at the
    /// same time.</summary>
    /// <exception cref="HandOverException">It could not be done; the site that stood there still stands whole.</exception>
    public static PublicationResult Write(Site site, TargetFolder target) => Write(site, target, Exchange.Put);

    internal static PublicationResult Write(Site site, TargetFolder target, Action<Places> put)
    {
        var files = SiteFile.AllOf(site);
        var places = Places.Of(target.Root, site.Client);
        return DiskTrouble.Writing(places.Site, () =>
        {
            target.RefuseVanished();
            InTheWay.RefuseAtFolder(places.Site);
            var changes = Changes.Between(files, places.Site);
            if (changes.Any)
                Replace(places, () => NewFolder.Build(places, changes), put);
            return Result(site, places, changes.Any, changes);
        });
    }

    /// <summary>As <see cref="WriteZip(Site, TargetFolder)"/>; the target is held for this one only.</summary>
    /// <exception cref="HandOverException">It could not be done; the zip that stood there still stands whole.</exception>
    public static PublicationResult WriteZip(Site site, string target)
    {
        using var folder = TargetFolder.Open(target);
        return WriteZip(site, folder);
    }

    /// <summary>Hands over one site as <c>ID.zip</c> in the target: not compressed, in ordinal order, all under one folder named
    /// by the client, and the same bytes on any machine. Sites of different clients may be written at the same time.</summary>
    /// <exception cref="HandOverException">It could not be done; the zip that stood there still stands whole.</exception>
    public static PublicationResult WriteZip(Site site, TargetFolder target) => WriteZip(site, target, NewFile.Put);

    internal static PublicationResult WriteZip(Site site, TargetFolder target, Action<Places> put)
    {
        var files = SiteFile.AllOf(site);
        var bytes = SiteZip.BytesOf(site.Client, files);
        var places = Places.OfZip(target.Root, site.Client);
        return DiskTrouble.Writing(places.Site, () =>
        {
            target.RefuseVanished();
            InTheWay.RefuseAtZip(places.Site);
            if (IsSame(places.Site, bytes))
                return Result(site, places, false, new([], files, []));
            var changes = Changes.Between(files, InTheWay.FilesOfZip(places.Site, site.Client));
            Replace(places, () => NewFile.Build(places, bytes), put);
            return Result(site, places, true, changes);
        });
    }

    /// <summary>Hands over a site that is one page as <c>ID.html</c> in the target. Sites of different clients may be written at
    /// the same time.</summary>
    /// <exception cref="HandOverException">It could not be done; the page that stood there still stands whole.</exception>
    public static PublicationResult WritePage(Site site, TargetFolder target)
    {
        var places = Places.OfPage(target.Root, site.Client);
        var page = site.Pages.Single();
        var bytes = Encoding.UTF8.GetBytes(page.Html);
        Series<SiteFile> files = [new(page.Path, bytes)];
        return DiskTrouble.Writing(places.Site, () =>
        {
            target.RefuseVanished();
            PublishedPage.RefuseOther(places.Site);
            if (IsSame(places.Site, bytes))
                return Result(site, places, false, new([], files, []));
            Replace(places, () => NewFile.Build(places, bytes), NewFile.Put);
            return Result(site, places, true, new(files, [], []));
        });
    }

    /// <summary>The clients whose site stands in the target, in whichever form, and who are not among the given, in ordinal
    /// order. They are named, never deleted; <see cref="PlacesOf"/> says what stands. A target that is not there has
    /// none.</summary>
    /// <exception cref="HandOverException">The target cannot be read.</exception>
    public static Series<ClientId> Strangers(string target, IEnumerable<ClientId> clients)
    {
        var known = clients.ToHashSet();
        if (!Directory.Exists(target))
            return [];
        return DiskTrouble.Reading(target, () =>
            StandingSites.ClientsIn(target).Where(client => !known.Contains(client)).ToSeries()
        );
    }

    /// <summary>The paths at which a site of the client stands in the target: the folder, then the zip, then the page; none, one
    /// or several.</summary>
    /// <exception cref="HandOverException">The target cannot be read.</exception>
    public static Series<string> PlacesOf(ClientId client, string target) =>
        DiskTrouble.Reading(target, () => StandingSites.Of(client, target));

    /// <summary>The day on which the site that stands in the target was put there, the latest one where several forms stand; null
    /// where there is none.</summary>
    /// <exception cref="HandOverException">The target cannot be read.</exception>
    public static DateOnly? DateOf(ClientId client, TargetFolder target) =>
        PlacesOf(client, target.Root).Select(place => (DateOnly?)DateOnly.FromDateTime(Directory.GetLastWriteTime(place))).Max();

    private static bool IsSame(string zip, byte[] bytes) =>
        new FileInfo(zip) is { Exists: true } standing
        && standing.Length == bytes.Length
        && File.ReadAllBytes(zip).AsSpan().SequenceEqual(bytes);

    private static PublicationResult Result(Site site, Places places, bool changed, Changes changes) =>
        new(
            site.Client,
            places.Site,
            changed,
            changes.Written.Select(file => file.Path).ToSeries(),
            changes.Untouched.Select(file => file.Path).ToSeries(),
            changes.Removed,
            site.Pages.Count,
            changes.Written.Concat(changes.Untouched).Sum(file => (long)file.Bytes.Length)
        );

    internal static void Replace(Places places, Action build, Action<Places> put)
    {
        try
        {
            build();
            put(places);
        }
        finally
        {
            // After the exchange this is the folder of before, after a failure the unfinished folder or zip.
            Leftovers.TryRemove(places.New);
        }
    }
}
