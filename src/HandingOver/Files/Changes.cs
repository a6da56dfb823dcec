using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What lies between the site that is wanted and the one that stands. Bytes are compared, never times.</summary>
internal sealed record Changes(Series<SiteFile> Written, Series<SiteFile> Untouched, Series<string> Removed)
{
    public bool Any => Written.Count + Removed.Count > 0;

    /// <summary>Compares; a folder that is not there holds nothing. A link is never the file it leads to.</summary>
    public static Changes Between(Series<SiteFile> wanted, string standing)
    {
        var entries = Directory.Exists(standing) ? FolderListing.Of(standing).ToSeries() : [];
        var sizes = entries
            .Where(entry => entry.Kind == EntryKind.File)
            .ToDictionary(entry => entry.Path, entry => entry.Length, StringComparer.Ordinal);
        var same = wanted.ToLookup(file => sizes.TryGetValue(file.Path, out var size) && IsSame(file, size, standing));
        return new(same[false].ToSeries(), same[true].ToSeries(), NoPartOf(wanted, entries));
    }

    /// <summary>Compares with the files of a zip.</summary>
    public static Changes Between(Series<SiteFile> wanted, Series<SiteFile> standing)
    {
        var before = standing.ToDictionary(file => file.Path, file => file.Bytes, StringComparer.Ordinal);
        var same = wanted.ToLookup(file =>
            before.TryGetValue(file.Path, out var bytes) && bytes.Span.SequenceEqual(file.Bytes.Span)
        );
        var entries = standing.Select(file => new Entry(file.Path, EntryKind.File, file.Bytes.Length)).ToSeries();
        return new(same[false].ToSeries(), same[true].ToSeries(), NoPartOf(wanted, entries));
    }

    private static bool IsSame(SiteFile file, long size, string standing) =>
        size == file.Bytes.Length
        && (size == 0 || file.Bytes.Span.SequenceEqual(File.ReadAllBytes(Path.Combine(standing, file.Path))));

    private static Series<string> NoPartOf(Series<SiteFile> wanted, Series<Entry> entries)
    {
        var files = wanted.Select(file => file.Path).ToHashSet(StringComparer.Ordinal);
        var folders = wanted.SelectMany(file => SitePath.FoldersOf(file.Path)).ToHashSet(StringComparer.Ordinal);
        return entries
            .Where(entry => entry.Kind == EntryKind.Folder ? !folders.Contains(entry.Path) : !files.Contains(entry.Path))
            .Select(entry => entry.Kind == EntryKind.Folder ? entry.Path + "/" : entry.Path)
            .Order(StringComparer.Ordinal)
            .ToSeries();
    }
}
