using Gradus.Tests.CommandLine;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>What a coach sees of <c>gradus watch</c> in a browser.</summary>
public sealed class WatchTests(PublishedContent content) : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("gradus-watch-").FullName;

    private string Practice => Path.Combine(root, "practice");

    private string Programme => Path.Combine(Practice, "clients", "rufus", "programme.md");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public async Task A_saved_file_is_seen_where_the_page_was_and_what_is_wrong_beside_the_last_good_one()
    {
        await using var watched = await Watched();
        var page = watched.Page;
        await Assertions.Expect(page.Locator("#counted")).ToContainTextAsync("note");
        Assert.Equal("Rufus Elphick", await page.TitleAsync());
        await watched.InSite<int>("(site.scrollTo(0, 700), 0)");
        var scrolled = await watched.InSite<double>("site.scrollY");
        Assert.True(scrolled > 300);
        var text = await File.ReadAllTextAsync(Programme, TestContext.Current.CancellationToken);
        var took = await watched.Save(Programme, text.Replace("ten minutes", "nine minutes", Exact), "nine minutes");
        Assert.InRange(took, 0, 5_000);
        Assert.Equal(scrolled, await watched.InSite<double>("site.scrollY"));

        await File.WriteAllTextAsync(
            Programme,
            text.Replace("2 x hold 35 s", "2 x hold 350 s", Exact),
            TestContext.Current.CancellationToken
        );
        await Assertions.Expect(page.Locator("#found .state")).ToContainTextAsync("This is the last good page");
        await Assertions.Expect(page.Locator("#counted")).ToContainTextAsync("1 error");
        await Assertions.Expect(page).ToHaveTitleAsync("(1) Rufus Elphick");
        await Assertions.Expect(page.Locator("#found .finding.error")).ToContainTextAsync("clients/rufus/programme.md:19:14");
        await Assertions.Expect(watched.Site.Locator("body")).ToContainTextAsync("nine minutes");

        await watched.Save(Programme, text.Replace("ten minutes", "six minutes", Exact), "six minutes");
        await Assertions.Expect(page).ToHaveTitleAsync("Rufus Elphick");
        Assert.Equal(scrolled, await watched.InSite<double>("site.scrollY"));
        Expected(watched);
    }

    [Fact]
    public async Task The_page_looked_at_stays_the_one_looked_at()
    {
        await using var watched = await Watched();
        await watched.Site.Locator("a[href='session-1.html']").First.ClickAsync();
        await Assertions.Expect(watched.Page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("#session-1\\.html$"));
        var text = await File.ReadAllTextAsync(Programme, TestContext.Current.CancellationToken);
        await watched.Save(Programme, text.Replace("Ankles and hips", "Hips and ankles", Exact), "Hips and ankles");
        Assert.EndsWith("/sites/rufus/session-1.html", await watched.InSite<string>("site.location.pathname"), Exact);
        await watched.Page.ReloadAsync();
        await Assertions.Expect(watched.Site.Locator("h1")).ToContainTextAsync("Hips and ankles");
        await watched.Page.Locator("a", new() { HasText = "All clients" }).ClickAsync();
        await Assertions.Expect(watched.Page.Locator("ul.clients a")).ToHaveCountAsync(2);
        await watched.Page.Locator("ul.clients a", new() { HasText = "Maud" }).ClickAsync();
        await Assertions.Expect(watched.Site.Locator("body")).ToContainTextAsync("Maud");
    }

    [Fact]
    public async Task The_end_of_the_watch_is_told()
    {
        await using var watched = await Watched();
        await Assertions.Expect(watched.Page.Locator("#counted")).ToContainTextAsync("note");
        Assert.Equal(0, watched.Watch.End());
        await Assertions.Expect(watched.Page.Locator("#alive")).ToContainTextAsync("it has ended");
        await Assertions.Expect(watched.Site.Locator("body")).ToContainTextAsync("ten minutes");
    }

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 390)]
    public async Task Nothing_on_it_is_in_anybodys_way(ColorScheme scheme, int width)
    {
        await using var watched = await Watched(width, scheme);
        var page = watched.Page;
        await Assertions.Expect(page.Locator("#counted")).ToContainTextAsync("note");
        Assert.Empty(await Barriers.In(page));
        Assert.Equal(
            0,
            await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        );
        var stops = new List<string>();
        for (var times = 0; times < 5; times++)
        {
            await page.Keyboard.PressAsync("Tab");
            stops.Add(await page.EvaluateAsync<string>("document.activeElement.localName + document.activeElement.id"));
        }

        Assert.Equal(["a", "aalone", "summary"], stops.Take(3));
        Assert.Contains("iframe", stops);
        await page.GotoAsync(watched.Watch.Address.ToString());
        await Assertions.Expect(page.Locator("ul.clients a")).ToHaveCountAsync(2);
        Assert.Empty(await Barriers.In(page));
    }

    private const StringComparison Exact = StringComparison.Ordinal;

    private Task<WatchedInBrowser> Watched(int width = 1280, ColorScheme scheme = ColorScheme.Light)
    {
        Folders.CopyDemonstration(Practice, "maud", "rufus");
        return WatchedInBrowser.Of(content.Browser, Practice, "rufus", width, scheme);
    }

    /// <summary>A page asks once whether it may be kept for later, which is refused.</summary>
    private static void Expected(WatchedInBrowser watched) =>
        Assert.DoesNotContain(watched.Troubles, t => !t.Contains("404", Exact) || !t.Contains("script", Exact));
}
