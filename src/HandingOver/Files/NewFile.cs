namespace Gradus.HandingOver;

/// <summary>Hands over a site that is one file: written beside the one that stands, and renamed over it in one step.</summary>
internal static class NewFile
{
    /// <summary>Whether exactly these bytes stand there already.</summary>
    public static bool Stands(Places places, byte[] bytes) =>
        new FileInfo(places.Site) is { Exists: true } standing
        && standing.Length == bytes.Length
        && File.ReadAllBytes(places.Site).AsSpan().SequenceEqual(bytes);

    /// <summary>Does not return before the disk has every byte.</summary>
    public static void Build(Places places, ReadOnlySpan<byte> bytes)
    {
        Leftovers.Remove(places.New);
        using var file = File.OpenHandle(places.New, FileMode.CreateNew, FileAccess.Write);
        // Before the first byte: a coach who closed a client's file to others must not find it open for a moment.
        const UnixFileMode Owner = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        if (!OperatingSystem.IsWindows() && File.Exists(places.Site))
            File.SetUnixFileMode(file, File.GetUnixFileMode(places.Site) | Owner);
        RandomAccess.Write(file, bytes, 0);
        RandomAccess.FlushToDisk(file);
    }

    /// <summary>One call of the system, whether a file stands there or not; whoever has the old one open goes on reading the old
    /// one.</summary>
    public static void Put(Places places)
    {
        File.Move(places.New, places.Site, overwrite: true);
        if (Path.GetDirectoryName(places.Site) is { } target)
            SystemCalls.FlushFolder(target);
    }
}
