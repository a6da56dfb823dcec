using System.IO.Enumeration;

namespace Gradus.HandingOver;

internal enum EntryKind
{
    File,
    Folder,
    Link,
}

/// <summary>Something that stands below a folder: its path from there with <c>/</c> between folders, and its size in
/// bytes.</summary>
internal sealed record Entry(string Path, EntryKind Kind, long Length);

/// <summary>What stands below a folder on the disk.</summary>
internal static class FolderListing
{
    /// <summary>Everything below a folder, hidden or not, in no order. Links are listed and never followed.</summary>
    public static IEnumerable<Entry> Of(string folder)
    {
        var everything = new EnumerationOptions
        {
            AttributesToSkip = 0,
            IgnoreInaccessible = false,
            RecurseSubdirectories = true,
        };
        return new FileSystemEnumerable<Entry>(folder, Seen, everything)
        {
            ShouldRecursePredicate = (ref FileSystemEntry entry) => KindOf(ref entry) == EntryKind.Folder,
        };

        Entry Seen(ref FileSystemEntry entry)
        {
            var path = Path.GetRelativePath(folder, entry.ToFullPath());
            return new(Path.DirectorySeparatorChar == '/' ? path : path.Replace('\\', '/'), KindOf(ref entry), entry.Length);
        }
    }

    private static EntryKind KindOf(ref FileSystemEntry entry) =>
        entry.Attributes.HasFlag(FileAttributes.ReparsePoint) ? EntryKind.Link
        : entry.IsDirectory ? EntryKind.Folder
        : EntryKind.File;
}
