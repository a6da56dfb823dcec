using System.Buffers.Binary;
using System.IO.Hashing;
using System.Runtime.InteropServices;
using SkiaSharp;

namespace Gradus.Tests.Media;

/// <summary>Pictures of four coloured quarters, as files.</summary>
internal static class MadePicture
{
    public static readonly (byte, byte, byte) Red = (200, 40, 40),
        Green = (40, 160, 40),
        Blue = (40, 40, 200),
        Yellow = (220, 200, 40);

    /// <summary>Red and green above, blue and yellow below.</summary>
    public static byte[] Quarters(int width, int height, string format, SKColorSpace? space = null, byte covers = 255)
    {
        var pixels = new byte[width * height * 4];
        for (var y = 0; y < height; y++)
        for (var x = 0; x < width; x++)
        {
            var (red, green, blue) =
                y < height / 2 ? (x < width / 2 ? Red : Green)
                : x < width / 2 ? Blue
                : Yellow;
            var at = 4 * (y * width + x);
            (pixels[at], pixels[at + 1], pixels[at + 2], pixels[at + 3]) = (red, green, blue, covers);
        }

        return Encoded(pixels, width, height, format, space);
    }

    public static byte[] Encoded(byte[] pixels, int width, int height, string format, SKColorSpace? space = null)
    {
        var info = new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Unpremul, space);
        var pin = GCHandle.Alloc(pixels, GCHandleType.Pinned);
        try
        {
            using var map = new SKPixmap(info, pin.AddrOfPinnedObject(), info.RowBytes);
            using var data = map.Encode(
                format switch
                {
                    "png" => SKEncodedImageFormat.Png,
                    "webp" => SKEncodedImageFormat.Webp,
                    _ => SKEncodedImageFormat.Jpeg,
                },
                95
            );
            Assert.NotNull(data);
            return data.ToArray();
        }
        finally
        {
            pin.Free();
        }
    }

    /// <summary>The same file, noting which way up it is (Exif 3.0, tag 0x0112).</summary>
    public static byte[] Turned(byte[] file, string format, int width, int height, int orientation)
    {
        byte[] tags = [.. "MM\0*"u8, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0];
        if (format == "png")
            return [.. file[..33], .. Chunk([.. "eXIf"u8, .. tags]), .. file[33..]];
        if (format == "jpg")
            return [.. file[..2], 0xFF, 0xE1, 0, (byte)(8 + tags.Length), .. "Exif\0\0"u8, .. tags, .. file[2..]];
        byte[] inside =
        [
            .. "WEBPVP8X"u8,
            10,
            0,
            0,
            0,
            8,
            0,
            0,
            0,
            .. Int24(width - 1),
            .. Int24(height - 1),
            .. file[12..],
            .. "EXIF"u8,
            (byte)tags.Length,
            0,
            0,
            0,
            .. tags,
        ];
        var length = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, inside.Length);
        return [.. "RIFF"u8, .. length, .. inside];
    }

    /// <summary>A chunk of a PNG.</summary>
    /// <param name="named">Its name and what it holds.</param>
    public static byte[] Chunk(byte[] named)
    {
        var chunk = new byte[named.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(chunk, named.Length - 4);
        named.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(named.Length + 4), Crc32.HashToUInt32(named));
        return chunk;
    }

    /// <summary>The colours of a file, read by the library alone, row by row: red, green, blue, and how much it covers.</summary>
    public static (int Width, int Height, byte[] Pixels) Read(byte[] file)
    {
        using var map = SKBitmap.Decode(file);
        Assert.NotNull(map);
        using var plain = map.Copy(SKColorType.Rgba8888);
        return (map.Width, map.Height, plain.Bytes);
    }

    /// <summary>Which of the four quarters has this colour, or something near it: "red", "green", "blue", "yellow"; else the
    /// colour.</summary>
    public static string ColourAt(byte[] file, double x, double y)
    {
        var (width, height, pixels) = Read(file);
        var at = 4 * ((int)(y * height) * width + (int)(x * width));
        var seen = (pixels[at], pixels[at + 1], pixels[at + 2]);
        return Near(seen, Red) ? "red"
            : Near(seen, Green) ? "green"
            : Near(seen, Blue) ? "blue"
            : Near(seen, Yellow) ? "yellow"
            : seen.ToString();
    }

    private static bool Near((byte R, byte G, byte B) one, (byte R, byte G, byte B) other) =>
        Math.Abs(one.R - other.R) + Math.Abs(one.G - other.G) + Math.Abs(one.B - other.B) < 40;

    private static byte[] Int24(int number) => [(byte)number, (byte)(number >> 8), (byte)(number >> 16)];
}
