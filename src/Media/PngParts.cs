using System.Buffers.Binary;
using System.IO.Hashing;
using System.Text;

namespace Gradus.Media;

/// <summary>PNG (ISO/IEC 15948, third edition). Kept are the chunks that a picture cannot be shown without, those that say
/// something of its colours, its frames or its size, and which way up it is.</summary>
internal static class PngParts
{
    private static readonly string[] Shown =
    [
        "IHDR",
        "PLTE",
        "IDAT",
        "IEND",
        "tRNS",
        "cHRM",
        "gAMA",
        "iCCP",
        "sBIT",
        "sRGB",
        "cICP",
        "mDCV",
        "cLLI",
        "bKGD",
        "hIST",
        "pHYs",
        "acTL",
        "fcTL",
        "fdAT",
    ];

    public static void Walk(FileInParts parts)
    {
        parts.Keep(0, 8);
        var orientation = 0;
        for (var at = 8; ; )
        {
            if (at + 12 > parts.Length || parts.Big32(at) > parts.Length - at - 12)
            {
                parts.Fail("is cut off", parts.Length);
                return;
            }

            var (length, name) = ((int)parts.Big32(at), Encoding.ASCII.GetString(parts.All.Slice(at + 4, 4)));
            if (!name.All(char.IsAsciiLetter) || (at == 8) != (name == "IHDR") || (at == 8 && length < 8))
            {
                parts.Fail("is damaged: no part of a PNG begins", at);
                return;
            }

            if (at == 8)
                (parts.Width, parts.Height) = (
                    (int)Math.Min(parts.Big32(16), int.MaxValue),
                    (int)Math.Min(parts.Big32(20), int.MaxValue)
                );
            if (name == "eXIf" && orientation == 0)
                Exif(parts, at, length, ref orientation);
            else if (Shown.Contains(name, StringComparer.Ordinal))
                parts.Keep(at, length + 12);
            else
                parts.Drop(
                    name is "tEXt" or "zTXt" or "iTXt" ? "words about it"
                    : name == "tIME" ? "when it was changed"
                    : name == "eXIf" ? "Exif"
                    : "what a program noted in it"
                );
            at += length + 12;
            if (name != "IEND")
                continue;
            if (at < parts.Length)
                parts.Drop("what stands behind its end");
            parts.Turn(orientation);
            return;
        }
    }

    private static void Exif(FileInParts parts, int at, int length, ref int orientation)
    {
        var body = parts.All.Slice(at + 8, length);
        orientation = Orientation.Of(body);
        var alone = Orientation.Alone(orientation);
        if (orientation > 1 && body.SequenceEqual(alone))
        {
            parts.Keep(at, length + 12);
            return;
        }

        parts.Drop("Exif");
        if (orientation > 1)
            parts.Put(Chunk([.. "eXIf"u8, .. alone]));
    }

    private static byte[] Chunk(byte[] named)
    {
        var chunk = new byte[named.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(chunk, named.Length - 4);
        named.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(named.Length + 4), Crc32.HashToUInt32(named));
        return chunk;
    }
}
