using System.IO.Enumeration;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The door to the disk: the files of a practice, by path inside it, with <c>/</c> between folders.</summary>
public sealed class SourceFolder
{
    private readonly SortedDictionary<string, (Func<long> Size, Func<byte[]> Read)> files;

    private SourceFolder(SortedDictionary<string, (Func<long> Size, Func<byte[]> Read)> files, IEnumerable<string> links)
    {
        this.files = files;
        Links = links.Order(StringComparer.Ordinal).ToSeries();
    }

    /// <summary>Where readers note what they ask of its files; null where nobody wants to know.</summary>
    internal ReadingNotes? Notes { get; private init; }

    /// <summary>The same folder, whose readers note what they ask.</summary>
    internal SourceFolder Noting(ReadingNotes notes) => new(files, Links) { Notes = notes };

    /// <summary>What is no file of the practice but a link to another place; it is never followed.</summary>
    public Series<string> Links { get; }

    /// <summary>Paths in ordinal order.</summary>
    public IEnumerable<string> Paths => files.Keys;

    /// <summary>The practice in that folder of the disk. Names that begin with a dot, and links, are not part of it.</summary>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static SourceFolder Open(string folder)
    {
        if (!Directory.Exists(folder))
            throw new DirectoryNotFoundException($"There is no folder '{folder}'.");
        var files = new SortedDictionary<string, (Func<long>, Func<byte[]>)>(StringComparer.Ordinal);
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            MaxRecursionDepth = 8,
            AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden,
        };
        foreach (var path in Directory.EnumerateFiles(folder, "*", options))
            files[Inside(folder, path)] = (() => new FileInfo(path).Length, () => File.ReadAllBytes(path));
        return new(files, LinksIn(folder));
    }

    /// <summary>A practice that is not on the disk.</summary>
    public static SourceFolder Of(IEnumerable<KeyValuePair<string, byte[]>> contents)
    {
        var files = new SortedDictionary<string, (Func<long>, Func<byte[]>)>(StringComparer.Ordinal);
        foreach (var (path, bytes) in contents)
            files[path] = (() => bytes.Length, () => bytes);
        return new(files, []);
    }

    private static IEnumerable<string> LinksIn(string folder)
    {
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            MaxRecursionDepth = 8,
            AttributesToSkip = FileAttributes.Hidden,
        };
        return new FileSystemEnumerable<string>(folder, (ref FileSystemEntry entry) => entry.ToFullPath(), options)
        {
            ShouldIncludePredicate = (ref FileSystemEntry entry) => entry.Attributes.HasFlag(FileAttributes.ReparsePoint),
            ShouldRecursePredicate = (ref FileSystemEntry entry) => !entry.Attributes.HasFlag(FileAttributes.ReparsePoint),
        }.Select(path => Inside(folder, path));
    }

    private static string Inside(string folder, string path) => Path.GetRelativePath(folder, path).Replace('\\', '/');

    public bool Has(string path) => files.ContainsKey(path);

    /// <summary>The bytes of a file that is there.</summary>
    public byte[] Read(string path) => files[path].Read();

    /// <summary>How many bytes it has, without reading them.</summary>
    public long Size(string path) => files[path].Size();

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
        from path in Paths
        where path.StartsWith(folder + "/", StringComparison.Ordinal) && path.EndsWith(ending, StringComparison.Ordinal)
        let name = path[(folder.Length + 1)..^ending.Length]
        where !name.Contains('/', StringComparison.Ordinal)
        select name;

    /// <summary>The names of the folders directly in a folder, in ordinal order.</summary>
    public IEnumerable<string> Folders(string folder) =>
        Paths
            .Where(path => path.StartsWith(folder + "/", StringComparison.Ordinal))
            .Select(path => path[(folder.Length + 1)..].Split('/'))
            .Where(parts => parts.Length > 1)
            .Select(parts => parts[0])
            .Distinct(StringComparer.Ordinal);
}
