namespace Gradus.Tests.CommandLine;

/// <summary>Pictures in folders of the practice, from the text to the client's device.</summary>
[Trait("Slow", "yes")]
public sealed class PublishedPicturesTests : IDisposable
{
    /// <summary>Of one white pixel, PNG, and another picture; neither tells more than it shows.</summary>
    private static readonly byte[] Pixel = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAG7buVgAAAABJRU5ErkJggg=="
    );
    private static readonly byte[] Other = Reading.PictureTests.Jpeg;

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-pictures-").FullName;

    private string Practice => Path.Combine(folder, "practice");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("folder", "perrin")]
    [InlineData("zip", "perrin.zip")]
    public void Two_pictures_whose_paths_differ_in_a_hyphen_alone_are_handed_over_side_by_side(string form, string place)
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        Write("exercises/calf/lean.png", Pixel);
        Write("exercises/calf-lean.png", Other);
        var text = Path.Combine(Practice, "exercises", "calf-lean.md");
        File.AppendAllText(text, "\n![The heel is down](calf/lean.png) ![The knee is straight](calf-lean.png)\n");
        var sites = Path.Combine(folder, "sites");

        var published = Gradus.Run("publish", Practice, "--to", sites, "--as", form, "--today", "2026-12-07");
        var audited = Gradus.Run("audit", Practice, "--site", sites, "--today", "2026-12-07");

        Assert.Equal((0, 0), (published.Status, audited.Status));
        var site = Path.Combine(sites, place);
        if (form == "zip")
        {
            System.IO.Compression.ZipFile.ExtractToDirectory(site, Path.Combine(folder, "unzipped"));
            site = Directory.Exists(Path.Combine(folder, "unzipped", "perrin"))
                ? Path.Combine(folder, "unzipped", "perrin")
                : Path.Combine(folder, "unzipped");
        }

        Assert.Equal(Pixel, File.ReadAllBytes(Path.Combine(site, "pictures", "exercises", "calf", "lean.png")));
        Assert.Equal(Other, File.ReadAllBytes(Path.Combine(site, "pictures", "exercises", "calf-lean.png")));
        var page = File.ReadAllText(Path.Combine(site, "exercise-calf-lean.html"));
        Assert.Contains("<img src=\"pictures/exercises/calf/lean.png\" alt=\"The heel is down\"", page, StringComparison.Ordinal);
        Assert.Contains(
            "<img src=\"pictures/exercises/calf-lean.png\" alt=\"The knee is straight\"",
            page,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_picture_of_40_MiB_is_named_with_its_size_and_the_page_says_what_it_shows()
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        Write("exercises/lean.jpg", Reading.PictureTests.Jpeg);
        using (var heavy = File.OpenWrite(Path.Combine(Practice, "exercises", "lean.jpg")))
            heavy.SetLength(40 * 1024 * 1024);
        Show("The heel is down", "lean.jpg");

        var published = Publish("folder");

        Assert.Equal(0, published.Status);
        Assert.Contains("warning  picture-too-heavy", published.Output, StringComparison.Ordinal);
        Assert.Contains(
            "'exercises/lean.jpg' has 40 MiB, and the most is 10: pages say in words what it shows, and do not show it.",
            published.Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "<p>The heel is down</p>",
            File.ReadAllText(Path.Combine(folder, "sites", "perrin", "exercise-calf-lean.html")),
            StringComparison.Ordinal
        );
    }

    /// <summary>Shown on several pages, a picture of 9 MiB makes more than 20 of the one that holds them all; and that is still
    /// read back.</summary>
    [Fact]
    public void Pages_in_one_file_that_pictures_make_heavy_are_named_with_what_is_heaviest_and_read_back()
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        const int MiB = 1024 * 1024;
        byte[] head =
        [
            0x89,
            .. "PNG\r\n\u001a\n"u8,
            0,
            0,
            0,
            13,
            .. "IHDR"u8,
            0,
            0,
            0,
            9,
            0,
            0,
            0,
            7,
            8,
            2,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            0x90,
            0,
            0,
            .. "IDAT"u8,
        ];
        Write("exercises/lean.png", [.. head, .. new byte[9 * MiB], 0, 0, 0, 0, 0, 0, 0, 0, .. "IEND"u8, 0, 0, 0, 0]);
        Show("The heel is down", "lean.png");

        var published = Publish("file");

        Assert.Equal(0, published.Status);
        Assert.Contains("warning  site-too-heavy", published.Output, StringComparison.Ordinal);
        Assert.Contains("Heaviest: 'pictures/exercises/lean.png' 9.0 MiB.", published.Output, StringComparison.Ordinal);
        Assert.True(new FileInfo(Path.Combine(folder, "sites", "perrin.html")).Length > 20 * MiB);
        var audited = Gradus.Run("audit", Practice, "--site", Path.Combine(folder, "sites"), "--today", "2026-12-07");
        Assert.Equal((0, true), (audited.Status, audited.Output.Contains("site-too-heavy", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("folder", "perrin")]
    [InlineData("zip", "perrin.zip")]
    [InlineData("file", "perrin.html")]
    public void A_clip_is_handed_over_with_still_and_captions_and_without_what_they_tell_and_judged_again(
        string form,
        string place
    )
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        Write("exercises/lean.webm", Media.MediaFileTests.Bytes("sounding.webm"));
        Write("exercises/lean.jpg", Media.MediaFileTests.Bytes("upright.jpg"));
        Write("exercises/lean.en.vtt", "WEBVTT\n\nNOTE Mill Lane\n\n00:00.000 --> 00:01.000\nLet the heel sink.\n"u8.ToArray());
        Show("The heel sinks", "lean.webm");

        var published = Publish(form);
        var audited = Gradus.Run("audit", Practice, "--site", Path.Combine(folder, "sites"), "--today", "2026-12-07");

        Assert.Equal((0, 0, ""), (published.Status, audited.Status, audited.Error));
        var site = Path.Combine(folder, "sites", place);
        var files = Directory.Exists(site) ? Directory.GetFiles(site, "*", SearchOption.AllDirectories) : [site];
        var bytes = files.SelectMany(File.ReadAllBytes).ToArray();
        foreach (var told in (string[])["Ottoline", "Mill Lane", "GPS"])
            Assert.True(bytes.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(told)) < 0, $"'{told}' is handed over");
        Assert.True(bytes.AsSpan().IndexOf("What is said: Let the heel sink."u8) > 0);
        if (form == "file")
            Assert.True(
                bytes.AsSpan().IndexOf("<video controls preload=\"none\" playsinline src=\"data:video/webm;base64,"u8) > 0
            );
        if (form != "folder")
            return;
        var original = Path.Combine(site, "pictures", "exercises", "lean.jpg");
        File.WriteAllBytes(original, Media.MediaFileTests.Bytes("upright.jpg"));
        var planted = Gradus.Run("audit", Practice, "--site", Path.Combine(folder, "sites"), "--today", "2026-12-07");
        Assert.Equal(1, planted.Status);
        Assert.Contains("error  metadata-handed-over  [perrin]", planted.Output, StringComparison.Ordinal);
    }

    private void Show(string words, string address) =>
        File.AppendAllText(Path.Combine(Practice, "exercises", "calf-lean.md"), $"\n![{words}]({address})\n");

    private Answer Publish(string form) =>
        Gradus.Run("publish", Practice, "--to", Path.Combine(folder, "sites"), "--as", form, "--today", "2026-12-07");

    private void Write(string path, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(Practice, path)) ?? Practice);
        File.WriteAllBytes(Path.Combine(Practice, path), bytes);
    }
}
