using System.Security.Cryptography;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Hashes by which a change of any byte, name or file is seen: SHA-256, 64 hexadecimal digits.</summary>
public static class SiteHash
{
    /// <summary>Of all files of a site, under their paths.</summary>
    public static string Of(Site site) =>
        TextHash.Whole(
            string.Concat(
                site.Pages.Select(p => Line(p.Path, TextHash.Whole(p.Html)))
                    .Concat(site.Assets.Select(a => Line(a.Path, Convert.ToHexStringLower(SHA256.HashData(a.Bytes.Span)))))
            )
        );

    /// <summary>Of everything below a folder, hidden or not; null where it cannot be read whole, or has a link in it.</summary>
    internal static string? OfFolder(string folder) =>
        Read(() =>
        {
            var entries = FolderListing.Of(folder).OrderBy(e => e.Path, StringComparer.Ordinal).ToArray();
            return entries.Any(e => e.Kind == EntryKind.Link)
                ? null
                : TextHash.Whole(
                    string.Concat(
                        entries.Select(e =>
                            e.Kind == EntryKind.Folder
                                ? Line(e.Path + "/", "")
                                : Line(e.Path, Bytes(Path.Combine(folder, e.Path), e.Length))
                        )
                    )
                );
        });

    /// <summary>Of a file; null where it is none, or a link, or cannot be read.</summary>
    internal static string? OfFile(string path) =>
        Read(() => new FileInfo(path) is { Exists: true, LinkTarget: null } file ? Bytes(path, file.Length) : null);

    private static string Line(string path, string hash) => FormattableString.Invariant($"{path.Length}:{path} {hash}\n");

    /// <summary>A file of no bytes is not opened: it may be a pipe, which would be waited for without end.</summary>
    private static string Bytes(string path, long length)
    {
        if (length == 0)
            return "";
        using var file = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(file));
    }

    private static string? Read(Func<string?> work)
    {
        try
        {
            return work();
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
