using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>What <c>audit --format html</c> writes, opened from disk with no network.</summary>
public sealed class FindingPageTests(PublishedContent content) : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-findings-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData(
        ColorScheme.Light,
        320,
        Skip = LongProof.Only,
        SkipUnless = nameof(LongProof.Whole),
        SkipType = typeof(LongProof)
    )]
    [InlineData(ColorScheme.Dark, 320)]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(
        ColorScheme.Dark,
        1280,
        Skip = LongProof.Only,
        SkipUnless = nameof(LongProof.Whole),
        SkipType = typeof(LongProof)
    )]
    public async Task It_opens_offline_without_request_trouble_or_barrier(ColorScheme scheme, int width)
    {
        var path = Written();
        await using var context = await content.Browser.NewContextAsync(
            new()
            {
                Offline = true,
                ColorScheme = scheme,
                ViewportSize = new() { Width = width, Height = 800 },
            }
        );
        var page = await context.NewPageAsync();
        var troubles = new List<string>();
        page.Request += (_, request) => troubles.Add($"request: {request.Url}");
        page.Console += (_, message) => troubles.Add($"{message.Type}: {message.Text}");
        await page.GotoAsync("file://" + path);
        Assert.Equal(["request: file://" + path], troubles);
        Assert.Empty(await Barriers.In(page));
        Assert.Equal(
            0,
            await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        );
        var ground = await page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor");
        Assert.Equal(scheme == ColorScheme.Dark ? "rgb(20, 24, 30)" : "rgb(252, 250, 245)", ground);
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        Assert.Equal("rgb(255, 255, 255)", await page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
        Assert.Empty(await Barriers.In(page));
    }

    [Fact]
    public async Task It_is_valid() => Assert.Equal("", await NuCheckerTests.Check([Written()]));

    /// <summary>A finding of every rule there is, with the page of each.</summary>
    private string Written()
    {
        var practice = SourceFolder.Of([new("clients/tess/client.yaml", "agreed: { training: 2026-11-20 }\n"u8.ToArray())]);
        var findings = Explanations
            .All()
            .Select(p => new Finding(
                p.Rule,
                p.Level,
                p.Level == Level.Note ? null : new("tess"),
                new(p.Level == Level.Note ? "practice.md" : "clients/tess/client.yaml", 1, 11),
                "A sentence about what is wrong.",
                "What to do about it.",
                8
            ))
            .ToSeries();
        var path = Path.Combine(folder, "findings.html");
        File.WriteAllText(
            path,
            FindingHtml.Write(findings, new(practice, new PageLines(), null), Explanations.All(), _ => "Tess Harrowby", [])
        );
        return path;
    }
}
