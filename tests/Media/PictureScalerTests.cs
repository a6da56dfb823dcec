using Gradus.Media;
using SkiaSharp;

namespace Gradus.Tests.Media;

public sealed class PictureScalerTests
{
    [Theory]
    [InlineData(3000, 2000, "480x320 960x640")]
    [InlineData(2000, 3000, "480x720 960x1440")]
    [InlineData(700, 500, "480x343 700x500")]
    [InlineData(480, 20, "480x20")]
    [InlineData(300, 200, "300x200")]
    [InlineData(1, 1, "1x1")]
    [InlineData(1000, 3000, "320x960 640x1920")]
    [InlineData(1, 9000, "1x960")]
    [InlineData(9000, 1, "480x1 960x1")]
    public void A_picture_is_made_to_fit_two_widths_and_never_larger(int width, int height, string sizes)
    {
        foreach (var format in (string[])["jpg", "png", "webp"])
        {
            var scaled = Scaled(MadePicture.Quarters(width, height, format));
            Assert.Equal(sizes, string.Join(' ', scaled.Select(s => $"{s.Width}x{s.Height}")));
            foreach (var size in scaled)
            {
                Assert.Equal((size.Width, size.Height), SizeOf(size.WebP));
                Assert.Equal(size == scaled[0], size.Jpeg is not null);
                if (size.Jpeg is not null)
                    Assert.Equal((size.Width, size.Height), SizeOf(size.Jpeg));
            }
        }
    }

    /// <summary>Which stored corners are seen above, from the left (Exif 3.0, 4.6.5.1.6). Above are red and green, below blue and
    /// yellow.</summary>
    [Theory]
    [InlineData(1, "red", "green")]
    [InlineData(2, "green", "red")]
    [InlineData(3, "yellow", "blue")]
    [InlineData(4, "blue", "yellow")]
    [InlineData(5, "red", "blue")]
    [InlineData(6, "blue", "red")]
    [InlineData(7, "yellow", "green")]
    [InlineData(8, "green", "yellow")]
    public void A_picture_is_turned_upright(int orientation, string left, string right)
    {
        foreach (var format in (string[])["jpg", "png", "webp"])
        {
            var file = MadePicture.Turned(MadePicture.Quarters(60, 40, format), format, 60, 40, orientation);
            var size = Assert.Single(Scaled(file));
            Assert.Equal(orientation >= 5 ? (40, 60) : (60, 40), (size.Width, size.Height));
            foreach (var made in new[] { size.WebP, size.Jpeg ?? [] })
            {
                Assert.Equal((size.Width, size.Height), SizeOf(made));
                Assert.Equal(
                    (format, left, right),
                    (format, MadePicture.ColourAt(made, 0.25, 0.25), MadePicture.ColourAt(made, 0.75, 0.25))
                );
            }
        }
    }

    [Fact]
    public void What_is_seen_stays_where_it_is_in_both_sizes()
    {
        foreach (var size in Scaled(MadePicture.Quarters(2400, 1600, "jpg")))
            Assert.Equal(
                ["red", "green", "blue", "yellow"],
                new[] { (0.2, 0.2), (0.8, 0.2), (0.2, 0.8), (0.8, 0.8) }.Select(p =>
                    MadePicture.ColourAt(size.WebP, p.Item1, p.Item2)
                )
            );
    }

    /// <summary>On a dark page a drawing in black on nothing would not be seen.</summary>
    [Theory]
    [InlineData("png")]
    [InlineData("webp")]
    public void What_is_seen_through_stands_on_white(string format)
    {
        foreach (var (covers, least, most) in new[] { ((byte)0, 253, 255), ((byte)128, 130, 155) })
        {
            var size = Assert.Single(Scaled(MadePicture.Quarters(80, 80, format, covers: covers)));
            var pixels = MadePicture.Read(size.WebP).Pixels;
            Assert.All(pixels.Chunk(4), p => Assert.Equal(255, p[3]));
            Assert.InRange(pixels[2], least, most);
        }
    }

    /// <summary>Display P3 (200, 40, 40) is a redder red in sRGB.</summary>
    [Fact]
    public void Colours_of_another_space_become_those_of_the_web()
    {
        using var wide = SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3);
        foreach (var format in (string[])["png", "jpg"])
        {
            var file = MadePicture.Quarters(80, 80, format, wide);
            var size = Assert.Single(Scaled(file));
            var pixels = MadePicture.Read(size.WebP).Pixels;
            Assert.InRange(pixels[0], 212, 226);
            Assert.InRange(pixels[1], 0, 20);
        }
    }

    [Fact]
    public void A_made_picture_tells_nothing_and_has_no_profile()
    {
        using var wide = SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3);
        var files = new[]
        {
            MadePicture.Quarters(700, 500, "png", wide),
            MediaFileTests.Bytes("upright.jpg"),
            MediaFileTests.Bytes("upright.png"),
            MediaFileTests.Bytes("sideways.webp"),
        };
        foreach (var made in files.SelectMany(Scaled).SelectMany(s => new[] { s.WebP, s.Jpeg }).OfType<byte[]>())
        {
            Assert.Empty(MediaFile.Of(made)?.Tells ?? ["nothing was read"]);
            Assert.True(made.AsSpan().IndexOf("ICC"u8) < 0);
            var noted = MediaFileTests.Noted("made" + (made[0] == 0xFF ? ".jpg" : ".webp"), made);
            foreach (var told in (string[])["Ottoline", "Mill Lane", "GPS", "Orientation", "Profile", "Error", "Warning"])
                Assert.DoesNotContain(told, noted, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void The_same_picture_gives_the_same_bytes_on_any_thread()
    {
        var file = MadePicture.Quarters(1500, 1100, "jpg");
        var made = new string[8];
        Parallel.For(0, made.Length, n =>
            made[n] = string.Concat(Scaled(file).Select(s => Convert.ToHexString([.. s.WebP, .. s.Jpeg ?? []])))
        );
        Assert.Single(made.Distinct());
    }

    /// <summary>Every pixel of the small picture is the mean of what it covers.</summary>
    [Fact]
    public void A_fine_pattern_becomes_grey_and_does_not_flicker()
    {
        var pixels = new byte[1920 * 64 * 4];
        for (var n = 0; n < pixels.Length / 4; n++)
            pixels.AsSpan(4 * n, 4).Fill(n % 2 == 0 ? (byte)0 : (byte)255);
        for (var n = 3; n < pixels.Length; n += 4)
            pixels[n] = 255;
        foreach (var size in Scaled(MadePicture.Encoded(pixels, 1920, 64, "png")))
            Assert.All(MadePicture.Read(size.WebP).Pixels.Chunk(4), p => Assert.InRange(p[0], 122, 133));
    }

    [Fact]
    public void Two_files_are_alike_where_no_colour_differs_by_more_than_two()
    {
        byte[] one = Grey(100),
            near = Grey(102),
            far = Grey(103);
        Assert.True(PictureLikeness.AreAlike(one, one));
        Assert.True(PictureLikeness.AreAlike(one, near));
        Assert.False(PictureLikeness.AreAlike(one, far));
        Assert.False(PictureLikeness.AreAlike(one, MadePicture.Turned(near, "png", 40, 40, 3)));
        Assert.False(PictureLikeness.AreAlike(one, (byte[])[.. near, 1]));
        Assert.False(PictureLikeness.AreAlike(one, near.AsMemory(0, near.Length - 20)));
        Assert.False(PictureLikeness.AreAlike(one, Array.Empty<byte>()));
        Assert.False(PictureLikeness.AreAlike(one, MadePicture.Encoded(Filled(100, 40 * 41), 40, 41, "png")));
        Assert.False(PictureLikeness.AreAlike(one, MadePicture.Encoded(Filled(100, 40 * 40), 40, 40, "jpg")));

        static byte[] Grey(byte colour) => MadePicture.Encoded(Filled(colour, 40 * 40), 40, 40, "png");
    }

    private static byte[] Filled(byte colour, int pixels)
    {
        var filled = new byte[4 * pixels];
        Array.Fill(filled, colour);
        for (var n = 3; n < filled.Length; n += 4)
            filled[n] = 255;
        return filled;
    }

    private static IReadOnlyList<ScaledSize> Scaled(byte[] file)
    {
        var media = MediaFile.Of(file);
        Assert.NotNull(media);
        Assert.Null(media.Trouble);
        var scaled = PictureScaler.Scale(file, media);
        Assert.Null(scaled.Trouble);
        return scaled.Sizes;
    }

    private static (int, int) SizeOf(byte[] file)
    {
        var media = MediaFile.Of(file);
        Assert.NotNull(media);
        return (media.Width, media.Height);
    }
}
