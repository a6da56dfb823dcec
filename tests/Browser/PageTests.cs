using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>The largest page of each kind in Chromium, over file:// and offline.</summary>
public sealed class PageTests(PublishedContent content, ITestOutputHelper output) : IClassFixture<PublishedContent>
{
    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
        Rules = new() { ["target-size"] = new RuleOptions { Enabled = true } },
    };

    [Theory]
    [InlineData(ColorScheme.Light, 1280, 1.0)]
    [InlineData(ColorScheme.Dark, 1280, 1.0)]
    [InlineData(ColorScheme.Light, 320, 1.0)]
    [InlineData(ColorScheme.Dark, 320, 2.0)]
    public async Task Pages_of_every_kind_open_offline_without_request_error_or_barrier(ColorScheme scheme, int width, double textSize)
    {
        var opened = 0;
        foreach (var path in PagesOfEveryKind())
        {
            await using var context = await content.Browser.NewContextAsync(new() { Offline = true, ColorScheme = scheme, ViewportSize = new() { Width = width, Height = 800 } });
            var page = await context.NewPageAsync();
            var troubles = new List<string>();
            var seen = troubles;
            page.Request += (_, request) => Note(seen, request.Url, path);
            page.Console += (_, message) => seen.Add($"console {message.Type}: {message.Text}");
            page.PageError += (_, error) => seen.Add($"error: {error}");
            page.RequestFailed += (_, request) => seen.Add($"failed: {request.Url}");
            await page.GotoAsync("file://" + path);
            if (textSize > 1) await page.EvaluateAsync($"document.documentElement.style.fontSize = '{textSize * 112.5}%'");
            await page.WaitForTimeoutAsync(100);

            // axe itself asks for the stylesheet once more, which the page's policy refuses: what comes from here on is not the page's doing.
            troubles = [.. troubles];
            var axe = await page.RunAxe(Rules);
            troubles.AddRange(axe.Violations.Select(v => $"axe {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}"));
            var overflow = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            if (overflow > 0) troubles.Add($"the page is {overflow} px wider than the window");
            Assert.True(troubles.Count == 0, $"{path} ({scheme}, {width} px, text {textSize:P0}):\n{string.Join("\n", troubles)}");
            opened++;
        }

        output.WriteLine($"{opened} pages, {scheme}, {width} px wide, text {textSize:P0}: no request but their own files, no console message, no axe violation, no sideways scrolling");
        Assert.Equal(5, opened);
    }

    [Fact]
    public async Task Everything_is_readable_with_scripts_switched_off()
    {
        foreach (var path in PagesOfEveryKind())
        {
            await using var plain = await content.Browser.NewContextAsync(new() { JavaScriptEnabled = false, Offline = true });
            await using var scripted = await content.Browser.NewContextAsync(new() { Offline = true });
            Assert.Equal(await TextOf(scripted, path), await TextOf(plain, path));
        }
    }

    [Fact]
    public async Task A_planted_request_error_and_barrier_are_noticed()
    {
        var path = PagesOfEveryKind().First();
        var html = (await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken))
            .Replace("</main>", "<img src=\"missing.png\"><p style=\"color:red\">x</p></main>", StringComparison.Ordinal);
        var broken = Path.Combine(Path.GetDirectoryName(path) ?? "", "broken.html");
        await File.WriteAllTextAsync(broken, html, TestContext.Current.CancellationToken);
        try
        {
            await using var context = await content.Browser.NewContextAsync(new() { Offline = true });
            var page = await context.NewPageAsync();
            var (failed, messages) = (new List<string>(), new List<string>());
            page.RequestFailed += (_, request) => failed.Add(request.Url);
            page.Console += (_, message) => messages.Add(message.Text);
            await page.GotoAsync("file://" + broken);
            var axe = await page.RunAxe(Rules);
            Assert.Contains(failed, url => url.EndsWith("missing.png", StringComparison.Ordinal));
            Assert.Contains(messages, text => text.Contains("Content Security Policy", StringComparison.Ordinal));
            Assert.Contains(axe.Violations, v => v.Id == "image-alt");
        }
        finally
        {
            File.Delete(broken);
        }
    }

    private static void Note(List<string> troubles, string url, string page)
    {
        var folder = "file://" + Path.GetDirectoryName(page) + "/";
        if (!url.StartsWith(folder, StringComparison.Ordinal)) troubles.Add($"request: {url}");
    }

    private static async Task<string> TextOf(IBrowserContext context, string path)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + path);
        return await page.Locator("body").InnerTextAsync();
    }

    /// <summary>The largest page of each kind, of whichever client.</summary>
    private IEnumerable<string> PagesOfEveryKind() => content.Clients.SelectMany(content.PagesOf)
        .GroupBy(p => Path.GetFileName(p).Split('-', '.')[0])
        .Select(kind => kind.MaxBy(p => new FileInfo(p).Length) ?? kind.First());
}
