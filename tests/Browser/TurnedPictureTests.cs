using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;
using Gradus.Tests.Media;

namespace Gradus.Tests.Browser;

/// <summary>A photograph held each of the eight ways, in the demonstration practice, as Chromium shows it over file://.</summary>
public sealed class TurnedPictureTests(PublishedContent content) : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-turned-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Which quarters are seen above: those that the camera stored are red and green, then blue and yellow (Exif 3.0,
    /// tag 0x0112).</summary>
    private static readonly string[] Above =
    [
        "red green",
        "green red",
        "yellow blue",
        "blue yellow",
        "red blue",
        "blue red",
        "yellow green",
        "green yellow",
    ];

    [Theory]
    [InlineData("jpg", "folder")]
    [InlineData("png", "folder", Skip = LongProof.Only, SkipUnless = nameof(LongProof.Whole), SkipType = typeof(LongProof))]
    [InlineData("webp", "folder", Skip = LongProof.Only, SkipUnless = nameof(LongProof.Whole), SkipType = typeof(LongProof))]
    [InlineData("jpg", "file")]
    public async Task A_photograph_is_shown_upright_and_at_its_size(string format, string form)
    {
        var path = Published(format, form);
        await using var context = await content.ContextAsync(
            new()
            {
                Offline = true,
                DeviceScaleFactor = 3,
                ViewportSize = new() { Width = 390, Height = 844 },
            }
        );
        var page = await context.NewPageAsync();
        var troubles = new List<string>();
        page.Console += (_, message) => troubles.Add($"console {message.Type}: {message.Text}");
        page.PageError += (_, error) => troubles.Add($"error: {error}");
        await page.GotoAsync("file://" + path);
        for (var orientation = 1; orientation <= 8; orientation++)
        {
            var picture = page.Locator($"img[alt='Held in way {orientation}']").Last;
            await picture.EvaluateAsync("picture => { picture.loading = 'eager'; return picture.decode(); }");
            var seen = await picture.EvaluateAsync<string>(
                """
                picture => {
                    const box = picture.getBoundingClientRect();
                    return [picture.currentSrc.replace(/^data:|;base64.*$/g, '').split(/[.-]/).slice(-2).join(' '), picture.getAttribute('width'), picture.getAttribute('height'),
                        (box.width / box.height).toFixed(1), picture.naturalWidth > 0].join('|');
                }
                """
            );
            var (width, height) = orientation >= 5 ? (960, 1440) : (960, 640);
            if (form == "file")
                (width, height) = (width / 2, height / 2);
            Assert.Equal(
                $"{(form == "file" ? "image/webp" : "960 webp")}|{width}|{height}|{(orientation >= 5 ? "0.7" : "1.5")}|True",
                seen.Replace("true", "True", StringComparison.Ordinal)
            );
            var shot = await picture.ScreenshotAsync();
            Assert.Equal(
                $"{orientation}: {Above[orientation - 1]}",
                $"{orientation}: {MadePicture.ColourAt(shot, 0.25, 0.25)} {MadePicture.ColourAt(shot, 0.75, 0.25)}"
            );
        }

        Assert.Empty(troubles);
    }

    private string Published(string format, string form)
    {
        var files = Directory
            .EnumerateFiles(Repository.Path("content"), "*", SearchOption.AllDirectories)
            .ToDictionary(
                f => Path.GetRelativePath(Repository.Path("content"), f).Replace('\\', '/'),
                File.ReadAllBytes,
                StringComparer.Ordinal
            );
        var (before, client) = Read(files);
        var exercise = Planned.For(before, client).Exercises[0];
        var text = $"exercises/{exercise.Id}.md";
        for (var orientation = 1; orientation <= 8; orientation++)
        {
            files[text] =
            [
                .. files[text],
                .. System.Text.Encoding.UTF8.GetBytes($"\n![Held in way {orientation}](Way {orientation}.{format})\n"),
            ];
            files[$"exercises/Way {orientation}.{format}"] = MadePicture.Turned(
                MadePicture.Quarters(orientation >= 5 ? 1800 : 1500, orientation >= 5 ? 1200 : 1000, format),
                format,
                orientation >= 5 ? 1800 : 1500,
                orientation >= 5 ? 1200 : 1000,
                orientation
            );
        }

        var (practice, same) = Read(files);
        var (plan, findings) = (Planned.For(practice, same), new Findings());
        var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), findings, form == "file" ? Rendition.OneFile : Rendition.Pages);
        Assert.NotNull(site);
        Assert.Empty(findings);
        if (form == "folder")
            return Path.Combine(Publication.Write(site, folder).Place, exercise.Path);
        var path = Path.Combine(folder, PagePath.AllPages);
        File.WriteAllText(path, site.Pages[0].Html);
        return path;
    }

    private static (Practice Practice, Client Client) Read(Dictionary<string, byte[]> files)
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(SourceFolder.Of(files), findings).Practice;
        Assert.NotNull(practice);
        Assert.Empty(findings);
        return (practice, practice.Clients[0]);
    }
}
