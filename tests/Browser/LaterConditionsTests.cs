namespace Gradus.Tests.Browser;

/// <summary>On the screen the conditions of an exercise come with it, as its signs do.</summary>
public sealed class LaterConditionsTests(PublishedContent content)
{
    /// <summary>Its exercise F begins in week 5.</summary>
    [Theory]
    [InlineData("screen", 1, false)]
    [InlineData("screen", 6, true)]
    [InlineData("print", 1, true)]
    public async Task A_condition_of_what_begins_later_comes_with_it_and_stands_on_paper(string medium, int week, bool isShown)
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-07T10:00:00");
        var page = await context.NewPageAsync();
        await page.GotoAsync(
            "file://" + content.PagesOf("tamsin").Single(p => p.EndsWith("session-1.html", StringComparison.Ordinal))
        );
        await page.EmulateMediaAsync(
            new() { Media = medium == "print" ? Microsoft.Playwright.Media.Print : Microsoft.Playwright.Media.Screen }
        );
        await page.EvaluateAsync($"gradus.fillWeek({week}, false)");
        var (ofLater, all) = (0, 0);
        foreach (var condition in await page.Locator(".not-with li").AllAsync())
        {
            var isLater = (await condition.TextContentAsync())!.Trim().EndsWith("(F)", StringComparison.Ordinal);
            (ofLater, all) = (ofLater + (isLater ? 1 : 0), all + 1);
            Assert.Equal(isShown || !isLater, await condition.IsVisibleAsync());
        }

        Assert.InRange(ofLater, 1, all - 10);
    }
}
