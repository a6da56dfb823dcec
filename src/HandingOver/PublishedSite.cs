using System.Text;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Reads a published site back, so that the auditor sees what the client has. Neither a folder nor a zip is trusted.</summary>
public static class PublishedSite
{
    /// <summary>The largest page that is read, in bytes, inclusive.</summary>
    public const int LargestPage = 4 * MiB;

    /// <summary>The largest site that is read, all files together, in bytes, inclusive.</summary>
    public const int LargestSite = 1024 * MiB;

    /// <summary>How many files and folders a site may have, inclusive.</summary>
    public const int MostFiles = 10_000;

    internal const int MiB = 1024 * 1024;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The site in one client's folder: files that end in <c>.html</c>, in whatever case, are its pages, all others its assets,
    /// hidden ones too.</summary>
    /// <exception cref="HandOverException">The folder is not there or cannot be read, holds a link, is too large, or a page is not UTF-8.</exception>
    public static Site Read(string folder, ClientId client) =>
        DiskTrouble.Reading(folder, () => SiteOf(folder, client, PublishedFolder.FilesOf(folder)));

    /// <summary>The site in one client's zip, as <see cref="Read"/> has it of a folder; nothing is unpacked onto the disk. Whatever
    /// could reach out of the client's folder, hide from the auditor or fill the memory is refused.</summary>
    /// <exception cref="HandOverException">The zip is not there or cannot be read, is damaged, too large, locked or not laid out as Gradus does
    /// it, has an entry that is no plain file in the client's own folder or stands there twice, or a page is not UTF-8.</exception>
    public static Site ReadZip(string zip, ClientId client) =>
        DiskTrouble.Reading(zip, () => SiteOf(zip, client, PublishedZip.FilesOf(zip, client)));

    internal static bool IsPage(string path) => path.EndsWith(".html", StringComparison.OrdinalIgnoreCase);

    private static Site SiteOf(string place, ClientId client, Series<SiteFile> all)
    {
        var files = all.ToLookup(file => IsPage(file.Path));
        var pages = files[true].Select(file => new Page(file.Path, TextOf(place, file)));
        var assets = files[false].Select(file => new Asset(file.Path, file.Bytes));
        try
        {
            return new Site(client, pages, assets);
        }
        catch (ArgumentException twice)
        {
            throw new HandOverException($"Two files in '{place}' have names that differ only in case.", "Publish the site again.", twice);
        }
    }

    private static string TextOf(string place, SiteFile page)
    {
        try
        {
            return Utf8.GetString(page.Bytes.Span);
        }
        catch (DecoderFallbackException broken)
        {
            throw new HandOverException($"'{Path.Combine(place, page.Path)}' is not UTF-8 text.", "Publish the site again.", broken);
        }
    }
}
