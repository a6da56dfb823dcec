using System.Buffers;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>A published site put together from its files, so that the auditor sees what the client has, and how large it may be.
/// No form of it is trusted.</summary>
public static class PublishedSite
{
    /// <summary>The largest page that is read, in bytes, inclusive; without what is written out in it of pictures and
    /// clips.</summary>
    public const int LargestPage = 4 * MiB;

    /// <summary>The largest page that is read with its pictures and clips, in bytes, inclusive: the one that holds all
    /// others.</summary>
    public const int LargestWhole = 64 * MiB;

    /// <summary>The largest site that is read, all files together, in bytes, inclusive.</summary>
    public const int LargestSite = 1024 * MiB;

    /// <summary>How many files and folders a site may have, inclusive.</summary>
    public const int MostFiles = 10_000;

    internal const int MiB = 1024 * 1024;

    private static readonly SearchValues<char> Base64 = SearchValues.Create(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/="
    );

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>How large a file of a site may be.</summary>
    internal static int Largest(string path) =>
        path == PagePath.AllPages ? LargestWhole
        : IsPage(path) ? LargestPage
        : LargestSite;

    internal static bool IsPage(string path) => path.EndsWith(PagePath.Ending, StringComparison.OrdinalIgnoreCase);

    /// <summary>Files that end in <c>.html</c>, in whatever case, are its pages, all others its assets.</summary>
    /// <param name="place">Where they were read from.</param>
    internal static Site Of(string place, ClientId client, Series<SiteFile> all)
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
            throw new HandOverException(
                $"Two files in '{place}' have names that differ only in case.",
                "Publish the site again.",
                twice
            );
        }
    }

    private static string TextOf(string place, SiteFile page)
    {
        try
        {
            var text = Utf8.GetString(page.Bytes.Span);
            return WithoutFiles(text) <= LargestPage
                ? text
                : throw new HandOverException(
                    $"'{Path.Combine(place, page.Path)}' is larger than {LargestPage / MiB} MiB, without its pictures and clips.",
                    "Publish the site again."
                );
        }
        catch (DecoderFallbackException broken)
        {
            throw new HandOverException(
                $"'{Path.Combine(place, page.Path)}' is not UTF-8 text.",
                "Publish the site again.",
                broken
            );
        }
    }

    /// <summary>How much of a page is read as a page: what is written out in an address is not.</summary>
    private static int WithoutFiles(string page)
    {
        const string mark = ";base64,";
        var length = page.Length;
        if (length <= LargestPage)
            return length;
        for (
            var at = page.IndexOf(mark, StringComparison.Ordinal);
            at >= 0;
            at = page.IndexOf(mark, at, StringComparison.Ordinal)
        )
        {
            at += mark.Length;
            var data = page.AsSpan(at).IndexOfAnyExcept(Base64);
            if (data < 0)
                data = page.Length - at;
            length -= data;
            at += data;
        }

        return length;
    }
}
