using System.IO.Enumeration;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The door to the disk: the files of a practice, by path inside it, with <c>/</c> between folders.</summary>
public sealed class SourceFolder
{
    private readonly Dictionary<string, SourceEntry> files = new(StringComparer.Ordinal);
    private readonly string[] paths;

    private SourceFolder(IEnumerable<SourceEntry> files, IEnumerable<string> links)
    {
        foreach (var file in files)
            this.files[file.Path] = file;
        paths = [.. this.files.Keys.Order(StringComparer.Ordinal)];
        Links = links.Order(StringComparer.Ordinal).ToSeries();
    }

    /// <summary>Where readers note what they ask of its files; null where nobody wants to know.</summary>
    internal ReadingNotes? Notes { get; private init; }

    /// <summary>The same folder, whose readers note what they ask.</summary>
    internal SourceFolder Noting(ReadingNotes notes) => new(files.Values, Links) { Notes = notes };

    /// <summary>What is no file of the practice but a link to another place; it is never followed.</summary>
    public Series<string> Links { get; }

    /// <summary>Paths in ordinal order.</summary>
    public IReadOnlyList<string> Paths => paths;

    /// <summary>The paths that begin so, in ordinal order. Each client asks for its own, so the others are not gone
    /// through.</summary>
    public IEnumerable<string> Below(string beginning)
    {
        var first = Array.BinarySearch(paths, beginning, StringComparer.Ordinal);
        return paths.Skip(first < 0 ? ~first : first).TakeWhile(path => path.StartsWith(beginning, StringComparison.Ordinal));
    }

    /// <summary>The practice in that folder of the disk. Names that begin with a dot, and links, are not part of it.</summary>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static SourceFolder Open(string folder)
    {
        if (!Directory.Exists(folder))
            throw new DirectoryNotFoundException($"There is no folder '{folder}'.");
        var listed = List(folder).ToLookup(file => file.IsLink);
        return new(listed[false].Select(Entry), listed[true].Select(link => link.Path));
    }

    private static SourceEntry Entry(ListedFile file)
    {
        var bytes = new SourceBytes(file.Path, Length, () => File.ReadAllBytes(file.FullPath), IsText(file.Path));
        return new(file.Path, bytes, Length, bytes.Read);

        long Length() => new FileInfo(file.FullPath).Length;
    }

    /// <summary>Whether readers read it by themselves, and not because a text shows it.</summary>
    internal static bool IsText(string path) =>
        path.EndsWith(".md", StringComparison.Ordinal)
        || path.EndsWith(".yaml", StringComparison.Ordinal)
        || path.EndsWith(".csv", StringComparison.Ordinal);

    /// <summary>A hash of the bytes that were read of a file of the disk; null where nobody has read it.</summary>
    public string? HashOf(string path) => (files.GetValueOrDefault(path)?.Version as SourceBytes)?.Hash;

    /// <summary>A practice that is not on the disk.</summary>
    public static SourceFolder Of(IEnumerable<KeyValuePair<string, byte[]>> contents) =>
        new(contents.Select(file => new SourceEntry(file.Key, file.Value, () => file.Value.Length, () => file.Value)), []);

    /// <summary>A practice whose files somebody else keeps.</summary>
    public static SourceFolder Of(IEnumerable<SourceEntry> entries, IEnumerable<string> links) => new(entries, links);

    /// <summary>What lies in a folder of the disk now, in no order: each file, and each link, which is not followed. Names that
    /// begin with a dot are left out.</summary>
    /// <exception cref="IOException">The folder, or one in it, went away meanwhile.</exception>
    public static IEnumerable<ListedFile> List(string folder)
    {
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            MaxRecursionDepth = 8,
            AttributesToSkip = FileAttributes.Hidden,
        };
        return new FileSystemEnumerable<ListedFile>(folder, (ref FileSystemEntry entry) => Listed(folder, ref entry), options)
        {
            ShouldIncludePredicate = (ref FileSystemEntry entry) => IsLink(ref entry) || !entry.IsDirectory,
            ShouldRecursePredicate = (ref FileSystemEntry entry) => !IsLink(ref entry),
        };
    }

    private static bool IsLink(ref FileSystemEntry entry) => entry.Attributes.HasFlag(FileAttributes.ReparsePoint);

    private static ListedFile Listed(string folder, ref FileSystemEntry entry)
    {
        var path = entry.ToFullPath();
        var isLink = IsLink(ref entry);
        return new(
            Path.GetRelativePath(folder, path).Replace('\\', '/'),
            path,
            isLink,
            isLink ? 0 : entry.Length,
            isLink ? default : entry.LastWriteTimeUtc
        );
    }

    public bool Has(string path) => files.ContainsKey(path);

    /// <summary>The bytes of a file that is there.</summary>
    public byte[] Read(string path) => files[path].Read();

    /// <summary>How many bytes it has, without reading them.</summary>
    public long Size(string path) => files[path].Size();

    /// <summary>What a file that is there is told by from what it was before: equal only where its bytes are the same.</summary>
    public object Version(string path) => files[path].Version;

    /// <summary>What cannot be opened is as if it were empty.</summary>
    public byte[] ReadOrNone(string path) => Opened(() => Read(path)) ?? [];

    /// <inheritdoc cref="ReadOrNone"/>
    public long SizeOrNone(string path) => Opened(() => Size(path));

    private static T? Opened<T>(Func<T> open)
    {
        try
        {
            return open();
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return default;
        }
    }

    /// <summary>The names of what lies directly in a folder and ends so, without that ending, in ordinal order.</summary>
    public IEnumerable<string> Names(string folder, string ending) =>
        from path in Below(folder + "/")
        where path.EndsWith(ending, StringComparison.Ordinal)
        let name = path[(folder.Length + 1)..^ending.Length]
        where !name.Contains('/', StringComparison.Ordinal)
        select name;

    /// <summary>The names of the folders directly in a folder, in ordinal order.</summary>
    public IEnumerable<string> Folders(string folder) =>
        Below(folder + "/")
            .Select(path => path[(folder.Length + 1)..].Split('/'))
            .Where(parts => parts.Length > 1)
            .Select(parts => parts[0])
            .Distinct(StringComparer.Ordinal);
}

/// <summary>A file of a practice.</summary>
/// <param name="Path">Inside the practice, with <c>/</c> between folders.</param>
/// <param name="Version">Equal to that of an earlier time only where the bytes are the same.</param>
/// <param name="Size">In bytes.</param>
public sealed record SourceEntry(string Path, object Version, Func<long> Size, Func<byte[]> Read);

/// <summary>A file as a folder of the disk lists it.</summary>
/// <param name="Path">Inside that folder, with <c>/</c> between folders.</param>
/// <param name="Length">In bytes; of a link 0.</param>
/// <param name="Written">When its bytes were written last, as the disk tells it; of a link nothing.</param>
public sealed record ListedFile(string Path, string FullPath, bool IsLink, long Length, DateTimeOffset Written);
