using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>A whole site as the bytes of one zip; the same site gives the same bytes on any machine, in any zone, on any
/// day.</summary>
internal static class SiteZip
{
    /// <summary>How the names of entries are written.</summary>
    public static readonly Encoding Names = Encoding.UTF8;

    /// <summary>The earliest moment that a zip can say; it says no zone.</summary>
    private static readonly DateTimeOffset Earliest = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>A plain file that all may read and its owner may write, <c>0100644</c> in the upper half as Unix has
    /// it.</summary>
    private const int PlainFile = unchecked((int)(0x81a4u << 16));

    /// <summary>Where an entry of the list says on which system it was made, and what it says for Unix (APPNOTE.TXT 4.3.12,
    /// 4.4.2.2).</summary>
    private const int MadeOnAt = 5;
    private const byte Unix = 3;

    /// <summary>Every file under one folder named by the client, so that unpacking makes one folder; in the order given; nothing
    /// is compressed, because what a compressor makes of a file differs between its versions.</summary>
    /// <exception cref="HandOverException">The site is larger than what could be read back.</exception>
    public static byte[] BytesOf(ClientId client, Series<SiteFile> files)
    {
        if (files.Count > PublishedSite.MostFiles || files.Sum(file => (long)file.Bytes.Length) > PublishedSite.LargestSite)
            throw new HandOverException($"The site of '{client}' is too large for one zip.", "Use smaller pictures, or fewer.");
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true, Names))
        {
            foreach (var file in files)
                Add(zip, $"{client}/{file.Path}", file.Bytes.Span);
        }
        return SaidToBeMadeOnUnix(bytes.ToArray());
    }

    /// <summary>.NET writes into every entry of the list which kind of system it ran on. The attributes are those of Unix
    /// everywhere, and the bytes must be the same everywhere.</summary>
    internal static byte[] SaidToBeMadeOnUnix(byte[] zip)
    {
        if (ZipEnd.Of(zip.AsSpan(^ZipEnd.Length..), zip.Length) is not { } end)
            throw new InvalidOperationException("A zip of ours has no end.");
        var at = (int)end.Start;
        for (var n = 0; n < end.Entries; n++)
        {
            zip[at + MadeOnAt] = Unix;
            at += 46 + NumberAt(28) + NumberAt(30) + NumberAt(32);
        }
        return zip;

        int NumberAt(int place) => BinaryPrimitives.ReadUInt16LittleEndian(zip.AsSpan(at + place));
    }

    private static void Add(ZipArchive zip, string name, ReadOnlySpan<byte> bytes)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.NoCompression);
        entry.LastWriteTime = Earliest;
        entry.ExternalAttributes = PlainFile;
        using var content = entry.Open();
        content.Write(bytes);
    }
}
