using System.Globalization;

namespace Gradus.Tests.Browser;

/// <summary>A whole session by somebody who has the keyboard alone, and by somebody who has nothing but what a screen reader is
/// given.</summary>
public sealed class GuideByEarTests(PublishedContent content, ITestOutputHelper output)
{
    [Fact]
    public async Task A_whole_session_is_done_with_the_keyboard_alone()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-5.html");
        var presses = 0;
        await TabTo("[data-lead-in]");
        await Press("Enter");
        await TabTo("[data-act='none']");
        await Press("Enter");
        await TabTo("[data-act='start']");
        await Press("Enter");
        var steps = await page.Page.Locator(".weeks[data-weeks~='2'] [data-step]").CountAsync();
        Assert.True(steps > 0);
        for (var times = 0; times < 300 && !(await page.Stand()).StartsWith("done", StringComparison.Ordinal); times++)
        {
            if ((await page.Stand()).StartsWith("waiting", StringComparison.Ordinal))
                await Press("Space");
            await page.PutForward(12);
        }

        Assert.Equal("That is all for today", await page.Heading());
        await TabTo("[data-effort]");
        await Press("4");
        await TabTo("[data-note]");
        await page.Page.Keyboard.TypeAsync("Calm");
        await TabTo("[data-form='log'] [type='submit']");
        await Press("Enter");
        await TabTo("[data-act='close']");
        await Press("Enter");
        Assert.Equal(0, await page.Dialog.CountAsync());
        Assert.True(
            await page.Page.EvaluateAsync<bool>("document.activeElement.matches('[data-lead-in]')"),
            "The keyboard is not where it began."
        );
        Assert.Equal(
            "[[5,true,4,\"Calm\"]]",
            await page.Page.EvaluateAsync<string>(
                "JSON.stringify(gradus.log.rows().map(row => [row.session, row.done, row.effort, row.note]))"
            )
        );
        output.WriteLine($"{steps} steps, {presses} keys");
        Assert.Empty(page.Troubles);

        async Task Press(string key)
        {
            presses++;
            await page.Page.Keyboard.PressAsync(key);
        }

        async Task TabTo(string selector) => presses += await page.TabTo(selector);
    }

    /// <summary>Everything is found by its role and name, and each step is said once, in the order of the list.</summary>
    [Fact]
    public async Task A_whole_session_is_done_with_what_a_screen_reader_is_given()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-5.html");
        var tree = await SpokenTree.Of(page.Page);
        var list = await Listed.Of(page.Page, "2");
        await tree.Do("button", "I have read this: start");
        await tree.One("dialog", "Guided session");
        await tree.One("heading", "Is any of these true today?");
        Assert.Contains(await tree.All(), n => n.Role == "link" && n.Name == "Call 999");
        await tree.Do("button", "None of these");
        await tree.Do("button", "Start");
        var said = new List<string>();
        for (var times = 0; times < 400 && !(await page.Stand()).StartsWith("done", StringComparison.Ordinal); times++)
        {
            var all = await tree.All();
            foreach (var button in new[] { "Stop, it hurts", "Skip", "+10 s" })
                Assert.Contains(all, n => n.Role == "button" && n.Name == button);
            var waits = (await page.Stand()).StartsWith("waiting", StringComparison.Ordinal);
            Assert.Equal(waits ? 0 : 1, all.Count(n => n.Role == "timer"));
            var words = string.Concat(
                all.Where(n => n.Role == "StaticText" && n.Above.Any(a => a.Role == "status")).Select(n => n.Name)
            );
            if (said.LastOrDefault() != words)
                said.Add(words);
            if (waits)
                await tree.Do("button", "I'm ready");
            else
                await page.PutForward(
                    (list[int.Parse((await page.Stand()).Split(' ')[1], CultureInfo.InvariantCulture)].Seconds / 2) + 1
                );
        }

        await tree.One("heading", "That is all for today");
        output.WriteLine(string.Join('\n', said));
        var begun = said.Select(s => s.Replace("Half-way.", "", StringComparison.Ordinal))
            .Where(s => !s.EndsWith("“I'm ready”.", StringComparison.Ordinal))
            .Select(WithoutAmount)
            .Distinct()
            .ToArray();
        Assert.Equal(list.Select((_, i) => WithoutAmount(Told(list, i))).Distinct(), begun);
        await tree.Do("button", "Close");
        Assert.Equal(0, await page.Dialog.CountAsync());
        Assert.Empty(page.Troubles);
    }

    private static string Told(Listed[] list, int i)
    {
        var drawn = Drawn.Of(list, i);
        return drawn.Side + drawn.What + drawn.Told;
    }

    /// <summary>The clock is put forward by leaps here, so a step is told when some of it is over.</summary>
    private static string WithoutAmount(string said) => said.Split(" for ")[0].ToUpperInvariant();
}
