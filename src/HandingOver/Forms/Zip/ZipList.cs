using System.IO.Compression;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Judges the list of entries of a zip that is not trusted, before any of them is read.</summary>
internal static class ZipList
{
    private const int KindOfFile = 0xf000,
        PlainFile = 0x8000;
    private const int LongestShown = 80;

    /// <summary>The paths of all entries are safe, lie in the client's folder and stand there once, capitals or not; each is a
    /// plain file that needs no password; all sizes are those that a site may have, as far as the list says.</summary>
    /// <exception cref="HandOverException">Any of this is not so.</exception>
    public static void Check(ZipArchive archive, string zip, ClientId client)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var size = 0L;
        foreach (var entry in archive.Entries)
        {
            if (!SitePath.IsSafe(entry.FullName))
                throw Refused(zip, $"holds '{Shown(entry)}', which is no safe path");
            if (!entry.FullName.StartsWith(client.Text + "/", StringComparison.Ordinal))
                throw Refused(zip, $"holds '{Shown(entry)}' outside the folder '{client}'");
            if (!names.Add(entry.FullName))
                throw Refused(zip, $"holds '{Shown(entry)}' twice");
            RefuseKind(entry, zip);
            var most = PublishedSite.Largest(entry.FullName[(client.Text.Length + 1)..]);
            if (most < PublishedSite.LargestSite && entry.Length > most)
                throw Refused(zip, $"holds '{Shown(entry)}', which is larger than {most / PublishedSite.MiB} MiB");
            if (entry.Length > PublishedSite.LargestSite || (size += entry.Length) > PublishedSite.LargestSite)
                throw Refused(zip, $"unpacks to more than {PublishedSite.LargestSite / PublishedSite.MiB} MiB");
        }
        if (archive.Entries.FirstOrDefault(entry => SitePath.FoldersOf(entry.FullName).Any(names.Contains)) is { } inside)
            throw Refused(zip, $"holds '{Shown(inside)}' inside another file");
    }

    private static void RefuseKind(ZipArchiveEntry entry, string zip)
    {
        if (entry.IsEncrypted)
            throw Refused(zip, $"has locked '{Shown(entry)}' with a password");
        if (((entry.ExternalAttributes >> 16) & KindOfFile) != PlainFile)
            throw Refused(zip, $"holds '{Shown(entry)}', which is a link or no plain file");
    }

    /// <summary>A stranger chose the name: it must not reach a terminal with signs that steer it, or fill it.</summary>
    private static string Shown(ZipArchiveEntry entry)
    {
        var name = entry.FullName.Length > LongestShown ? entry.FullName[..LongestShown] + "…" : entry.FullName;
        return string.Concat(name.Select(sign => char.IsControl(sign) ? '?' : sign));
    }

    private static HandOverException Refused(string zip, string what) => new($"'{zip}' {what}.", "Publish the site again.");
}
