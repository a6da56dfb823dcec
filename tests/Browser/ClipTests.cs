using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>The demonstration practice with a clip in its first exercise, in Chromium over file:// and offline.</summary>
public sealed class ClipTests(PublishedContent content) : IDisposable
{
    private const string Words = "Let the heel sink.";

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-clip-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("folder")]
    [InlineData("file")]
    public async Task A_clip_plays_with_its_captions_and_asks_for_nothing_else(string form)
    {
        var (path, allowed) = Published(form);
        await using var context = await content.ContextAsync(
            new()
            {
                Offline = true,
                ViewportSize = new() { Width = 360, Height = 800 },
            }
        );
        var page = await context.NewPageAsync();
        var troubles = new List<string>();
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        page.Console += (_, message) => troubles.Add($"console {message.Type}: {message.Text}");
        page.PageError += (_, error) => troubles.Add($"error: {error}");
        await page.GotoAsync("file://" + path);
        await page.WaitForTimeoutAsync(200);
        Assert.DoesNotContain(asked, url => url.EndsWith(".webm", StringComparison.Ordinal));

        var played = await page.EvaluateAsync<string>(
            """
            async () => {
                const clip = document.querySelector('video');
                clip.muted = true;
                await clip.play();
                for (let n = 0; n < 600 && !(clip.currentTime > 0.2 && clip.textTracks[0].cues?.length); n++) await new Promise(later => setTimeout(later, 50));
                return [clip.currentTime > 0.2, clip.videoWidth, clip.videoHeight, clip.textTracks[0].mode, clip.textTracks[0].cues?.[0]?.text].join('|');
            }
            """
        );
        Assert.Equal($"true|64|48|showing|{Words}", played);
        Assert.Empty(troubles);
        Assert.DoesNotContain(asked, url => !allowed.Any(part => url.StartsWith(part, StringComparison.Ordinal)));

        // In tests/run the part that the clip stands in: what else is on these pages is judged without a clip.
        Assert.Empty(
            LongProof.Whole ? await Barriers.In(page) : await Barriers.In(page.Locator("video").First.Locator("xpath=.."))
        );
        Assert.Equal(
            0,
            await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        );
    }

    [Theory]
    [InlineData("folder")]
    [InlineData("file")]
    public async Task On_paper_stands_the_still_with_what_is_said_and_no_player(string form)
    {
        var (path, _) = Published(form);
        await using var context = await content.ContextAsync(new() { Offline = true, JavaScriptEnabled = form == "folder" });
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + path);
        Assert.True(await page.Locator("video").First.IsVisibleAsync());
        Assert.False(await page.Locator("img.still").First.IsVisibleAsync());
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        Assert.False(await page.Locator("video").First.IsVisibleAsync());
        Assert.True(await page.Locator("img.still").First.IsVisibleAsync());
        Assert.Equal(
            new[] { 20, 40 },
            await page.Locator("img.still").First.EvaluateAsync<int[]>("picture => [picture.naturalWidth, picture.naturalHeight]")
        );
        Assert.Contains($"What is said: {Words}", await page.Locator(".said").First.InnerTextAsync(), StringComparison.Ordinal);
    }

    private static byte[] Media(string name) => File.ReadAllBytes(Repository.Path("tests", "Media", "files", name));

    /// <summary>A page with a clip, and how every address begins that it may ask for.</summary>
    private (string Path, string[] Allowed) Published(string form)
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
        files[text] = [.. files[text], .. "\n![The heel sinks](clips/sink.webm)\n"u8];
        files["exercises/clips/sink.webm"] = Media("sounding.webm");
        files["exercises/clips/sink.jpg"] = Media("upright.jpg");
        files["exercises/clips/sink.en.vtt"] = System.Text.Encoding.UTF8.GetBytes(
            $"WEBVTT\n\n00:00.000 --> 00:01.000\n{Words}\n"
        );
        var (practice, same) = Read(files);
        var (plan, findings) = (Planned.For(practice, same), new Findings());
        var site =
            form == "file"
                ? SiteRenderer.Render(plan, ThemeFolder.Plain(), findings, Rendition.OneFile)
                : SiteRenderer.Render(plan, ThemeFolder.Plain(), findings);
        Assert.NotNull(site);
        Assert.Empty(findings);
        if (form == "file")
            File.WriteAllText(Path.Combine(folder, PagePath.AllPages), site.Pages[0].Html);
        var place = form == "file" ? folder : Publication.Write(site, folder).Place;
        var root = new Uri(Path.GetFullPath(place) + "/").AbsoluteUri;
        return form == "file"
            ? (Path.Combine(place, PagePath.AllPages), [root + PagePath.AllPages, "data:"])
            : (Path.Combine(place, exercise.Path), [root, "data:"]);
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
