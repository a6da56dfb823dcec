using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Builds a whole site beside the one that stands, and does not return before the disk has it.</summary>
internal static class NewFolder
{
    /// <summary>Unchanged files get a second name (a copy where that cannot be done), so they stay the same files on the disk;
    /// changed ones are new files, never written over, because the old name may still be read.</summary>
    public static void Build(Places places, Changes changes)
    {
        Leftovers.Remove(places.New);
        Directory.CreateDirectory(places.New);
        KeepWhoMayLook(places);
        var folders = MakeFolders(places.New, changes);
        var copied = changes.Untouched.Where(file => !TryLink(file, places)).ToSeries();
        var written = changes.Written.Concat(copied).ToSeries();
        foreach (var file in written)
            Write(Path.Combine(places.New, file.Path), file.Bytes.Span);
        foreach (var file in written)
            Flush(Path.Combine(places.New, file.Path));
        foreach (var folder in folders)
            SystemCalls.FlushFolder(folder);
        SystemCalls.FlushFolder(places.New);
    }

    private static bool TryLink(SiteFile file, Places places) =>
        SystemCalls.TryLink(Path.Combine(places.Site, file.Path), Path.Combine(places.New, file.Path));

    private static Series<string> MakeFolders(string root, Changes changes)
    {
        var folders = changes
            .Written.Concat(changes.Untouched)
            .SelectMany(file => SitePath.FoldersOf(file.Path))
            .Distinct(StringComparer.Ordinal)
            .Select(folder => Path.Combine(root, folder))
            .ToSeries();
        foreach (var folder in folders)
            Directory.CreateDirectory(folder);
        return folders;
    }

    private static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        using var file = File.OpenHandle(path, FileMode.CreateNew, FileAccess.Write);
        RandomAccess.Write(file, bytes, 0);
    }

    /// <summary>A second round over the files, because a disk that already has them all flushes them faster than one at a
    /// time.</summary>
    private static void Flush(string path)
    {
        using var file = File.OpenHandle(path, FileMode.Open, FileAccess.ReadWrite);
        RandomAccess.FlushToDisk(file);
    }

    /// <summary>A coach who closed a client's folder to others must not find it open during the next publish or after
    /// it.</summary>
    private static void KeepWhoMayLook(Places places)
    {
        const UnixFileMode Owner = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        if (!OperatingSystem.IsWindows() && Directory.Exists(places.Site))
            File.SetUnixFileMode(places.New, File.GetUnixFileMode(places.Site) | Owner);
    }
}
