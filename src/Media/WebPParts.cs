using System.Buffers.Binary;
using System.Text;

namespace Gradus.Media;

/// <summary>WebP (RFC 9649). Kept are the chunks that it is shown by, and its colours. Browsers do not turn a WebP picture,
/// whatever it says of which way up it is (Chromium 156 over file://, a picture of 40 by 20 with orientation 6: shown 40 by 20),
/// so nothing is lost with that.</summary>
internal static class WebPParts
{
    private const byte SaysExif = 0x08,
        SaysXmp = 0x04;

    private static readonly string[] Shown = ["VP8X", "VP8 ", "VP8L", "ALPH", "ANIM", "ANMF", "ICCP"];

    public static void Walk(Taking taking)
    {
        var end = 8L + taking.Little32(4);
        if (end > taking.Length)
        {
            taking.Fail("is cut off", taking.Length);
            return;
        }

        var size = 4;
        for (var at = 12; at < end; )
        {
            var length = at + 8 <= end ? taking.Little32(at + 4) : uint.MaxValue;
            var whole = 8 + length + (length & 1L);
            if (at + 8 + (long)length > end)
            {
                taking.Fail("is damaged: a part is longer than the file", at);
                return;
            }

            whole = Math.Min(whole, end - at);
            var name = Encoding.ASCII.GetString(taking.All.Slice(at, 4));
            if (name == "EXIF")
                taking.Sideways = OrientationIn(taking.All.Slice(at + 8, (int)length)) > 1;
            if (Shown.Contains(name, StringComparer.Ordinal))
            {
                Keep(taking, at, (int)whole, name);
                size += (int)whole;
            }
            else
                taking.Drop(
                    name == "EXIF" ? "Exif"
                    : name == "XMP " ? "XMP"
                    : "what a program noted in it"
                );

            at += (int)whole;
        }

        if (end < taking.Length)
            taking.Drop("what stands behind its end");
        if (taking.IsChanged)
            taking.PutFirst(Head(size));
    }

    /// <summary>Some programs write the letters of the JPEG segment before it.</summary>
    private static int OrientationIn(ReadOnlySpan<byte> exif) => Orientation.Of(exif.StartsWith("Exif\0\0"u8) ? exif[6..] : exif);

    private static void Keep(Taking taking, int at, int length, string name)
    {
        var body = taking.All[(at + 8)..];
        var (width, height) = name switch
        {
            "VP8X" when length >= 18 => (1 + Int24(body[4..]), 1 + Int24(body[7..])),
            "VP8 " when length >= 18 && taking.Width == 0 => (
                BinaryPrimitives.ReadUInt16LittleEndian(body[6..]) & 0x3FFF,
                BinaryPrimitives.ReadUInt16LittleEndian(body[8..]) & 0x3FFF
            ),
            "VP8L" when length >= 13 && taking.Width == 0 => Lossless(BinaryPrimitives.ReadUInt32LittleEndian(body[1..])),
            _ => (taking.Width, taking.Height),
        };
        (taking.Width, taking.Height) = (width, height);
        if (name != "VP8X" || length < 18 || (body[0] & (SaysExif | SaysXmp)) == 0)
        {
            taking.Keep(at, length);
            return;
        }

        var head = taking.All.Slice(at, length).ToArray();
        head[8] = (byte)(head[8] & ~(SaysExif | SaysXmp));
        taking.Put(head);
    }

    private static (int Width, int Height) Lossless(uint bits) => ((int)(bits & 0x3FFF) + 1, (int)((bits >> 14) & 0x3FFF) + 1);

    private static int Int24(ReadOnlySpan<byte> bytes) => bytes[0] | (bytes[1] << 8) | (bytes[2] << 16);

    private static byte[] Head(int size)
    {
        var head = new byte[12];
        "RIFF"u8.CopyTo(head);
        BinaryPrimitives.WriteInt32LittleEndian(head.AsSpan(4), size);
        "WEBP"u8.CopyTo(head.AsSpan(8));
        return head;
    }
}
