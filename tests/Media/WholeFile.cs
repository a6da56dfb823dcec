using System.Buffers.Binary;
using System.Text;

namespace Gradus.Tests.Media;

/// <summary>A whole picture or clip that tells something beside what it shows, and where its parts begin as the standards write
/// them; found by their names, not by the code under test.</summary>
/// <param name="Names">What its parts begin with, or are called.</param>
/// <param name="Before">How far before its name a part begins.</param>
/// <param name="LengthAt">Where the length of a part stands, from the beginning of its name.</param>
/// <param name="LengthBytes">How many bytes a length has.</param>
internal sealed record WholeFile(string Kind, byte[] Bytes, string[] Names, int Before, int LengthAt, int LengthBytes)
{
    public static readonly WholeFile[] All =
    [
        new(
            "jpeg",
            MediaFileTests.Bytes("upright.jpg"),
            [
                "\u00ff\u00e0",
                "\u00ff\u00e1",
                "\u00ff\u00ed",
                "\u00ff\u00fe",
                "\u00ff\u00db",
                "\u00ff\u00c0",
                "\u00ff\u00c4",
                "\u00ff\u00da",
            ],
            0,
            2,
            2
        ),
        new("png", MediaFileTests.Bytes("upright.png"), ["IHDR", "IDAT", "eXIf", "iTXt", "tEXt", "pHYs", "IEND"], 4, -4, 4),
        new("webp", MediaFileTests.Bytes("sideways.webp"), ["RIFF", "VP8X", "VP8 ", "EXIF", "XMP "], 0, 4, 4),
        new("gif", Gif, ["!\u00ff\u000b", "!\u00fe", "!\u00f9", ",\0\0"], 0, 2, 1),
        new(
            "mp4",
            MediaFileTests.Bytes("silent.mp4"),
            ["ftyp", "moov", "mvhd", "trak", "tkhd", "mdia", "mdhd", "hdlr", "udta", "free", "mdat"],
            4,
            -4,
            4
        ),
        new(
            "webm",
            MediaFileTests.Bytes("sounding.webm"),
            [
                "\u0018\u0053\u0080\u0067",
                "\u0015\u0049\u00a9\u0066",
                "\u0016\u0054\u00ae\u006b",
                "\u0012\u0054\u00c3\u0067",
                "\u001f\u0043\u00b6\u0075",
                "\u007b\u00a9",
            ],
            0,
            4,
            8
        ),
    ];

    /// <summary>One pixel that moves for ever, with a remark and something behind its end.</summary>
    private static byte[] Gif =>
        [
            .. Encoding.Latin1.GetBytes("GIF89a\u0001\0\u0001\0\u0080\0\0\0\0\0\u00ff\u00ff\u00ff"),
            .. Encoding.Latin1.GetBytes("!\u00ff\u000bNETSCAPE2.0\u0003\u0001\0\0\0!\u00fe\u0009Mill Lane\0"),
            .. Encoding.Latin1.GetBytes(
                "!\u00f9\u0004\0\u000a\0\0\0,\0\0\0\0\u0001\0\u0001\0\0\u0002\u0002L\u0001\0;\u0007\u0007"
            ),
        ];

    /// <summary>Where its parts begin, in order.</summary>
    public IEnumerable<int> Parts =>
        Names
            .SelectMany(name => PlacesOf(Bytes, Encoding.Latin1.GetBytes(name)))
            .Select(at => at - Before)
            .Where(at => at >= 0)
            .Order();

    /// <summary>Where the lengths of its parts stand.</summary>
    public IEnumerable<int> Lengths =>
        Parts.Select(at => at + Before + LengthAt).Where(at => at >= 0 && at + LengthBytes <= Bytes.Length);

    /// <summary>What is written around something to make a part of it that holds others; null where the kind has no such
    /// part.</summary>
    public byte[]? Around(byte[] inner)
    {
        if (Kind == "mp4")
        {
            var box = new byte[8 + inner.Length];
            BinaryPrimitives.WriteInt32BigEndian(box, box.Length);
            "moov"u8.CopyTo(box.AsSpan(4));
            inner.CopyTo(box, 8);
            return box;
        }

        if (Kind != "webm")
            return null;
        var element = new byte[12 + inner.Length];
        Encoding.Latin1.GetBytes("\u0018\u0053\u0080\u0067\u0001").CopyTo(element, 0);
        BinaryPrimitives.WriteInt32BigEndian(element.AsSpan(8), inner.Length);
        inner.CopyTo(element, 12);
        return element;
    }

    private static IEnumerable<int> PlacesOf(byte[] bytes, byte[] name)
    {
        for (var at = bytes.AsSpan().IndexOf(name); at >= 0; )
        {
            yield return at;
            var next = bytes.AsSpan(at + 1).IndexOf(name);
            at = next < 0 ? -1 : at + 1 + next;
        }
    }
}
