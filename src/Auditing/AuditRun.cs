using System.Collections.Concurrent;

namespace Gradus.Auditing;

/// <summary>What the sites of one run share, worked out once for all of them: whose names are looked for, and the files that
/// every site has. Several sites may be audited with it at a time.</summary>
public sealed class AuditRun
{
    private readonly ConcurrentDictionary<(string Path, string Text), TextFile> texts = new();

    private readonly ConcurrentDictionary<string, StyleReading> styles = new(StringComparer.Ordinal);

    /// <param name="clients">The names of all clients. A client's own is no other's: it may stand in the client's own
    /// site.</param>
    public AuditRun(IEnumerable<string> clients) => Names = new([.. clients]);

    internal ClientNames Names { get; }

    /// <summary>What is wrong with a stylesheet: most sites have the same, letter for letter.</summary>
    internal StyleReading Judge(string style) => styles.GetOrAdd(style, StyleJudge.Of);

    /// <summary>The file, read when a site first has one of that path with these words.</summary>
    internal TextFile Read(string path, string text) => texts.GetOrAdd((path, text), file => new(file.Path, file.Text));
}
