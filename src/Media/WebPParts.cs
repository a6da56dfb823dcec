using System.Buffers.Binary;
using System.Text;

namespace Gradus.Media;

/// <summary>WebP (RFC 9649). Kept are the chunks that it is shown by, and its colours. Browsers do not turn a WebP picture,
/// whatever it says of which way up it is (Chromium 156 over file://, a picture of 40 by 20 with orientation 6: shown 40 by 20);
/// a picture of the practice is turned when it is scaled.</summary>
internal static class WebPParts
{
    private const byte SaysExif = 0x08,
        SaysXmp = 0x04;

    private static readonly string[] Shown = ["VP8X", "VP8 ", "VP8L", "ALPH", "ANIM", "ANMF", "ICCP"];

    public static void Walk(FileInParts parts)
    {
        var end = 8L + parts.Little32(4);
        if (end > parts.Length)
        {
            parts.Fail("is cut off", parts.Length);
            return;
        }

        var (size, orientation) = (4, 1);
        for (var at = 12; at < end; )
        {
            var length = at + 8 <= end ? parts.Little32(at + 4) : uint.MaxValue;
            var whole = 8 + length + (length & 1L);
            if (at + 8 + (long)length > end)
            {
                parts.Fail("is damaged: a part is longer than the file", at);
                return;
            }

            whole = Math.Min(whole, end - at);
            var name = Encoding.ASCII.GetString(parts.All.Slice(at, 4));
            if (name == "EXIF")
                orientation = OrientationIn(parts.All.Slice(at + 8, (int)length));
            if (Shown.Contains(name, StringComparer.Ordinal))
            {
                Keep(parts, at, (int)whole, name);
                size += (int)whole;
            }
            else
                parts.Drop(
                    name == "EXIF" ? "Exif"
                    : name == "XMP " ? "XMP"
                    : "what a program noted in it"
                );

            at += (int)whole;
        }

        if (end < parts.Length)
            parts.Drop("what stands behind its end");
        parts.Turn(orientation);
        if (parts.IsChanged)
            parts.PutFirst(Head(size));
    }

    /// <summary>Some programs write the letters of the JPEG segment before it.</summary>
    private static int OrientationIn(ReadOnlySpan<byte> exif) => Orientation.Of(exif.StartsWith("Exif\0\0"u8) ? exif[6..] : exif);

    private static void Keep(FileInParts parts, int at, int length, string name)
    {
        var body = parts.All[(at + 8)..];
        var (width, height) = name switch
        {
            "VP8X" when length >= 18 => (1 + Int24(body[4..]), 1 + Int24(body[7..])),
            "VP8 " when length >= 18 && parts.Width == 0 => (
                BinaryPrimitives.ReadUInt16LittleEndian(body[6..]) & 0x3FFF,
                BinaryPrimitives.ReadUInt16LittleEndian(body[8..]) & 0x3FFF
            ),
            "VP8L" when length >= 13 && parts.Width == 0 => Lossless(BinaryPrimitives.ReadUInt32LittleEndian(body[1..])),
            _ => (parts.Width, parts.Height),
        };
        (parts.Width, parts.Height) = (width, height);
        if (name != "VP8X" || length < 18 || (body[0] & (SaysExif | SaysXmp)) == 0)
        {
            parts.Keep(at, length);
            return;
        }

        var head = parts.All.Slice(at, length).ToArray();
        head[8] = (byte)(head[8] & ~(SaysExif | SaysXmp));
        parts.Put(head);
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
