using System.Buffers;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>The file by which a hosted site can be kept for when there is no network: its edition, and each file of it.</summary>
public static class FileList
{
    /// <summary>A line with the edition, the digest of all paths and contents; then a line for each file but this one, in the
    /// order of the paths (ordinal).</summary>
    public static string Of(IEnumerable<Page> pages, IEnumerable<Asset> assets)
    {
        var files = pages
            .Select(p => (p.Path, Digest: DigestOf(p.Html)))
            .Concat(assets.Where(a => a.Path != PagePath.FileList).Select(a => (a.Path, Digest: SHA256.HashData(a.Bytes.Span))))
            .OrderBy(f => f.Path, StringComparer.Ordinal)
            .ToArray();
        using var edition = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (path, digest) in files)
        {
            edition.AppendData(Encoding.UTF8.GetBytes(path + "\n"));
            edition.AppendData(digest);
        }

        return string.Concat(
            files
                .Select(f => f.Path)
                .Prepend(Convert.ToHexStringLower(edition.GetHashAndReset())[..16])
                .Select(line => line + "\n")
        );
    }

    /// <summary>A page is long, and its bytes are asked for once: they are written where others have been.</summary>
    private static byte[] DigestOf(string text)
    {
        var bytes = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(text.Length));
        var digest = SHA256.HashData(bytes.AsSpan(0, Encoding.UTF8.GetBytes(text, bytes)));
        ArrayPool<byte>.Shared.Return(bytes);
        return digest;
    }
}
