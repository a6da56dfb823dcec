using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>What page one answers in the first screen of a phone, without scrolling: on the first day, and in the second week of
/// somebody who trained.</summary>
public sealed partial class FirstScreenTests(PublishedContent content, ITestOutputHelper output)
{
    private const int Width = 390,
        Height = 844;

    /// <summary>Each part, and the element that ends it.</summary>
    private static readonly Dictionary<string, string> Parts = new(StringComparer.Ordinal)
    {
        ["which side is which"] = ".sides p:last-child",
        ["what today"] = ".now [data-due] h3",
        ["how long"] = ".now [data-due] .lengths",
        ["with what"] = ".now [data-due] .line .run",
        ["start"] = ".now a.start",
        ["the sheet"] = ".now .to-print a",
        ["which sign and which call"] = ".watch .emergency",
        ["numbers to press"] = ".calls",
        ["all signs"] = ".more a[href^='before']",
        ["letter"] = ".more a[href='#letter']",
    };

    private static readonly Dictionary<string, string> OnFirstDay = new(Parts, StringComparer.Ordinal)
    {
        ["before the first session"] = "[data-first] a",
    };

    private static readonly Dictionary<string, string> Later = new(Parts, StringComparer.Ordinal)
    {
        ["what is new"] = ".news",
        ["days done"] = "[data-fill='days']",
        ["last week"] = "[data-last-week]",
        ["list of what was done"] = "[data-list-done] summary",
    };

    public static TheoryData<string, bool> Visits() =>
        new(new[] { "hedley", "maud", "nuala", "piers", "rufus", "tamsin" }.SelectMany(c => new[] { (c, false), (c, true) }));

    [GeneratedRegex("data-course=\"([^\"]+)\" data-start=\"([0-9-]{10})\"[^>]* data-needs=\"([^;\"]*)")]
    private static partial Regex Course();

    /// <summary>"2x3": a session and how often.</summary>
    [GeneratedRegex("([0-9]+)x([0-9]+)[^ ]*")]
    private static partial Regex Need();

    [Theory, MemberData(nameof(Visits))]
    public async Task Page_one_answers_in_the_first_screen(string client, bool cameBack)
    {
        var page = await Opened(client, cameBack);
        var ends = await Ends(page, cameBack);
        output.WriteLine(string.Join(", ", ends.Select(e => $"{e.Key} {e.Value:0}")));
        Assert.Equal([], ends.Where(e => e.Value is 0 or > Height).Select(e => $"{e.Key} ends at {e.Value:0}"));

        // A page that begins 400 px lower is seen.
        await page.EvaluateAsync("document.querySelector('.glance').style.marginBlockStart = '400px'");
        Assert.Contains(await Ends(page, cameBack), e => e.Value > Height);
    }

    [Fact]
    public async Task What_to_read_before_the_first_session_goes_with_it()
    {
        Assert.True(await (await Opened("rufus", false)).Locator("[data-first]").IsVisibleAsync());
        Assert.False(await (await Opened("rufus", true)).Locator("[data-first]").IsVisibleAsync());
    }

    [Fact]
    public async Task Who_came_back_reads_how_much_of_last_week_was_done() =>
        Assert.Equal("Done last week: 3/3", await (await Opened("rufus", true)).Locator("[data-last-week]").InnerTextAsync());

    private async Task<IPage> Opened(string client, bool cameBack)
    {
        var path = content.PagesOf(client).Single(p => Path.GetFileName(p) == "index.html");
        var course = Course().Match(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken));
        var start = DateOnly.ParseExact(course.Groups[2].Value, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        var context = await content.Browser.NewContextAsync(
            new()
            {
                Offline = true,
                ViewportSize = new() { Width = Width, Height = Height },
            }
        );
        var page = await context.NewPageAsync();
        var today = start.AddDays(cameBack ? 9 : 0);
        await context.Clock.SetFixedTimeAsync(today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + "T10:00:00");
        if (cameBack)
        {
            var rows = Need()
                .Matches(course.Groups[3].Value)
                .SelectMany(n => Enumerable.Repeat(n.Groups[1].Value, int.Parse(n.Groups[2].Value, CultureInfo.InvariantCulture)))
                .Select((session, i) => (Day: Math.Min(i, 6), Week: 1, Session: session))
                .Append((Day: 7, Week: 2, Session: "1"))
                .Select(r => new
                {
                    day = start.AddDays(r.Day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                    week = r.Week,
                    session = int.Parse(r.Session, CultureInfo.InvariantCulture),
                });
            var log = JsonSerializer.Serialize(JsonSerializer.Serialize(rows));
            await page.AddInitScriptAsync($"localStorage.setItem('gradus.{course.Groups[1].Value}.log', {log})");
        }

        await page.GotoAsync("file://" + path);
        return page;
    }

    /// <summary>Where each part ends, in pixels from the top; 0 where it is not shown.</summary>
    private static async Task<Dictionary<string, double>> Ends(IPage page, bool cameBack)
    {
        var ends = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (part, selector) in cameBack ? Later : OnFirstDay)
            ends[part] = await page.EvaluateAsync<double>(
                """
                selector => Math.max(0, ...Array.from(document.querySelectorAll(selector))
                  .filter(e => e.getClientRects().length > 0).slice(0, 1).map(e => e.getBoundingClientRect().bottom + scrollY))
                """,
                selector
            );
        return ends;
    }
}
