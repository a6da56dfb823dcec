using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Media;
using Gradus.Planning;
using Gradus.Tests.Media;
using SkiaSharp;

namespace Gradus.Tests.CommandLine;

/// <summary>Pictures in folders of the practice, from the text to the client's device.</summary>
[Trait("Slow", "yes")]
public sealed class PublishedPicturesTests : IDisposable
{
    /// <summary>Of one white pixel, PNG, and another picture; neither tells more than it shows.</summary>
    private static readonly byte[] Pixel = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAsTj2FAAAAABJRU5ErkJggg=="
    );
    private static readonly byte[] Other = PictureTests.Jpeg;

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
        var site = Unpacked(form, Path.Combine(sites, place));
        var page = File.ReadAllText(Path.Combine(site, "exercise-calf-lean.html"));
        var list = File.ReadAllLines(Path.Combine(site, "files.txt"));
        foreach (var (words, size) in new[] { ("The heel is down", 1), ("The knee is straight", 37) })
        {
            var shown = Regex.Match(
                page,
                $"<picture><source type=\"image/webp\" srcset=\"(pictures/[0-9a-f]+-{size}\\.webp)\">"
                    + $"<img src=\"(pictures/[0-9a-f]+-{size}\\.jpg)\" alt=\"{words}\" width=\"{size}\" "
            );
            Assert.True(shown.Success, words);
            foreach (var file in new[] { shown.Groups[1].Value, shown.Groups[2].Value })
            {
                Assert.Equal(size, MediaFile.Of(File.ReadAllBytes(Path.Combine(site, file)))?.Width);
                Assert.Contains(file, list);
            }
        }

        Assert.Equal(4, Directory.GetFiles(Path.Combine(site, "pictures")).Length);
    }

    /// <summary>As a camera names and makes it: 24 million pixels, on its side, and heavier than a page may be.</summary>
    [Theory]
    [InlineData("folder", "perrin")]
    [InlineData("file", "perrin.html")]
    public void A_photograph_of_a_camera_is_handed_over_small_and_upright(string form, string place)
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        var photograph = MadePicture.Turned(MadePicture.Quarters(6000, 4000, "jpg"), "jpg", 6000, 4000, 6);
        Write("exercises/Knöchel (2).JPG", [.. photograph, .. new byte[12 * 1024 * 1024]]);
        Show("The heel is down", "Knöchel (2).JPG");

        var published = Publish(form);
        var audited = Gradus.Run("audit", Practice, "--site", Path.Combine(folder, "sites"), "--today", "2026-12-07");

        Assert.Equal((0, 0), (published.Status, audited.Status));
        Assert.Contains("No problems found.", published.Output, StringComparison.Ordinal);
        var site = Path.Combine(folder, "sites", place);
        if (form == "folder")
        {
            var files = Directory.GetFiles(Path.Combine(site, "pictures")).Order(StringComparer.Ordinal).ToArray();
            Assert.Equal(
                [(480, 720), (480, 720), (960, 1440)],
                files.Select(f => MediaFile.Of(File.ReadAllBytes(f))).Select(f => (f?.Width ?? 0, f?.Height ?? 0))
            );
            Assert.All(files, f => Assert.Equal("blue", MadePicture.ColourAt(File.ReadAllBytes(f), 0.2, 0.2)));
            Assert.InRange(files.Sum(f => new FileInfo(f).Length), 1, 100_000);
            return;
        }

        var page = File.ReadAllText(site);
        var shown = Regex.Matches(
            page,
            "<img src=\"data:image/webp;base64,([^\"]+)\" alt=\"The heel is down\" width=480 height=720"
        );
        Assert.NotEmpty(shown);
        Assert.DoesNotContain("<picture", page, StringComparison.Ordinal);
        Assert.DoesNotContain("data:image/jpeg", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_in_a_published_site_that_shows_something_else_is_found_and_one_that_looks_the_same_is_not()
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        Write("exercises/lean.png", MadePicture.Quarters(300, 200, "png"));
        Show("The heel is down", "lean.png");
        Publish("folder");
        var site = Path.Combine(folder, "sites", "perrin");
        var file = Directory.GetFiles(Path.Combine(site, "pictures"), "*.webp").Single();
        var seen = MadePicture.Read(File.ReadAllBytes(file)).Pixels;

        // The same pixels written by another hand; then with one of them changed.
        File.WriteAllBytes(file, Again(seen));
        Relist(site);
        Assert.Equal(0, Audit().Status);
        seen.AsSpan(4 * 300 * 60, 4 * 300 * 60).Clear();
        File.WriteAllBytes(file, Again(seen));
        Relist(site);
        var other = Audit();
        Assert.Equal(1, other.Status);
        Assert.Contains("error  not-as-published  [perrin]", other.Output, StringComparison.Ordinal);

        static byte[] Again(byte[] pixels)
        {
            for (var n = 3; n < pixels.Length; n += 4)
                pixels[n] = 255;
            var info = new SKImageInfo(300, 200, SKColorType.Rgba8888, SKAlphaType.Opaque, null);
            using var image = SKImage.FromPixelCopy(info, pixels);
            using var map = image.PeekPixels();
            using var data = map.Encode(new SKWebpEncoderOptions(SKWebpEncoderCompression.Lossless, 50));
            return data?.ToArray() ?? [];
        }
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
        Write("exercises/lean.webm", MediaFileTests.Bytes("sounding.webm"));
        Write("exercises/lean.jpg", MediaFileTests.Bytes("upright.jpg"));
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
        var original = Directory.GetFiles(Path.Combine(site, "pictures"), "*.jpg").Single();
        File.WriteAllBytes(original, MediaFileTests.Bytes("upright.jpg"));
        var planted = Gradus.Run("audit", Practice, "--site", Path.Combine(folder, "sites"), "--today", "2026-12-07");
        Assert.Equal(1, planted.Status);
        Assert.Contains("error  metadata-handed-over  [perrin]", planted.Output, StringComparison.Ordinal);
    }

    private Answer Audit() => Gradus.Run("audit", Practice, "--site", Path.Combine(folder, "sites"), "--today", "2026-12-07");

    /// <summary>Writes the list of the files anew, as another machine would have.</summary>
    private static void Relist(string site)
    {
        var files = Directory
            .GetFiles(site, "*", SearchOption.AllDirectories)
            .ToDictionary(f => Path.GetRelativePath(site, f).Replace('\\', '/'), File.ReadAllBytes);
        File.WriteAllText(Path.Combine(site, "files.txt"), FileList.Of([], files.Select(f => new Asset(f.Key, f.Value))));
    }

    private string Unpacked(string form, string site)
    {
        if (form != "zip")
            return site;
        var unzipped = Path.Combine(folder, "unzipped");
        System.IO.Compression.ZipFile.ExtractToDirectory(site, unzipped);
        return Directory.Exists(Path.Combine(unzipped, "perrin")) ? Path.Combine(unzipped, "perrin") : unzipped;
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
