using System.Text;
using System.Text.Json;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;
using Gradus.ThemeCheck;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>A whole site, and the sheet of questions, in a made-up language that is read from right to left, around the texts of
/// a coach who writes English.</summary>
public sealed class RightToLeftTests(PublishedContent content, ITestOutputHelper output) : IDisposable
{
    private const string Client = "rufus";

    /// <summary>How far the first line of each heading that is shown, in the site's own words, ends from the right edge of its
    /// block.</summary>
    private const string Look = """
        () => {
          const gaps = [...document.querySelectorAll("main h2, .foot h2")].filter(h => h.checkVisibility() && /^[\u0590-\u05ff]/.test(h.textContent)).map(h => {
            const words = document.createRange();
            words.selectNodeContents(h);
            return h.getBoundingClientRect().right - words.getClientRects()[0].right;
          });
          return JSON.stringify({
            direction: getComputedStyle(document.documentElement).direction,
            headings: gaps.length,
            furthest: Math.max(0, ...gaps.map(Math.abs)),
            overflow: document.documentElement.scrollWidth - document.documentElement.clientWidth,
          });
        }
        """;

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-rtl-").FullName;

    private sealed record Seen(string Direction, int Headings, double Furthest, int Overflow);

    /// <summary>In px; the narrow one first, where less fits.</summary>
    public static TheoryData<int> Widths() => [.. LongProof.First(1, [320, 1280])];

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory, MemberData(nameof(Widths))]
    public async Task Every_page_begins_at_the_right_and_none_scrolls_sideways(int width)
    {
        var findings = new Findings();
        var practice = ReadPractice("language: he\n", "clients/rufus/client.yaml");
        var client = practice.Find(new ClientId(Client)) ?? throw new InvalidOperationException($"Nobody is called {Client}.");
        var site = SiteRenderer.Render(Planned.For(practice, client), ThemeFolder.Plain(), findings);
        Assert.NotNull(site);
        Publication.Write(site, folder);
        var pages = Directory.GetFiles(Path.Combine(folder, Client), "*.html").Order(StringComparer.Ordinal).ToArray();
        await using var context = await Context(width);
        var opened = await context.NewPageAsync();
        foreach (var page in pages)
            MustReadFromTheRight(page, await LookAt(page, opened));
        output.WriteLine($"{pages.Length} pages, {width} px wide");
        Assert.True(pages.Length > 15);
    }

    [Theory, MemberData(nameof(Widths))]
    public async Task So_does_the_sheet_of_questions(int width)
    {
        var practice = ReadPractice("language: he\n", "practice.md");
        var page = Path.Combine(folder, "sheet.html");
        await File.WriteAllTextAsync(
            page,
            IntakeSheetRenderer.Render(AskedSheet.Of(practice), ThemeFolder.Plain(), []),
            TestContext.Current.CancellationToken
        );
        MustReadFromTheRight(page, await LookAt(page, width));
    }

    [Fact]
    public async Task A_page_that_does_not_say_its_direction_is_noticed()
    {
        var practice = ReadPractice("language: he\n", "practice.md");
        var page = Path.Combine(folder, "sheet.html");
        var html = IntakeSheetRenderer.Render(AskedSheet.Of(practice), ThemeFolder.Plain(), []) ?? "";
        Assert.Contains(" dir=\"rtl\"", html, StringComparison.Ordinal);
        await File.WriteAllTextAsync(
            page,
            html.Replace(" dir=\"rtl\"", "", StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );
        var seen = await LookAt(page, 1280);
        Assert.Equal("ltr", seen.Direction);
        Assert.True(seen.Furthest > 100);
    }

    private static void MustReadFromTheRight(string page, Seen seen)
    {
        Assert.True(seen is { Direction: "rtl", Overflow: <= 0, Furthest: < 1 }, $"{page}: {seen}");
        Assert.True(seen.Headings > 0, page);
    }

    private Task<IBrowserContext> Context(int width) =>
        content.ContextAsync(
            new()
            {
                Offline = true,
                ViewportSize = new() { Width = width, Height = 800 },
            }
        );

    private async Task<Seen> LookAt(string path, int width)
    {
        await using var context = await Context(width);
        return await LookAt(path, await context.NewPageAsync());
    }

    private static async Task<Seen> LookAt(string path, IPage page)
    {
        await page.GotoAsync("file://" + path);
        return JsonSerializer.Deserialize<Seen>(await page.EvaluateAsync<string>(Look), JsonSerializerOptions.Web)
            ?? throw new InvalidOperationException("Nothing was seen.");
    }

    /// <summary>The demonstration practice, in one of whose files the language is another.</summary>
    private static Practice ReadPractice(string language, string file)
    {
        var sources = SourceFolder.Open(Repository.Path("content"));
        var files = sources
            .Paths.Select(path =>
                KeyValuePair.Create(
                    path,
                    path == file
                        ? Encoding.UTF8.GetBytes(
                            Encoding
                                .UTF8.GetString(sources.Read(path))
                                .Replace("language: en\n", language, StringComparison.Ordinal)
                        )
                        : sources.Read(path)
                )
            )
            .Append(KeyValuePair.Create("words/he.yaml", Encoding.UTF8.GetBytes(MadeUpWords.In("he"))));
        var findings = new Findings();
        var practice = PracticeReader.Read(SourceFolder.Of(files), findings).Practice;
        Assert.Empty(findings);
        return practice ?? throw new InvalidOperationException("The practice cannot be read.");
    }
}
