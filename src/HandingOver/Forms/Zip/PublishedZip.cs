using System.IO.Compression;
using System.IO.Hashing;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>Reads a published zip back. It is not trusted: nothing is unpacked onto the disk, and its list and layout are judged
/// whole before the first file in it is read.</summary>
internal static class PublishedZip
{
    private const string Again = "Publish the site again.";

    /// <summary>The longest list of entries that is read, in bytes: a thousand and some for each.</summary>
    private const long LongestList = 1024L * PublishedSite.MostFiles;

    /// <summary>The files of the site in the order of the zip, their paths without the client's folder.</summary>
    /// <exception cref="HandOverException">It is no whole zip as Gradus packs them, or holds anything other than the plain files
    /// of one site of this client.</exception>
    public static Series<SiteFile> FilesOf(string zip, ClientId client) =>
        Opened(zip, client, entries =>
            entries.Select(entry => new SiteFile(entry.FullName[(client.Text.Length + 1)..], BytesOf(zip, entry))).ToSeries()
        );

    /// <summary>Whether a file is the zip of a site of this client, as far as its list tells. No file of it is read.</summary>
    public static bool IsSiteOf(string zip, ClientId client)
    {
        if (!File.Exists(zip))
            return false;
        try
        {
            return Opened(zip, client, entries => entries.Any(entry => entry.FullName == $"{client}/{PagePath.Home}"));
        }
        catch (HandOverException)
        {
            return false;
        }
    }

    private static T Opened<T>(string zip, ClientId client, Func<IReadOnlyCollection<ZipArchiveEntry>, T> read)
    {
        RefuseOtherThanFile(zip);
        try
        {
            using var file = new FileStream(zip, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete);
            var end = EndOf(zip, file);
            using var archive = new ZipArchive(file, ZipArchiveMode.Read, leaveOpen: true, SiteZip.Names);
            ZipList.Check(archive, zip, client);
            if (!PlainZip.Is(file.SafeFileHandle, end))
                throw new HandOverException($"'{zip}' is damaged, or was packed anew by another program.", Again);
            return read(archive.Entries);
        }
        catch (Exception cause) when (cause is InvalidDataException or EndOfStreamException)
        {
            throw new HandOverException($"'{zip}' is damaged.", Again, cause);
        }
    }

    private static void RefuseOtherThanFile(string zip)
    {
        var file = new FileInfo(zip);
        if (file.LinkTarget is not null)
            throw new HandOverException(
                $"'{zip}' is a link and may lead out of the site.",
                "Remove it, and publish the site again."
            );
        if (Directory.Exists(zip))
            throw new HandOverException($"'{zip}' is a folder, not a zip.", "Move it away, and publish the site again.");
        if (!file.Exists)
            throw new HandOverException(
                $"There is no published site in '{zip}'.",
                "Publish it first, or name another folder with --site."
            );
        // A file of no bytes is not opened: it may be a pipe, which would be waited for without end.
        if (file.Length < ZipEnd.Length)
            throw NoZip(zip);
    }

    /// <summary>.NET takes in the whole list before anything can be asked of it, so its length is judged first.</summary>
    private static ZipEnd EndOf(string zip, FileStream file)
    {
        var last = new byte[ZipEnd.Length];
        var length = RandomAccess.GetLength(file.SafeFileHandle);
        if (
            length < last.Length
            || RandomAccess.Read(file.SafeFileHandle, last, length - last.Length) != last.Length
            || ZipEnd.Of(last, length) is not { } end
        )
            throw NoZip(zip);
        return end.Entries <= PublishedSite.MostFiles && end.Size <= LongestList
            ? end
            : throw new HandOverException($"'{zip}' holds more than {PublishedSite.MostFiles} files.", Again);
    }

    private static HandOverException NoZip(string zip) => new($"'{zip}' is no zip, or no plain whole one.", Again);

    private static byte[] BytesOf(string zip, ZipArchiveEntry entry)
    {
        using var content = entry.Open();
        var bytes = new byte[entry.Length];
        content.ReadExactly(bytes);
        return Crc32.HashToUInt32(bytes) == entry.Crc32
            ? bytes
            : throw new HandOverException($"'{entry.FullName}' in '{zip}' is damaged.", Again);
    }
}
