using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.Benchmarks;

/// <summary>What is kept of one client's site: sizes, and a hash of every path and byte in order.</summary>
internal sealed record PublishedClient(string Id, int Pages, long Bytes, string Hash)
{
    public static PublishedClient Of(Site site)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var bytes = 0L;
        foreach (var page in site.Pages)
            Add(page.Path, Encoding.UTF8.GetBytes(page.Html));
        foreach (var asset in site.Assets)
            Add(asset.Path, asset.Bytes.Span);
        return new(site.Client.Text, site.Pages.Count, bytes, Convert.ToHexStringLower(hash.GetHashAndReset()));

        void Add(string path, ReadOnlySpan<byte> content)
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{site.Client} {path} {content.Length}\n"));
            hash.AppendData(content);
            bytes += content.Length;
        }
    }
}

internal sealed record Published(IReadOnlyList<PublishedClient> Clients)
{
    /// <summary>So many clients are compared across sizes.</summary>
    public const int First = 20;

    public int Pages => Clients.Sum(c => c.Pages);

    public long Bytes => Clients.Sum(c => c.Bytes);

    public string Hash() => Of(Clients);

    public string FirstHash()
    {
        var first = Enumerable.Range(0, First).Select(MadeClient.IdOf).ToHashSet(StringComparer.Ordinal);
        return Of(Clients.Where(c => first.Contains(c.Id)));
    }

    public static string Of(IEnumerable<PublishedClient> clients) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', clients.Select(c => c.Hash)))))[..16];
}
