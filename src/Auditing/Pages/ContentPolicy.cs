using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;

namespace Gradus.Auditing;

/// <summary>A Content-Security-Policy (CSP Level 3), read as a browser reads it from a meta element.</summary>
internal sealed class ContentPolicy
{
    /// <summary>What these fetch falls back on default-src; the last two never do.</summary>
    private static readonly string[] MustBeNone =
    [
        "default-src",
        "object-src",
        "frame-src",
        "child-src",
        "fenced-frame-src",
        "prefetch-src",
        "base-uri",
        "form-action",
    ];
    private static readonly string[] Pictures = ["img-src", "font-src", "media-src"];
    private static readonly string[] Code =
    [
        "script-src",
        "script-src-elem",
        "script-src-attr",
        "style-src",
        "style-src-elem",
        "style-src-attr",
    ];
    private static readonly string[] OwnFolder = ["connect-src", "manifest-src", "worker-src"];

    /// <summary>The hashes of a text that stands in a page, by their names: all pages of one file have the same text.</summary>
    private static readonly ConditionalWeakTable<string, ConcurrentDictionary<string, string>> Hashes = [];

    private readonly Dictionary<string, string[]> directives = new(StringComparer.Ordinal);

    public ContentPolicy(string text)
    {
        foreach (var directive in text.Split(';'))
        {
            var parts = directive.Split([' ', '\t', '\n', '\f', '\r'], StringSplitOptions.RemoveEmptyEntries);
            // Of two the first counts.
            if (parts.Length > 0)
                directives.TryAdd(parts[0].ToLowerInvariant(), parts[1..]);
        }
    }

    /// <summary>What is wrong with it, in words that follow "This page's policy".</summary>
    /// <param name="isInOne">Whether the page has no other file beside it.</param>
    public IEnumerable<string> Faults(bool isInOne)
    {
        foreach (var name in (string[])["default-src", "base-uri", "form-action"])
            if (!directives.ContainsKey(name))
                yield return $"has no {name}";
        foreach (var (name, sources) in directives)
        {
            if (name is "report-uri" or "report-to")
                yield return $"reports to others ({name})";
            foreach (var source in sources.Where(s => !IsFine(name, s, isInOne)))
                yield return $"lets {source} into {name}";
            if (sources.Length > 1 && sources.Contains("'none'", StringComparer.OrdinalIgnoreCase))
                yield return $"says 'none' and something else in {name}";
        }
    }

    /// <summary>Whether a script or a style that stands in the page may run, because its hash is there.</summary>
    public bool Covers(InlinePart part)
    {
        var sources = directives.GetValueOrDefault($"{part.Element}-src-elem")
            ?? directives.GetValueOrDefault($"{part.Element}-src")
            ?? directives.GetValueOrDefault("default-src")
            ?? [];
        return sources.Any(source =>
            Hash(source) is { } hash
            && string.Equals(
                hash.Base64.Replace('-', '+').Replace('_', '/'),
                HashOf(hash.Name, part.Text),
                StringComparison.Ordinal
            )
        );
    }

    private static bool IsFine(string name, string source, bool isInOne)
    {
        var said = source.ToLowerInvariant();
        if (MustBeNone.Contains(name))
            return said == "'none'";
        var isFolder = said == "'self'" && !isInOne;
        if (Code.Contains(name))
            return said == "'none'" || isFolder || Hash(source) is not null;
        if (Pictures.Contains(name))
            return said is "'none'" or "data:" || (said == "blob:" && name != "font-src") || isFolder;
        if (OwnFolder.Contains(name))
            return said == "'none'" || isFolder || (said == "blob:" && name == "worker-src");
        return !name.EndsWith("-src", StringComparison.Ordinal);
    }

    private static (string Name, string Base64)? Hash(string source) =>
        source is ['\'', .., '\'']
        && source[1..^1].Split('-', 2) is [var name, var base64]
        && name.ToLowerInvariant() is "sha256" or "sha384" or "sha512"
            ? (source[1..7].ToLowerInvariant(), base64)
            : null;

    private static string HashOf(string name, string text) =>
        Hashes.GetValue(text, _ => new(StringComparer.Ordinal)).GetOrAdd(name, n => Digest(n, text));

    private static string Digest(string name, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        return Convert.ToBase64String(
            name switch
            {
                "sha256" => SHA256.HashData(bytes),
                "sha384" => SHA384.HashData(bytes),
                _ => SHA512.HashData(bytes),
            }
        );
    }
}
