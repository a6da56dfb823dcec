using System.IO.Compression;
using System.Text;

namespace Gradus.Tests.HandingOver;

/// <summary>Zips as Gradus would not make them.</summary>
internal static class HandMadeZip
{
    /// <summary>A file that all may read and its owner may write, as Unix has it.</summary>
    public const int PlainFile = 0x81a4;

    /// <summary>The dates that <see cref="Add"/> gives.</summary>
    private static readonly DateTimeOffset Monday = new(2026, 12, 7, 18, 30, 0, TimeSpan.Zero);

    /// <summary>A front page and one more entry, laid out as Gradus does it.</summary>
    public static byte[] With(string name, string text = "mine", int mode = PlainFile) =>
        Of(zip =>
        {
            Add(zip, "rufus/index.html", "<h1>A longer, steadier lunge</h1>");
            Add(zip, name, text, mode);
        });

    public static byte[] Of(Action<ZipArchive> fill)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8))
            fill(zip);
        return bytes.ToArray();
    }

    public static ZipArchiveEntry Add(
        ZipArchive zip,
        string name,
        string text,
        int mode = PlainFile,
        CompressionLevel level = CompressionLevel.NoCompression
    )
    {
        var entry = zip.CreateEntry(name, level);
        entry.ExternalAttributes = mode << 16;
        entry.LastWriteTime = Monday;
        using var content = entry.Open();
        content.Write(Encoding.UTF8.GetBytes(text));
        return entry;
    }

    /// <summary>The same files again by the hand of somebody else: with today's dates, or squeezed as common programs do
    /// it.</summary>
    public static void PackAnew(string path, CompressionLevel level)
    {
        var files = ExampleSite.FilesInZip(path);
        File.WriteAllBytes(
            path,
            Of(zip =>
            {
                foreach (var (name, hex) in files)
                {
                    var entry = zip.CreateEntry(name, level);
                    entry.ExternalAttributes = PlainFile << 16;
                    entry.LastWriteTime = Monday;
                    using var content = entry.Open();
                    content.Write(Convert.FromHexString(hex));
                }
            })
        );
    }

    /// <summary>Where the n-th entry of the list begins, from 0; the record that ends the zip follows the last.</summary>
    public static int ListEntry(byte[] zip, int n)
    {
        var at = BitConverter.ToInt32(zip, zip.Length - 6);
        for (; n > 0; n--)
            at +=
                46
                + BitConverter.ToUInt16(zip, at + 28)
                + BitConverter.ToUInt16(zip, at + 30)
                + BitConverter.ToUInt16(zip, at + 32);
        return at;
    }
}
