using System.Text;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Reads a published site back, so that the auditor sees what the client has. The folder is not trusted.</summary>
public static class PublishedSite
{
    /// <summary>The largest page that is read, in bytes, inclusive.</summary>
    public const int LargestPage = 4 * MiB;

    /// <summary>The largest site that is read, all files together, in bytes, inclusive.</summary>
    public const int LargestSite = 1024 * MiB;

    /// <summary>How many files and folders a site may have, inclusive.</summary>
    public const int MostFiles = 10_000;

    private const int MiB = 1024 * 1024;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The site in one client's folder: files that end in <c>.html</c>, in whatever case, are its pages, all others its assets,
    /// hidden ones too.</summary>
    /// <exception cref="HandOverException">The folder is not there or cannot be read, holds a link, is too large, or a page is not UTF-8.</exception>
    public static Site Read(string folder, ClientId client) => DiskTrouble.Reading(folder, () =>
    {
        var files = FilesOf(folder).ToLookup(file => file.Path.EndsWith(".html", StringComparison.OrdinalIgnoreCase));
        var pages = files[true].Select(file => new Page(file.Path, TextOf(folder, file)));
        var assets = files[false].Select(file => new Asset(file.Path, BytesOf(folder, file, LargestSite)));
        try
        {
            return new Site(client, pages, assets);
        }
        catch (ArgumentException twice)
        {
            throw new HandOverException($"Two files in '{folder}' have names that differ only in case.", "Publish the site again.", twice);
        }
    });

    private static Series<Entry> FilesOf(string folder)
    {
        RefuseLink(folder, new FileInfo(Path.TrimEndingDirectorySeparator(folder)).LinkTarget is not null);
        if (!Directory.Exists(folder))
            throw new HandOverException($"There is no published site in '{folder}'.", "Publish it first, or name another folder with --site.");
        var entries = FolderListing.Of(folder).Take(MostFiles + 1).ToSeries();
        if (entries.Count > MostFiles) throw new HandOverException($"'{folder}' holds more than {MostFiles} files.", "Name the folder of a site with --site.");
        foreach (var entry in entries) RefuseLink(Path.Combine(folder, entry.Path), entry.Kind == EntryKind.Link);
        if (entries.Where(entry => entry.Kind == EntryKind.File).Sum(entry => entry.Length) > LargestSite)
            throw new HandOverException($"'{folder}' is larger than {LargestSite / MiB} MiB.", "Name the folder of a site with --site.");
        return entries.Where(entry => entry.Kind == EntryKind.File).ToSeries();
    }

    private static void RefuseLink(string path, bool isLink)
    {
        if (isLink) throw new HandOverException($"'{path}' is a link and may lead out of the site.", "Remove it, and publish the site again.");
    }

    private static string TextOf(string folder, Entry page)
    {
        try
        {
            return Utf8.GetString(BytesOf(folder, page, LargestPage));
        }
        catch (DecoderFallbackException broken)
        {
            throw new HandOverException($"'{Path.Combine(folder, page.Path)}' is not UTF-8 text.", "Publish the site again.", broken);
        }
    }

    private static byte[] BytesOf(string folder, Entry file, int most)
    {
        // A file of no bytes is not opened: it may be a pipe, which would be waited for without end.
        if (file.Length == 0) return [];
        var path = Path.Combine(folder, file.Path);
        using var opened = File.OpenHandle(path, FileMode.Open, FileAccess.Read);
        var length = RandomAccess.GetLength(opened);
        if (length > most) throw new HandOverException($"'{path}' is larger than {most / MiB} MiB.", "Publish the site again.");
        var bytes = new byte[length];
        var read = 0;
        for (int got; read < bytes.Length && (got = RandomAccess.Read(opened, bytes.AsSpan(read), read)) > 0;) read += got;
        return read == bytes.Length ? bytes : throw new EndOfStreamException($"'{path}' became shorter while it was read.");
    }
}
