using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>The files of a practice on the disk, those of words read once and kept. Nothing but the disk's own list is believed:
/// whoever says that something changed only makes somebody look.</summary>
internal sealed class WatchedFolder(string folder)
{
    /// <summary>A file above this is no text that anybody reads, in bytes, and is not kept.</summary>
    private const long MostKept = 8 * 1024 * 1024;

    /// <summary>A disk tells times so coarsely that what is written twice within them may show one: what was written just before
    /// it was read is read once more.</summary>
    private static readonly TimeSpan Young = TimeSpan.FromSeconds(2);

    private static readonly string[] Texts = [".md", ".yaml", ".csv", ".vtt"];

    private Dictionary<string, KeptFile> files = new(StringComparer.Ordinal);
    private Series<string> links = [];

    /// <summary>What a look at the disk came to.</summary>
    internal enum Look
    {
        Same,
        Changed,

        /// <summary>The folder is not there.</summary>
        Gone,
    }

    /// <summary>The practice as it was found last.</summary>
    public SourceFolder Files { get; private set; } = SourceFolder.Of([]);

    /// <summary>What is other since the look before: paths in the practice.</summary>
    public Series<string> Changed { get; private set; } = [];

    /// <summary>Looks at the disk.</summary>
    public Look Again()
    {
        ListedFile[] listed;
        try
        {
            listed = [.. SourceFolder.List(folder)];
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // A folder inside it may have gone while the list was made: then the next look tells.
            return Directory.Exists(folder) ? Look.Same : Look.Gone;
        }

        var now = TimeProvider.System.GetUtcNow();
        var found = new Dictionary<string, KeptFile>(StringComparer.Ordinal);
        foreach (var file in listed.Where(f => !f.IsLink))
            if (Kept(file, now) is { } kept)
                found[file.Path] = kept;
        var linked = listed.Where(f => f.IsLink).Select(f => f.Path).Order(StringComparer.Ordinal).ToSeries();
        Changed = found
            .Where(f => !files.TryGetValue(f.Key, out var before) || !before.Version.Equals(f.Value.Version))
            .Select(f => f.Key)
            .Concat(files.Keys.Where(path => !found.ContainsKey(path)))
            .Concat(linked.Except(links))
            .Concat(links.Except(linked))
            .Order(StringComparer.Ordinal)
            .ToSeries();
        (files, links) = (found, linked);
        if (Changed.Count == 0)
            return Look.Same;
        Files = SourceFolder.Of(found.Values.Select(f => f.Entry), links);
        return Look.Changed;
    }

    /// <summary>Null where the file went away meanwhile.</summary>
    private KeptFile? Kept(ListedFile file, DateTimeOffset now)
    {
        var before = files.GetValueOrDefault(file.Path);
        if (before is { IsSettled: true } && before.Listed == file)
            return before;
        var settled = now - file.Written > Young;
        if (!Texts.Contains(Path.GetExtension(file.Path)) || file.Length > MostKept)
            return new(file, null, (file.Length, file.Written), true);
        try
        {
            var bytes = File.ReadAllBytes(file.FullPath);
            var version = before?.Bytes is { } then && then.AsSpan().SequenceEqual(bytes) ? before.Version : new object();
            return new(file, bytes, version, settled);
        }
        catch (Exception gone) when (gone is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return new(file, null, before is { Bytes: null } ? before.Version : new object(), false);
        }
    }

    /// <param name="Bytes">Null where they are not kept, or cannot be read.</param>
    /// <param name="IsSettled">Whether the disk's list would show if it were written again.</param>
    private sealed record KeptFile(ListedFile Listed, byte[]? Bytes, object Version, bool IsSettled)
    {
        public SourceEntry Entry =>
            new(
                Listed.Path,
                Version,
                () => Bytes?.Length ?? new FileInfo(Listed.FullPath).Length,
                () => Bytes ?? File.ReadAllBytes(Listed.FullPath)
            );
    }
}
