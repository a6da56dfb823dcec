using System.Buffers.Binary;

namespace Gradus.Media;

/// <summary>Which way up a camera was held (Exif 3.0, tag 0x0112, 1 to 8): the one thing in what it writes that a page
/// needs.</summary>
internal static class Orientation
{
    private const ushort Tag = 0x0112;

    /// <summary>1 where nothing, or nothing readable, is said.</summary>
    /// <param name="tiff">What follows the letters Exif: a TIFF header and its list of tags (TIFF 6.0, section 2).</param>
    public static int Of(ReadOnlySpan<byte> tiff)
    {
        if (tiff.Length < 14)
            return 1;
        var big = tiff.StartsWith("MM"u8);
        if (!big && !tiff.StartsWith("II"u8))
            return 1;
        var list = Long(tiff[4..], big);
        if (list > tiff.Length - 2)
            return 1;
        var tags = Short(tiff[(int)list..], big);
        for (var (n, at) = (0, (int)list + 2); n < tags && at + 12 <= tiff.Length; n++, at += 12)
            if (Short(tiff[at..], big) == Tag)
                return Short(tiff[(at + 8)..], big) is >= 1 and <= 8 and var said ? said : 1;
        return 1;
    }

    /// <summary>The same list of tags with this one alone.</summary>
    public static byte[] Alone(int orientation) =>
        [.. "MM\0*"u8, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0];

    private static ushort Short(ReadOnlySpan<byte> bytes, bool big) =>
        big ? BinaryPrimitives.ReadUInt16BigEndian(bytes) : BinaryPrimitives.ReadUInt16LittleEndian(bytes);

    private static uint Long(ReadOnlySpan<byte> bytes, bool big) =>
        big ? BinaryPrimitives.ReadUInt32BigEndian(bytes) : BinaryPrimitives.ReadUInt32LittleEndian(bytes);
}
