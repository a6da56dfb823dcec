using System.Text.Json;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>Whoever has the hands on the floor does not scroll: while a session runs or is paused, everything that is pressed is
/// on the screen; and how often somebody presses before the first movement.</summary>
public sealed class GuideFitsTests(PublishedContent content, ITestOutputHelper output)
{
    private static readonly string[] Always = ["forward", "longer", "hurts"];

    private const string Seen = """
        () => {
          const dialog = document.querySelector('dialog[open]');
          const at = act => [...dialog.querySelectorAll(`[data-act="${act}"]`)].find(one => one.checkVisibility())?.getBoundingClientRect();
          const boxes = ['pause', 'go', 'forward', 'longer', 'hurts'].map(act => [act, at(act)]).filter(one => one[1]);
          return JSON.stringify({
            buttons: boxes.filter(one => one[1].top >= 0 && one[1].bottom <= innerHeight && one[1].left >= 0 && one[1].right <= innerWidth).map(one => one[0]),
            over: dialog.scrollHeight - dialog.clientHeight
          });
        }
        """;

    private sealed record OnScreen(string[] Buttons, double Over);

    [Theory]
    [InlineData(390, 844)]
    [InlineData(320, 640)]
    public async Task Every_control_is_on_one_screen_in_every_step(int width, int height)
    {
        var steps = 0;
        foreach (var client in content.Clients)
        {
            await using var context = await Context(width, height);
            var page = await Open(context, client);
            var all = await page.Page.EvaluateAsync<int>("Object.values(gradus.guides)[0].guide.steps.length");
            for (; (await page.Stand()).Split(' ') is [var phase, var at, _] && phase is not "done"; steps++)
            {
                if (phase == "waiting")
                    await page.Press("in-place");
                AssertFits($"{client} {width}x{height}, step {at} of {all}", await Look(page), "pause");
                if (at == "1")
                {
                    await page.Press("pause");
                    var paused = await Look(page);
                    Assert.Equal(["go", .. Always], paused.Buttons);
                    await page.Press("go");
                }

                await page.Page.EvaluateAsync("document.querySelector('dialog[open] [data-act=\"forward\"]').click()");
            }
        }

        output.WriteLine($"{width}x{height}: {steps} steps of {content.Clients.Count} clients' first sessions");
        Assert.InRange(steps, 100, 5000);
    }

    [Fact]
    public async Task A_picture_that_pushes_the_buttons_off_is_noticed()
    {
        await using var context = await Context(390, 844);
        var page = await Open(context, content.Clients[0]);
        await page.Press("in-place");
        await page.Page.EvaluateAsync("document.querySelector('dialog[open] .picture').style.paddingBlockStart = '500px'");
        var seen = await Look(page);
        Assert.ThrowsAny<Exception>(() => AssertFits("planted", seen, "pause"));
    }

    /// <summary>From page one: at most six presses for whoever begins, four for whoever comes back.</summary>
    [Fact]
    public async Task The_first_movement_is_a_few_presses_away()
    {
        await using var context = await Context(390, 844);
        var first = await Presses(
            "2026-12-07T10:00:00",
            ["[data-lead-in]", "[data-act='none']", "[data-act='start']", "[data-act='in-place']"]
        );
        var again = await Presses("2026-12-10T10:00:00", ["[data-act='none']", "[data-act='start']"]);
        output.WriteLine($"presses from page one to the first step: {first} at first, {again} for who comes back");
        Assert.InRange(first, 1, 6);
        Assert.InRange(again, 1, 4);

        async Task<int> Presses(string now, string[] ways)
        {
            var page = await GuidedPage.Open(content, context, "index.html", now);
            await page.Page.Locator("a.start:visible").First.ClickAsync();
            await page.Page.WaitForURLAsync("**/session-1.html**");
            foreach (var way in ways)
                await page.Page.Locator($"{way}:visible").First.ClickAsync();
            Assert.StartsWith("running 0", await page.Stand(), StringComparison.Ordinal);
            await page.Page.CloseAsync();
            return ways.Length + 1;
        }
    }

    private static void AssertFits(string where, OnScreen seen, string main)
    {
        string[] due = [main, .. Always];
        Assert.True(due.SequenceEqual(seen.Buttons), $"{where}: on the screen are only {string.Join(", ", seen.Buttons)}");
        Assert.True(seen.Over <= 0, $"{where}: {seen.Over} px do not fit");
    }

    private Task<IBrowserContext> Context(int width, int height) =>
        GuidedPage.ContextAsync(
            content,
            new()
            {
                ViewportSize = new() { Width = width, Height = height },
            }
        );

    private async Task<GuidedPage> Open(IBrowserContext context, string client)
    {
        var path = content.PagesOf(client).First(p => Path.GetFileName(p) == "session-1.html");
        var page = await GuidedPage.OpenAt(context, path, "2026-12-14T10:00:00");
        await page.Start();
        return page;
    }

    private static async Task<OnScreen> Look(GuidedPage page) =>
        JsonSerializer.Deserialize<OnScreen>(await page.Page.EvaluateAsync<string>(Seen), JsonSerializerOptions.Web)!;
}
