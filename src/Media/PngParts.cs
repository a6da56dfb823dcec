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

    public static void Walk(Taking taking)
    {
        taking.Keep(0, 8);
        var orientation = 0;
        for (var at = 8; ; )
        {
            if (at + 12 > taking.Length || taking.Big32(at) > taking.Length - at - 12)
            {
                taking.Fail("is cut off", taking.Length);
                return;
            }

            var (length, name) = ((int)taking.Big32(at), Encoding.ASCII.GetString(taking.All.Slice(at + 4, 4)));
            if (!name.All(char.IsAsciiLetter) || (at == 8) != (name == "IHDR") || (at == 8 && length < 8))
            {
                taking.Fail("is damaged: no part of a PNG begins", at);
                return;
            }

            if (at == 8)
                (taking.Width, taking.Height) = (
                    (int)Math.Min(taking.Big32(16), int.MaxValue),
                    (int)Math.Min(taking.Big32(20), int.MaxValue)
                );
            if (name == "eXIf" && orientation == 0)
                Exif(taking, at, length, ref orientation);
            else if (Shown.Contains(name, StringComparer.Ordinal))
                taking.Keep(at, length + 12);
            else
                taking.Drop(
                    name is "tEXt" or "zTXt" or "iTXt" ? "words about it"
                    : name == "tIME" ? "when it was changed"
                    : name == "eXIf" ? "Exif"
                    : "what a program noted in it"
                );
            at += length + 12;
            if (name != "IEND")
                continue;
            if (at < taking.Length)
                taking.Drop("what stands behind its end");
            taking.Turn(orientation);
            return;
        }
    }

    private static void Exif(Taking taking, int at, int length, ref int orientation)
    {
        var body = taking.All.Slice(at + 8, length);
        orientation = Orientation.Of(body);
        var alone = Orientation.Alone(orientation);
        if (orientation > 1 && body.SequenceEqual(alone))
        {
            taking.Keep(at, length + 12);
            return;
        }

        taking.Drop("Exif");
        if (orientation > 1)
            taking.Put(Chunk([.. "eXIf"u8, .. alone]));
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
