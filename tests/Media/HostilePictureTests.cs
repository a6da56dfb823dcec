using System.Buffers.Binary;
using Gradus.Media;

namespace Gradus.Tests.Media;

/// <summary>Whatever is in a picture, it is made to fit or refused; nothing throws, and nothing takes long.</summary>
public sealed class HostilePictureTests
{
    public static TheoryData<string> Formats => ["jpg", "png", "webp"];

    [Theory]
    [MemberData(nameof(Formats))]
    public void A_picture_cut_off_anywhere_is_refused(string format)
    {
        var file = MadePicture.Quarters(300, 200, format);
        for (var part = 1; part < 20; part++)
            Assert.NotNull(TroubleOf(file[..(file.Length * part / 20)]));
    }

    /// <summary>Its own headers are whole; what it holds ends too early.</summary>
    [Fact]
    public void A_picture_that_holds_less_than_it_says_is_refused()
    {
        var png = MadePicture.Quarters(300, 200, "png");
        var higher = png.ToArray();
        BinaryPrimitives.WriteInt32BigEndian(higher.AsSpan(20), 5000);
        Assert.NotNull(TroubleOf(higher));
        byte[] right = [.. higher[..8], .. MadePicture.Chunk(higher[12..29]), .. higher[33..]];
        Assert.StartsWith("cannot be shown", TroubleOf(right), StringComparison.Ordinal);
    }

    /// <summary>The head of a WebP says 60 by 40 pixels, the picture in it has 300 by 200.</summary>
    [Fact]
    public void A_picture_of_another_size_than_it_says_is_refused() =>
        Assert.StartsWith(
            "cannot be shown",
            TroubleOf(MadePicture.Turned(MadePicture.Quarters(300, 200, "webp"), "webp", 60, 40, 6)),
            StringComparison.Ordinal
        );

    [Theory]
    [MemberData(nameof(Formats))]
    public void A_picture_with_damage_anywhere_is_refused_or_made_to_fit(string format)
    {
        var file = MadePicture.Turned(MadePicture.Quarters(90, 60, format), format, 90, 60, 6);
        var chance = new Chance(7);
        var refused = 0;
        for (var n = 0; n < 400; n++)
        {
            var damaged = file.ToArray();
            for (var k = 1 + chance.Below(6); k > 0; k--)
                damaged[chance.Below(damaged.Length)] = (byte)chance.Below(256);
            if (MediaFile.Of(damaged) is { Width: > 2000 } or { Height: > 2000 } || TroubleOf(damaged) is not null)
                refused++;
        }

        Assert.InRange(refused, 20, 400);
    }

    /// <summary>Cyan as a printer mixes it: four colours, written the other way round as one program does (ITU T.81, and the
    /// mark "Adobe" of its application).</summary>
    [Fact]
    public void A_picture_for_print_has_its_colours()
    {
        byte[] file =
        [
            0xFF,
            0xD8,
            0xFF,
            0xEE,
            0,
            14,
            .. "Adobe"u8,
            0,
            100,
            0,
            0,
            0,
            0,
            0,
            .. (byte[])[0xFF, 0xDB, 0, 67, 0],
            .. Enumerable.Repeat((byte)1, 64),
            .. (byte[])[0xFF, 0xC0, 0, 20, 8, 0, 8, 0, 8, 4, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0, 4, 0x11, 0],
            .. (byte[])[0xFF, 0xC4, 0, 21, 0, 0, 2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 10, 11],
            .. (byte[])[0xFF, 0xC4, 0, 20, 0x10, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
            .. (byte[])[0xFF, 0xDA, 0, 14, 4, 1, 0, 2, 0, 3, 0, 4, 0, 0, 63, 0],
            .. Scan("01" + "01111111111" + "0", "00" + "1111111000" + "0", "00" + "1111111000" + "0", "00" + "1111111000" + "0"),
            0xFF,
            0xD9,
        ];
        var media = MediaFile.Of(file);
        Assert.NotNull(media);
        var scaled = PictureScaler.Scale(file, media);
        Assert.Null(scaled.Trouble);
        var pixels = MadePicture.Read(scaled.Sizes[0].WebP).Pixels;
        Assert.InRange(pixels[0], 0, 30);
        Assert.InRange(pixels[1], 160, 255);
        Assert.InRange(pixels[2], 200, 255);
    }

    /// <summary>Grey of 16 bits, one pixel: 0x8000 of 0xFFFF.</summary>
    [Fact]
    public void A_picture_of_sixteen_bits_has_its_colours()
    {
        byte[] file =
        [
            .. (byte[])[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A],
            .. MadePicture.Chunk([.. "IHDR"u8, 0, 0, 0, 1, 0, 0, 0, 1, 16, 0, 0, 0, 0]),
            .. MadePicture.Chunk([.. "IDAT"u8, .. Packed([0, 0x80, 0x00])]),
            .. MadePicture.Chunk([.. "IEND"u8]),
        ];
        var media = MediaFile.Of(file);
        Assert.NotNull(media);
        var scaled = PictureScaler.Scale(file, media);
        Assert.Equal((null, 1), (scaled.Trouble, scaled.Sizes.Count));
        Assert.InRange(MadePicture.Read(scaled.Sizes[0].WebP).Pixels[0], 124, 132);
    }

    /// <summary>Two frames, of which the first is seen: red and green above.</summary>
    [Fact]
    public void Of_a_picture_that_moves_the_first_moment_is_shown()
    {
        var one = Shown(MadePicture.Quarters(60, 40, "webp"));
        var other = Shown(MadePicture.Encoded(Enumerable.Repeat((byte)255, 60 * 40 * 4).ToArray(), 60, 40, "webp"));
        byte[] inside =
        [
            .. "WEBPVP8X"u8,
            .. (byte[])[10, 0, 0, 0, 2, 0, 0, 0, 59, 0, 0, 39, 0, 0],
            .. "ANIM"u8,
            .. (byte[])[6, 0, 0, 0, 255, 255, 255, 255, 0, 0],
            .. Frame(one),
            .. Frame(other),
        ];
        var length = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, inside.Length);
        byte[] file = [.. "RIFF"u8, .. length, .. inside];
        var media = MediaFile.Of(file);
        Assert.NotNull(media);
        var scaled = PictureScaler.Scale(file, media);
        Assert.Null(scaled.Trouble);
        Assert.Equal("red", MadePicture.ColourAt(scaled.Sizes[0].WebP, 0.25, 0.25));
        Assert.Equal("green", MadePicture.ColourAt(scaled.Sizes[0].WebP, 0.75, 0.25));

        static byte[] Shown(byte[] file) => file[file.AsSpan().IndexOf("VP8 "u8)..];

        static byte[] Frame(byte[] picture)
        {
            var size = new byte[4];
            BinaryPrimitives.WriteInt32LittleEndian(size, picture.Length + 16);
            return [.. "ANMF"u8, .. size, 0, 0, 0, 0, 0, 0, 59, 0, 0, 39, 0, 0, 100, 0, 0, 0, .. picture];
        }
    }

    /// <summary>A few bytes that ask a reader to go through a large picture again and again.</summary>
    [Fact]
    public void A_jpeg_of_very_many_scans_is_refused_before_it_is_read()
    {
        var jpeg = MadePicture.Quarters(300, 200, "jpg");
        var scan = jpeg.AsSpan().IndexOf((byte[])[0xFF, 0xDA]);
        byte[] many = [.. jpeg[..^2], .. Enumerable.Repeat(jpeg[scan..^2], 70).SelectMany(s => s), 0xFF, 0xD9];
        Assert.StartsWith("goes over itself more than 64 times", MediaFile.Of(many)?.Trouble, StringComparison.Ordinal);
    }

    private static string? TroubleOf(byte[] file) =>
        MediaFile.Of(file) is not { } media
            ? "is no picture"
            : media.Trouble
                ?? (
                    (long)media.Width * media.Height > PictureScaler.MostPixels
                        ? "too large"
                        : PictureScaler.Scale(file, media).Trouble
                );

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var into = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionLevel.Optimal))
            into.Write(bytes);
        return packed.ToArray();
    }

    /// <summary>Bits as bytes, filled up with ones, a zero byte behind each 0xFF.</summary>
    private static IEnumerable<byte> Scan(params string[] bits)
    {
        var all = string.Concat(bits);
        all = all.PadRight((all.Length + 7) / 8 * 8, '1');
        for (var at = 0; at < all.Length; at += 8)
        {
            var b = Convert.ToByte(all[at..(at + 8)], 2);
            yield return b;
            if (b == 0xFF)
                yield return 0;
        }
    }
}
