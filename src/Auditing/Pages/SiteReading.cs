using System.Collections.Frozen;
using System.Text;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A finished site as the rules see it.</summary>
/// <param name="Files">The path of everything in it.</param>
/// <param name="Texts">The files that are neither pages nor pictures, as text: styles, scripts, data.</param>
public sealed record SiteReading(Series<PageReading> Pages, FrozenSet<string> Files, Series<TextFile> Texts)
{
    private static readonly string[] TextEndings = [".css", ".js", ".mjs", ".json", ".svg", ".txt", ".ics", ".vtt", ".xml", ".webmanifest", ".csv"];

    public PageReading? Page(string path) => Pages.FirstOrDefault(p => string.Equals(p.Path, path, StringComparison.Ordinal));

    /// <summary>Reads every page of a site once.</summary>
    public static SiteReading Of(Site site)
    {
        var texts = site.Assets
            .Where(a => TextEndings.Any(e => a.Path.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            .Select(a => new TextFile(a.Path, Encoding.UTF8.GetString(a.Bytes.Span)))
            .ToSeries();
        var hiding = texts.Where(t => t.Path.EndsWith(".css", StringComparison.OrdinalIgnoreCase)).ToDictionary(t => t.Path, t => HidingStyle.In(t.Text), StringComparer.Ordinal);
        var files = site.Pages.Select(p => p.Path).Concat(site.Assets.Select(a => a.Path)).ToFrozenSet(StringComparer.Ordinal);
        return new(site.Pages.Select(p => PageParser.Read(p, hiding)).ToSeries(), files, texts);
    }
}

public sealed record TextFile(string Path, string Text);
