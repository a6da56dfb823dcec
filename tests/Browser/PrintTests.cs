namespace Gradus.Tests.Browser;

public sealed class PrintTests(PublishedContent content) : IClassFixture<PublishedContent>
{
    [Fact]
    public async Task In_print_everything_but_the_menu_is_there()
    {
        var path = content.PagesOf(content.Clients[0]).First(p => p.EndsWith("session-1.html", StringComparison.Ordinal));
        await using var context = await content.Browser.NewContextAsync(new() { Offline = true });
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + path);
        var screen = await page.Locator("main").InnerTextAsync();
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        Assert.Equal(screen, await page.Locator("main").InnerTextAsync());
        Assert.False(await page.Locator("nav").IsVisibleAsync());
    }
}
