using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>The largest page of each kind in Chromium, over file:// and offline.</summary>
public sealed class PageTests(PublishedContent content, ITestOutputHelper output)
{
    /// <summary>In bytes; of the demonstration the sessions and all pages in one are longer.</summary>
    private const int LongPage = 60_000;

    /// <summary>What a reader opens by hand, with or without scripts.</summary>
    private const string OpenLists = "document.querySelectorAll('details').forEach(one => one.open = true)";

    [Theory]
    [InlineData(ColorScheme.Light, ForcedColors.None, 1280, 1.0)]
    [InlineData(
        ColorScheme.Dark,
        ForcedColors.None,
        1280,
        1.0,
        Skip = LongProof.Only,
        SkipUnless = nameof(LongProof.Whole),
        SkipType = typeof(LongProof)
    )]
    [InlineData(ColorScheme.Dark, ForcedColors.Active, 768, 1.0)]
    [InlineData(ColorScheme.Light, ForcedColors.None, 320, 1.0)]
    [InlineData(ColorScheme.Dark, ForcedColors.None, 320, 2.0)]
    public async Task Pages_of_every_kind_open_offline_without_request_error_or_barrier(
        ColorScheme scheme,
        ForcedColors forced,
        int width,
        double textSize
    )
    {
        var opened = 0;
        await using var context = await content.ContextAsync(
            new()
            {
                Offline = true,
                ColorScheme = scheme,
                ForcedColors = forced,
                ViewportSize = new() { Width = width, Height = 800 },
            }
        );
        foreach (var path in content.PagesOfEveryKind())
        {
            var page = await context.NewPageAsync();
            var troubles = new List<string>();
            var seen = troubles;
            page.Request += (_, request) => Note(seen, request.Url, path);
            page.Console += (_, message) => seen.Add($"console {message.Type}: {message.Text}");
            page.PageError += (_, error) => seen.Add($"error: {error}");
            page.RequestFailed += (_, request) => seen.Add($"failed: {request.Url}");
            await page.GotoAsync("file://" + path);
            if (textSize > 1)
                await Barriers.SetText(page, textSize);
            await page.WaitForTimeoutAsync(100);

            // Long pages take axe longest: in tests/run it judges them on the screen that is hardest to fill, where it judges
            // every page by every rule. axe itself asks for the stylesheet once more, which the policy refuses: what comes now is
            // not the page's doing.
            troubles = [.. troubles];
            if (textSize > 1)
                troubles.AddRange(await Barriers.In(page));
            else if (LongProof.Whole || new FileInfo(path).Length < LongPage)
                troubles.AddRange(await Barriers.InAnotherLook(page));
            var overflow = await page.EvaluateAsync<int>(
                "document.documentElement.scrollWidth - document.documentElement.clientWidth"
            );
            if (overflow > 0)
                troubles.Add($"the page is {overflow} px wider than the window");
            Assert.True(
                troubles.Count == 0,
                $"{path} ({scheme}, {width} px, text {textSize:P0}):\n{string.Join("\n", troubles)}"
            );
            opened++;
            await page.CloseAsync();
        }

        output.WriteLine(
            $"{opened} pages, {scheme}, forced colours {forced}, {width} px wide, text {textSize:P0}: no request but "
                + "their own files, no console message, no axe violation, no sideways scrolling"
        );
        Assert.Equal(7, opened);
    }

    /// <summary>Every line that scripts let stand, or may show later, but those by which they say which week it is.</summary>
    [Fact]
    public async Task Everything_is_readable_with_scripts_switched_off()
    {
        await using var plain = await content.ContextAsync(new() { JavaScriptEnabled = false, Offline = true });
        await using var scripted = await content.ContextAsync(new() { Offline = true });
        foreach (var path in content.PagesOfEveryKind())
        {
            var page = await scripted.NewPageAsync();
            await page.GotoAsync("file://" + path);
            await page.EvaluateAsync(
                """
                () => {
                  const all = (selector, what) => document.querySelectorAll(selector).forEach(what);
                  all('[data-weeks], [data-while-planned], [data-go], article, .cautions .caution, .cautions .kind, .not-with li, .index li', one => one.hidden = false);
                  all('[data-say], [data-week-now], [data-why], [data-nothing-today], [data-week-new], [data-later], [data-days-done], [data-list-done], .choose, button, [role=status], [data-log-page], .on-screen, p.on-paper, [data-others] > h2, dialog', one => one.remove());
                  all('.on-paper', one => one.classList.remove('on-paper'));
                  all('[data-dose]', one => one.replaceChildren());
                }
                """
            );
            await page.EvaluateAsync(OpenLists);
            var without = (await TextOf(plain, path))
                .Split('\n')
                .Where(line => line.Trim().Length > 0 && !line.StartsWith("Scripts do not run here.", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal);
            Assert.Equal(
                (await page.Locator("body").InnerTextAsync())
                    .Split('\n')
                    .Where(line => line.Trim().Length > 0)
                    .Order(StringComparer.Ordinal),
                without
            );
        }
    }

    [Fact]
    public async Task A_planted_request_error_and_barrier_are_noticed()
    {
        var path = content.PagesOf("rufus").First(p => Path.GetFileName(p) == "index.html");
        var html = (await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken)).Replace(
            "</main>",
            "<img src=\"missing.png\"><p style=\"color:red\">x</p></main>",
            StringComparison.Ordinal
        );
        var broken = Path.Combine(Path.GetTempPath(), $"gradus-{Environment.ProcessId}-barrier.html");
        await File.WriteAllTextAsync(broken, html, TestContext.Current.CancellationToken);
        try
        {
            await using var context = await content.ContextAsync(new() { Offline = true });
            var page = await context.NewPageAsync();
            var (failed, messages) = (new List<string>(), new List<string>());
            page.RequestFailed += (_, request) => failed.Add(request.Url);
            page.Console += (_, message) => messages.Add(message.Text);
            await page.GotoAsync("file://" + broken);
            var barriers = await Barriers.In(page);
            Assert.Contains(failed, url => url.EndsWith("missing.png", StringComparison.Ordinal));
            Assert.Contains(messages, text => text.Contains("Content Security Policy", StringComparison.Ordinal));
            Assert.Contains(barriers, line => line.StartsWith("axe image-alt:", StringComparison.Ordinal));
            Assert.DoesNotContain(await Barriers.InAnotherLook(page), IsOfContrast);
            await page.EvaluateAsync("document.querySelector('h1').style.color = '#eee'");
            Assert.Contains(await Barriers.InAnotherLook(page), IsOfContrast);
        }
        finally
        {
            File.Delete(broken);
        }
    }

    private static bool IsOfContrast(string barrier) => barrier.StartsWith("axe color-contrast:", StringComparison.Ordinal);

    private static void Note(List<string> troubles, string url, string page)
    {
        var folder = "file://" + Path.GetDirectoryName(page) + "/";
        if (!url.StartsWith(folder, StringComparison.Ordinal))
            troubles.Add($"request: {url}");
    }

    private static async Task<string> TextOf(IBrowserContext context, string path)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + path);
        await page.EvaluateAsync(OpenLists);
        return await page.Locator("body").InnerTextAsync();
    }
}
