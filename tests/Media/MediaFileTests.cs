using System.Diagnostics;
using System.Text;
using Gradus.Domain;
using Gradus.Media;
using Gradus.Tests.House;

namespace Gradus.Tests.Media;

public sealed class MediaFileTests
{
    private static readonly string[] Told = ["Ottoline", "Mill Lane", "GPS", "+51.5", "exif:", "xmpmeta"];

    public static TheoryData<string> Files => ["upright.jpg", "upright.png", "sideways.webp", "silent.mp4", "sounding.webm"];

    public static byte[] Bytes(string name) => File.ReadAllBytes(Repository.Path("tests", "Media", "files", name));

    [Theory]
    [InlineData("upright.jpg", MediaKind.Jpeg, 20, 40, false, 6, "Exif, XMP, IPTC, a comment")]
    [InlineData("upright.png", MediaKind.Png, 20, 40, false, 6, "Exif, words about it")]
    [InlineData("sideways.webp", MediaKind.WebP, 20, 40, false, 6, "Exif, XMP")]
    [InlineData("silent.mp4", MediaKind.Mp4, 48, 64, false, 1, "what a camera or a program noted in it")]
    [InlineData("sounding.webm", MediaKind.WebM, 64, 48, true, 1, "words about it")]
    public void A_file_is_read_with_its_size_as_it_is_shown_and_what_it_tells(
        string name,
        MediaKind kind,
        int width,
        int height,
        bool sounds,
        int orientation,
        string tells
    )
    {
        var file = Read(Bytes(name));
        Assert.Equal(
            (null, kind, width, height, sounds, orientation),
            (file.Trouble, file.Kind, file.Width, file.Height, file.Sounds, file.Orientation)
        );
        Assert.Equal(tells.Split(", ").Order(StringComparer.Ordinal), file.Tells.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Of_what_it_tells_nothing_is_left_and_the_rest_is_the_same_at_every_further_reading(string name)
    {
        var before = Bytes(name);
        Assert.Contains(Told, word => Holds(before, word));
        var after = Read(before).Bytes.ToArray();
        Assert.DoesNotContain(Told, word => Holds(after, word));
        var again = Read(after);
        Assert.Empty(again.Tells);
        if (Read(before).Kind != MediaKind.WebP)
            Assert.Equal((Read(before).Width, Read(before).Height), (again.Width, again.Height));
        Assert.Equal(after, again.Bytes.ToArray());
    }

    /// <summary>What is shown: the scan of a JPEG, the data of a PNG, a WebP and an MP4, the blocks of a WebM; and in a clip
    /// nothing may move.</summary>
    [Theory]
    [InlineData("upright.jpg", "\u00ff\u00da", "\u00ff\u00d9")]
    [InlineData("upright.png", "IDAT", "IEND")]
    [InlineData("sideways.webp", "VP8 ", "EXIF")]
    [InlineData("silent.mp4", "mdat", null)]
    [InlineData("sounding.webm", "\u001f\u0043\u00b6\u0075", "\u001c\u0053\u00bb\u006b")]
    public void What_is_shown_stays_as_it_is_byte_for_byte(string name, string from, string? until)
    {
        var before = Bytes(name);
        var after = Read(before).Bytes.ToArray();
        var shown = Part(before, from, until);
        Assert.True(shown.Length > 20);
        Assert.True(after.AsSpan().IndexOf(shown) > 0);
        if (name.EndsWith(".mp4", StringComparison.Ordinal) || name.EndsWith(".webm", StringComparison.Ordinal))
            Assert.Equal((before.Length, before.AsSpan().IndexOf(shown)), (after.Length, after.AsSpan().IndexOf(shown)));
    }

    /// <summary>The independent reader is ExifTool.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void An_independent_reader_finds_which_way_up_it_is_and_nothing_else_of_what_was_noted(string name)
    {
        var (before, after) = (Noted(name, Bytes(name)), Noted(name, Read(Bytes(name)).Bytes.ToArray()));
        Assert.Contains("Ottoline", before.Replace("Mill Lane", "Ottoline", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain(Told, word => after.Contains(word, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("Error", after, StringComparison.Ordinal);
        Assert.DoesNotContain("Warning", after, StringComparison.Ordinal);
        Assert.Equal(
            name.StartsWith("upright", StringComparison.Ordinal),
            after.Contains("Orientation : 6", StringComparison.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_file_that_is_cut_off_or_damaged_anywhere_is_refused_or_read_and_never_throws(string name)
    {
        var bytes = Bytes(name);
        var refused = Enumerable
            .Range(0, bytes.Length)
            .Count(length => MediaFile.Of(bytes.AsMemory(0, length)) is null or { Trouble: not null });
        var chance = new Reading.Chance(21);
        var troubles = 0;
        for (var n = 0; n < 4000; n++)
        {
            var damaged = bytes.ToArray();
            for (var k = 1 + chance.Below(5); k > 0; k--)
                damaged[chance.Below(damaged.Length)] = (byte)chance.Below(256);
            if (MediaFile.Of(damaged) is null or { Trouble: not null })
                troubles++;
        }

        Assert.True(refused > bytes.Length / 3, $"only {refused} of {bytes.Length} cuts were noticed");
        Assert.InRange(troubles, 40, 3999);
    }

    [Fact]
    public void A_comment_in_a_gif_is_left_out_and_its_repeating_stays()
    {
        byte[] head =
        [
            .. "GIF89a"u8,
            1,
            0,
            1,
            0,
            0x80,
            0,
            0,
            0,
            0,
            0,
            255,
            255,
            255,
            0x21,
            0xFF,
            11,
            .. "NETSCAPE2.0"u8,
            3,
            1,
            0,
            0,
            0,
        ];
        byte[] tail = [0x2C, 0, 0, 0, 0, 1, 0, 1, 0, 0, 2, 2, 0x4C, 1, 0, 0x3B];
        var file = Read([.. head, 0x21, 0xFE, 9, .. "Mill Lane"u8, 0, .. tail, 7, 7]);
        Assert.Equal(["a comment", "what stands behind its end"], file.Tells);
        Assert.Equal([.. head, .. tail], file.Bytes.ToArray());
        Assert.Equal((1, 1), (file.Width, file.Height));
    }

    /// <summary>A phone notes the place on every frame in a track of its own.</summary>
    [Fact]
    public void A_clip_with_a_track_that_is_neither_picture_nor_sound_is_refused()
    {
        var bytes = Bytes("silent.mp4");
        bytes.AsSpan(bytes.AsSpan().IndexOf("vide"u8), 4).Clear();
        Assert.StartsWith("has a track that is neither picture nor sound", Read(bytes).Trouble, StringComparison.Ordinal);
    }

    /// <summary>Five bytes, the last four of which alone would be 64.</summary>
    [Fact]
    public void A_clip_wider_than_a_number_can_say_is_refused()
    {
        var bytes = Bytes("sounding.webm");
        var width = bytes.AsSpan().IndexOf((byte[])[0xB0, 0x81, 0x40]);
        byte[] wider = [.. bytes[..width], 0xB0, 0x85, 0x80, 0, 0, 0, 0x40, .. bytes[(width + 3)..]];
        Assert.StartsWith("says nowhere how wide", Read(wider).Trouble, StringComparison.Ordinal);
    }

    /// <summary>Behind the scan, once the first comment is gone, a zero belongs to the scan, and the second comment
    /// begins.</summary>
    [Fact]
    public void A_comment_hidden_behind_a_zero_is_not_kept()
    {
        var bytes = Bytes("upright.jpg");
        var end = bytes.AsSpan().LastIndexOf((byte[])[0xFF, 0xD9]);
        byte[] comment = [0xFF, 0xFE, 0, 4, .. "ab"u8];
        byte[] hiding = [.. bytes[..end], .. comment, 0xFF, 0, 0, 8, .. comment, .. bytes[end..]];
        Assert.StartsWith("is damaged", Read(hiding).Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public void When_a_clip_was_recorded_is_left_out()
    {
        var bytes = Bytes("silent.mp4");
        bytes[bytes.AsSpan().IndexOf("mvhd"u8) + 8] = 0xE0;
        var file = Read(bytes);
        Assert.Contains("when it was recorded", file.Tells);
        Assert.Equal(0, file.Bytes.Span[bytes.AsSpan().IndexOf("mvhd"u8) + 8]);
    }

    private static MediaFile Read(byte[] bytes)
    {
        var file = MediaFile.Of(bytes);
        Assert.NotNull(file);
        return file;
    }

    private static bool Holds(byte[] bytes, string word) => bytes.AsSpan().IndexOf(Encoding.Latin1.GetBytes(word)) >= 0;

    private static byte[] Part(byte[] bytes, string from, string? until)
    {
        var start = bytes.AsSpan().IndexOf(Encoding.Latin1.GetBytes(from));
        var rest = bytes[start..];
        var end = until is null ? -1 : rest.AsSpan().IndexOf(Encoding.Latin1.GetBytes(until));
        return end < 0 ? rest[..^8] : rest[..end];
    }

    /// <summary>What the independent reader says of a file, a line for each thing.</summary>
    public static string Noted(string name, byte[] bytes)
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("gradus-media-").FullName, name);
        try
        {
            File.WriteAllBytes(path, bytes);
            using var tool = Process.Start(
                new ProcessStartInfo(
                    "exiftool",
                    ["-a", "-u", "-n", "-G1", "-s", "-x", "System:all", "-x", "ExifTool:ExifToolVersion", path]
                )
                {
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                }
            ) ?? throw new InvalidOperationException("exiftool did not start");
            var error = tool.StandardError.ReadToEndAsync();
            var said = tool.StandardOutput.ReadToEnd() + error.Result;
            return string.Join('\n', said.Split('\n').Select(line => Spacing.Collapse(line)));
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path) ?? path, recursive: true);
        }
    }
}
