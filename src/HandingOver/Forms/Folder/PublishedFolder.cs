using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Reads a published folder back. It is not trusted.</summary>
internal static class PublishedFolder
{
    /// <summary>Every file in it, hidden ones too, in no order.</summary>
    /// <exception cref="HandOverException">The folder is not there, holds a link, or is too large.</exception>
    public static Series<SiteFile> FilesOf(string folder)
    {
        RefuseLink(folder, new FileInfo(Path.TrimEndingDirectorySeparator(folder)).LinkTarget is not null);
        if (!Directory.Exists(folder))
            throw new HandOverException(
                $"There is no published site in '{folder}'.",
                "Publish it first, or name another folder with --site."
            );
        var entries = FolderListing.Of(folder).Take(PublishedSite.MostFiles + 1).ToSeries();
        if (entries.Count > PublishedSite.MostFiles)
            throw new HandOverException(
                $"'{folder}' holds more than {PublishedSite.MostFiles} files.",
                "Name the folder of a site with --site."
            );
        foreach (var entry in entries)
            RefuseLink(Path.Combine(folder, entry.Path), entry.Kind == EntryKind.Link);
        var files = entries.Where(entry => entry.Kind == EntryKind.File).ToSeries();
        if (files.Sum(file => file.Length) > PublishedSite.LargestSite)
            throw new HandOverException(
                $"'{folder}' is larger than {PublishedSite.LargestSite / PublishedSite.MiB} MiB.",
                "Name the folder of a site with --site."
            );
        return files.Select(file => new SiteFile(file.Path, BytesOf(folder, file))).ToSeries();
    }

    private static void RefuseLink(string path, bool isLink)
    {
        if (isLink)
            throw new HandOverException(
                $"'{path}' is a link and may lead out of the site.",
                "Remove it, and publish the site again."
            );
    }

    private static byte[] BytesOf(string folder, Entry file)
    {
        // A file of no bytes is not opened: it may be a pipe, which would be waited for without end.
        if (file.Length == 0)
            return [];
        var path = Path.Combine(folder, file.Path);
        var most = PublishedSite.Largest(file.Path);
        using var opened = File.OpenHandle(path, FileMode.Open, FileAccess.Read);
        var length = RandomAccess.GetLength(opened);
        if (length > most)
            throw new HandOverException($"'{path}' is larger than {most / PublishedSite.MiB} MiB.", "Publish the site again.");
        var bytes = new byte[length];
        var read = 0;
        for (int got; read < bytes.Length && (got = RandomAccess.Read(opened, bytes.AsSpan(read), read)) > 0; )
            read += got;
        return read == bytes.Length ? bytes : throw new EndOfStreamException($"'{path}' became shorter while it was read.");
    }
}
