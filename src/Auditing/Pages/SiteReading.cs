using System.Collections.Frozen;
using System.Text;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A finished site as the rules see it.</summary>
/// <param name="Files">The path of everything in it.</param>
/// <param name="Texts">The files that are neither pages nor pictures, as text: styles, scripts, data.</param>
public sealed record SiteReading(Series<PageReading> Pages, FrozenSet<string> Files, Series<TextFile> Texts)
{
    /// <summary>How each page keeps each part of its duty, judged once for all rules that speak of it.</summary>
    internal Series<Sighting> Sightings { get; private init; } = [];

    private static readonly string[] TextEndings = [".css", ".js", ".mjs", ".json", ".svg", ".txt", ".ics", ".vtt", ".xml", ".webmanifest", ".csv"];
    private static readonly string[] PageEndings = [".html", ".htm", ".xhtml"];

    public PageReading? Page(string path) => Pages.FirstOrDefault(p => string.Equals(p.Path, path, StringComparison.Ordinal));

    /// <summary>Reads every page of a site once, and looks for what the plan says must be on it. A style file counts for every page, whichever of them asks for it.</summary>
    internal static SiteReading Of(Plan plan, Site site, AuditShelf shelf)
    {
        var reading = Of(site, shelf);
        return reading with { Sightings = Sighting.Of(plan, reading).ToSeries() };
    }

    private static SiteReading Of(Site site, AuditShelf shelf)
    {
        var texts = site.Assets
            .Where(a => TextEndings.Any(e => a.Path.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            .Select(a => shelf.Read(a.Path, Encoding.UTF8.GetString(a.Bytes.Span)))
            .ToSeries();
        var hiding = texts.SelectMany(t => t.Hides).ToArray();
        var files = site.Pages.Select(p => p.Path).Concat(site.Assets.Select(a => a.Path)).ToFrozenSet(StringComparer.Ordinal);
        return new(site.Pages.Concat(OtherPages(site)).Select(p => PageParser.Read(p, hiding)).ToSeries(), files, texts);
    }

    /// <summary>Pages that a theme brought along as files.</summary>
    private static IEnumerable<Page> OtherPages(Site site) => site.Assets
        .Where(a => PageEndings.Any(e => a.Path.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
        .Select(a => new Page(a.Path, Encoding.UTF8.GetString(a.Bytes.Span)));
}
