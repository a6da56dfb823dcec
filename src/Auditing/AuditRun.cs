using System.Collections.Concurrent;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What the sites of one run share, worked out once for all of them: whose names are looked for, and the files that
/// every site has. Several sites may be audited with it at a time.</summary>
public sealed class AuditRun
{
    private readonly ConcurrentDictionary<(string Path, string Text), TextFile> texts = new();

    private readonly ConcurrentDictionary<string, Series<HidingStyle>> styles = new(StringComparer.Ordinal);

    private readonly ConcurrentDictionary<string, Looks> looks = new(StringComparer.Ordinal);

    /// <param name="clients">The names of all clients. A client's own is no other's: it may stand in the client's own
    /// site.</param>
    public AuditRun(IEnumerable<string> clients) => Names = new([.. clients]);

    internal ClientNames Names { get; }

    /// <summary>What a style hides that is written into a page: many pages have the same.</summary>
    internal Series<HidingStyle> Hides(string style) => styles.GetOrAdd(style, text => HidingStyle.In(text).ToSeries());

    /// <summary>The file, read when a site first has one of that path with these words.</summary>
    internal TextFile Read(string path, string text) => texts.GetOrAdd((path, text), file => new(file.Path, file.Text));

    /// <summary>How pages look with those styles: all pages of a site have the same, and mostly all sites.</summary>
    internal Looks Looks(Series<StyleSheet> sheets, string scheme) =>
        looks.GetOrAdd(scheme + "\0" + string.Join('\0', sheets.Select(s => $"{s.Media}\0{s.Text}")), _ => new(sheets, scheme));
}
