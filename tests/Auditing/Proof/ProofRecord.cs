using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Every finding of every site that the proofs judge, word for word and in its order, for whoever makes the audit
/// another one that must find the same: with <c>GRADUS_FINDINGS=FILE</c> it is written there, to be compared with the file of
/// before.</summary>
internal static class ProofRecord
{
    private static readonly string? File = Environment.GetEnvironmentVariable("GRADUS_FINDINGS");

    private static readonly ConcurrentDictionary<string, string> Said = new(StringComparer.Ordinal);

    private static readonly Lock Writing = new();

    public static Series<Finding> Kept(string name, Site site, Series<Finding> found)
    {
        if (File is not null)
            Said[$"{name} {HashOf(site)}"] = string.Join(
                '\n',
                found.Select(f => $"  {f.At} {f.Length} {f.Level} {f.Rule} {f.Client} {f.Places}: {f.Message} {f.Help}")
            );
        return found;
    }

    public static void Write()
    {
        if (File is null)
            return;
        lock (Writing)
            System.IO.File.WriteAllText(
                File,
                string.Join('\n', Said.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key}\n{s.Value}"))
            );
    }

    private static string HashOf(Site site)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var page in site.Pages)
            hash.AppendData(Encoding.UTF8.GetBytes($"{page.Path} {page.Html}"));
        foreach (var asset in site.Assets)
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{asset.Path} "));
            hash.AppendData(asset.Bytes.Span);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..12];
    }
}
