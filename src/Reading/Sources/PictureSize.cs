using System.Buffers.Binary;

namespace Gradus.Reading;

/// <summary>Width and height in pixels, from the first bytes of a JPEG (ITU T.81), PNG (ISO 15948) or WebP (RFC 9649) file.</summary>
internal static class PictureSize
{
    /// <summary>Null where the bytes are none of the three, or cut off.</summary>
    public static (int Width, int Height)? Of(ReadOnlySpan<byte> bytes)
    {
        if (bytes is [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, ..]) return Png(bytes);
        if (bytes is [0xFF, 0xD8, ..]) return Jpeg(bytes);
        return bytes.Length > 30 && bytes.StartsWith("RIFF"u8) && bytes[8..].StartsWith("WEBP"u8) ? WebP(bytes) : null;
    }

    private static (int, int)? Png(ReadOnlySpan<byte> bytes) => bytes.Length < 24
        ? null
        : Checked(BinaryPrimitives.ReadInt32BigEndian(bytes[16..]), BinaryPrimitives.ReadInt32BigEndian(bytes[20..]));

    /// <summary>Goes from segment to segment until one that begins a frame.</summary>
    private static (int, int)? Jpeg(ReadOnlySpan<byte> bytes)
    {
        for (var at = 2; at + 9 < bytes.Length;)
        {
            if (bytes[at] != 0xFF) return null;
            var kind = bytes[at + 1];
            if (kind == 0xFF)
            {
                at++;
                continue;
            }

            if (kind is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
                return Checked(BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 7)..]), BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 5)..]));
            at += 2 + BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]);
        }

        return null;
    }

    private static (int, int)? WebP(ReadOnlySpan<byte> bytes)
    {
        var chunk = bytes[12..];
        if (chunk.StartsWith("VP8X"u8)) return Checked(1 + Int24(bytes[24..]), 1 + Int24(bytes[27..]));
        if (chunk.StartsWith("VP8 "u8)) return Checked(BinaryPrimitives.ReadUInt16LittleEndian(bytes[26..]) & 0x3FFF, BinaryPrimitives.ReadUInt16LittleEndian(bytes[28..]) & 0x3FFF);
        if (!chunk.StartsWith("VP8L"u8)) return null;
        var bits = BinaryPrimitives.ReadUInt32LittleEndian(bytes[21..]);
        return Checked((int)(bits & 0x3FFF) + 1, (int)((bits >> 14) & 0x3FFF) + 1);
    }

    private static int Int24(ReadOnlySpan<byte> bytes) => bytes[0] | (bytes[1] << 8) | (bytes[2] << 16);

    private static (int, int)? Checked(int width, int height) => width is > 0 and < 65536 && height is > 0 and < 65536 ? (width, height) : null;
}
