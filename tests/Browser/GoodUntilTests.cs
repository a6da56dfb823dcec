using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>The pages of the demonstration practice's Rufus are good until Sunday 17 January 2027, the end of his
/// programme.</summary>
public sealed class GoodUntilTests(PublishedContent content)
{
    private const string Notice =
        "These pages were good until Sunday 17 January 2027. Do not train with them now: ask your coach first.";

    /// <summary>The last day ends at the client's own midnight. In <c>tests/run</c> every kind of page is looked at on the first
    /// and the last of these days, and a session on the days between, where only the clock is another.</summary>
    [Theory]
    [InlineData("2026-12-14T10:00:00Z", "Europe/London", false)]
    [InlineData("2027-01-17T23:59:59Z", "Europe/London", false)]
    [InlineData("2027-01-18T00:00:01Z", "Europe/London", true)]
    [InlineData("2027-01-17T23:59:59Z", "Europe/Berlin", true)]
    [InlineData("2027-01-18T04:59:00Z", "America/New_York", false)]
    [InlineData("2031-06-01T10:00:00Z", "Europe/London", true)]
    public async Task After_the_last_day_every_page_says_before_anything_else_to_ask_the_coach(string now, string zone, bool says)
    {
        await using var context = await content.ContextAsync(new() { Offline = true, TimezoneId = zone }, now);
        var page = await context.NewPageAsync();
        var pages = content.PagesOf("rufus").ToArray();
        var isFarFromTheEnd =
            now.StartsWith("2026", StringComparison.Ordinal) || now.StartsWith("2031", StringComparison.Ordinal);
        foreach (
            var path in LongProof.Whole ? pages
            : isFarFromTheEnd ? PublishedContent.OfEveryKind(pages)
            : pages.Where(p => Path.GetFileName(p) == "session-1.html")
        )
        {
            await page.GotoAsync("file://" + path);
            Assert.Equal(says, await page.GetByRole(AriaRole.Alert).IsVisibleAsync());
            if (says)
                Assert.StartsWith(Notice, await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
            Assert.Contains(
                "Use these pages until Sunday 17 January 2027.",
                await page.Locator("footer").InnerTextAsync(),
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public async Task Without_scripts_the_day_stands_on_every_page_all_the_same()
    {
        await using var context = await content.ContextAsync(
            new() { Offline = true, JavaScriptEnabled = false },
            "2031-06-01T10:00:00Z"
        );
        var page = await context.NewPageAsync();
        var pages = content.PagesOf("rufus").ToArray();
        foreach (var path in LongProof.Whole ? pages : PublishedContent.OfEveryKind(pages))
        {
            await page.GotoAsync("file://" + path);
            Assert.Contains(
                "After that day, ask your coach before you train.",
                await page.Locator("footer").InnerTextAsync(),
                StringComparison.Ordinal
            );
        }
    }
}
