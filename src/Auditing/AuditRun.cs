using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>What the sites of one run share, worked out once for all of them: whose names are looked for, and the files that
/// every site has. Several sites may be audited with it at a time.</summary>
public sealed class AuditRun
{
    /// <summary>Files that are remembered, many times as many as all sites have; each site has some of its own beside
    /// them.</summary>
    private const int Most = 100;

    private readonly Remembered<(string Path, string Text), TextFile> texts = new(Most);

    private readonly Remembered<string, StyleReading> styles = new(Most, StringComparer.Ordinal);

    private readonly ConditionalWeakTable<byte[], TextFile> read = [];

    private readonly Remembered<Series<SourceText>, string> written = new(Most);

    /// <param name="clients">The names of all clients. A client's own is no other's: it may stand in the client's own
    /// site.</param>
    public AuditRun(IEnumerable<string> clients) => Names = new([.. clients]);

    internal ClientNames Names { get; }

    /// <summary>What is wrong with a stylesheet: most sites have the same, letter for letter.</summary>
    internal StyleReading Judge(string style) => styles.Of(style, StyleJudge.Of);

    /// <summary>The style of the one page as it is made from stylesheets, in whatever order they come.</summary>
    internal string Written(Series<SourceText> sources) =>
        written.Of(sources, all =>
            PageStyle.Written(PageStyle.InOne.Select(path => all.FirstOrDefault(s => s.Path == path)?.Text ?? ""))
        );

    /// <summary>The file, read when a site first has one of that path with these words.</summary>
    internal TextFile Read(string path, string text) => texts.Of((path, text), file => new(file.Path, file.Text));

    /// <summary>The same of bytes: those of a theme are the same ones for every site, and are not even compared.</summary>
    internal TextFile Read(Asset asset)
    {
        if (!MemoryMarshal.TryGetArray(asset.Bytes, out var bytes) || bytes.Array is not { } all || bytes.Count < all.Length)
            return Read(asset.Path, Encoding.UTF8.GetString(asset.Bytes.Span));
        if (read.TryGetValue(all, out var known) && known.Path == asset.Path)
            return known;
        var file = Read(asset.Path, Encoding.UTF8.GetString(all));
        read.AddOrUpdate(all, file);
        return file;
    }
}
