using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The styles that a page is shown with, in the order in which they count.</summary>
internal static partial class Sheets
{
    private const int DepthLimit = 10;

    [GeneratedRegex(
        """\A@import\s*(?:url\(\s*)?["']?(?<path>[^"')\s]+)["']?\s*\)?(?<rest>.*)\z""",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.Singleline
    )]
    private static partial Regex Import();

    /// <param name="find">The text of a style file of the site; null where there is none.</param>
    public static Series<StyleSheet> Of(IDocument document, Func<string, string?> find) =>
        document
            .QuerySelectorAll("link[rel~=stylesheet][href],style")
            .SelectMany(e =>
                e.LocalName == "style"
                    ? With(e.TextContent, e.GetAttribute("media") ?? "", "", find, 0)
                    : Asked(e.GetAttribute("href")?.Trim() ?? "", e.GetAttribute("media") ?? "", find, 0)
            )
            .ToSeries();

    /// <summary>What the head of a page says of light and dark.</summary>
    public static string Scheme(IDocument document) =>
        document.QuerySelector("meta[name=color-scheme i]")?.GetAttribute("content")?.Trim().ToLowerInvariant() ?? "normal";

    private static IEnumerable<StyleSheet> Asked(string path, string media, Func<string, string?> find, int depth) =>
        depth < DepthLimit && find(path) is { } text ? With(text, media, path, find, depth + 1) : [];

    /// <summary>A style with those that it brings in, which come before it.</summary>
    private static IEnumerable<StyleSheet> With(string text, string media, string path, Func<string, string?> find, int depth)
    {
        foreach (var part in StylePart.In(text).OfType<StylePart.Statement>())
        {
            if (Import().Match(part.Head) is not { Success: true } import)
                continue;
            foreach (
                var brought in Asked(
                    Beside(path, import.Groups["path"].Value),
                    MediaOf(import.Groups["rest"].Value.Trim(), media),
                    find,
                    depth
                )
            )
                yield return brought;
        }

        yield return new(text, media);
    }

    /// <summary>Layers and conditions of an import are left aside: what it brings is judged.</summary>
    private static string MediaOf(string said, string media) =>
        said.Length == 0
        || said.StartsWith("layer", StringComparison.OrdinalIgnoreCase)
        || said.StartsWith("supports", StringComparison.OrdinalIgnoreCase)
            ? media
            : said;

    private static string Beside(string path, string address) =>
        path.Contains('/', StringComparison.Ordinal) ? path[..(path.LastIndexOf('/') + 1)] + address : address;
}
