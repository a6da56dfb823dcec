using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Hands a site over as a folder, in one step: whoever looks sees the whole site of before or the whole new one.</summary>
/// <remarks>The client's folder belongs to Gradus alone. A file that somebody put into it counts as a change, and is gone once the site is
/// published again: what is handed over is exactly what was audited.</remarks>
public static class Publication
{
    /// <summary>Hands over one site; the target is held for this one only. A publish of several clients opens the target once.</summary>
    /// <exception cref="HandOverException">It could not be done; the site that stood there still stands whole.</exception>
    public static PublicationResult Write(Site site, string target)
    {
        using var folder = TargetFolder.Open(target);
        return Write(site, folder);
    }

    /// <summary>Hands over one site into the client's own folder of the target. Sites of different clients may be written at the same time.</summary>
    /// <exception cref="HandOverException">It could not be done; the site that stood there still stands whole.</exception>
    public static PublicationResult Write(Site site, TargetFolder target) => Write(site, target, Exchange.Put);

    internal static PublicationResult Write(Site site, TargetFolder target, Action<Places> put)
    {
        var files = SiteFile.AllOf(site);
        var places = Places.Of(target.Root, site.Client);
        return DiskTrouble.Writing(places.Site, () =>
        {
            target.RefuseVanished();
            RefuseOtherThanSite(places.Site);
            var changes = Changes.Between(files, places.Site);
            if (changes.Any) Replace(places, changes, put);
            return new PublicationResult(site.Client, changes.Written.Select(f => f.Path).ToSeries(),
                changes.Untouched.Select(f => f.Path).ToSeries(), changes.Removed, site.Pages.Count, files.Sum(f => (long)f.Bytes.Length));
        });
    }

    /// <summary>The clients whose site stands in the target and who are not among the given, in ordinal order. They are named, never deleted.
    /// A target that is not there has none.</summary>
    /// <exception cref="HandOverException">The target cannot be read.</exception>
    public static Series<ClientId> Strangers(string target, IEnumerable<ClientId> clients)
    {
        var known = clients.ToHashSet();
        if (!Directory.Exists(target)) return [];
        return DiskTrouble.Reading(target, () => Directory.EnumerateDirectories(target)
            .Select(folder => Path.GetFileName(folder))
            .Where(name => Id.IsValid(name) && File.Exists(Path.Combine(target, name, SiteFile.FrontPage)))
            .Order(StringComparer.Ordinal)
            .Select(name => new ClientId(name))
            .Where(client => !known.Contains(client))
            .ToSeries());
    }

    /// <summary>The day on which the site that stands in the client's folder was put there; null where there is none.</summary>
    public static DateOnly? DateOf(ClientId client, TargetFolder target)
    {
        var site = new DirectoryInfo(Places.Of(target.Root, client).Site);
        return site.Exists ? DateOnly.FromDateTime(site.LastWriteTime) : null;
    }

    private static void Replace(Places places, Changes changes, Action<Places> put)
    {
        try
        {
            NewFolder.Build(places, changes);
            put(places);
        }
        finally
        {
            // After the exchange this is the site of before, after a failure the unfinished one.
            Leftovers.TryRemove(places.New);
        }
    }

    /// <summary>A folder with something in it and no front page is nobody's site: a mistaken <c>--to</c> must not cost a coach the
    /// folder of the same name, such as the client's own in the practice.</summary>
    private static void RefuseOtherThanSite(string folder)
    {
        if (new FileInfo(folder).LinkTarget is not null)
            throw new HandOverException($"'{folder}' is a link to another place.", "Remove the link, or name another folder with --to.");
        if (File.Exists(folder))
            throw new HandOverException($"'{folder}' is a file where the client's folder should be.", "Move it away, or name another folder with --to.");
        if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any() && !File.Exists(Path.Combine(folder, SiteFile.FrontPage)))
            throw new HandOverException($"'{folder}' holds something that is no site.", "Move it away, or name another folder with --to.");
    }
}
