using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>Each panel of the guided session, in the folder and in the one file: no barrier, nothing beside the screen, no small
/// target.</summary>
public sealed class GuidePanelsTests(PublishedContent content, ITestOutputHelper output)
{
    private const string Small = """
        dialog => [...dialog.querySelectorAll('button, select, summary, label, a, input:not([type=checkbox]):not([type=radio])')]
          .filter(one => one.getClientRects().length > 0 && (one.getBoundingClientRect().height < 43.9 || one.getBoundingClientRect().width < 43.9)).map(one => one.outerHTML.slice(0, 120))
        """;

    private const string Folder = "session-1.html",
        OneFile = "all-pages.html#session-1";

    /// <summary>axe looks at the whole document each time; in <c>tests/run</c> it does so at the panels that hold most.</summary>
    private static readonly string[] Fullest = ["today", "hold, breath", "end"];

    /// <summary>In <c>tests/run</c> those that differ most, under <c>--long</c> all of them.</summary>
    public static TheoryData<string, ColorScheme, int, double> Screens()
    {
        if (!LongProof.Whole)
            return new() { { Folder, ColorScheme.Light, 320, 2 }, { OneFile, ColorScheme.Dark, 1280, 1 } };
        var all = new TheoryData<string, ColorScheme, int, double>();
        foreach (var file in new[] { Folder, OneFile })
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        foreach (var (width, text) in new[] { (1280, 1.0), (320, 1.0), (320, 2.0) })
            all.Add(file, scheme, width, text);
        return all;
    }

    [Theory, MemberData(nameof(Screens))]
    public async Task It_has_no_barrier_does_not_scroll_sideways_and_has_no_small_target(
        string file,
        ColorScheme scheme,
        int width,
        double text
    )
    {
        var looked = new List<string>();
        await using var context = await GuidedPage.ContextAsync(
            content,
            new()
            {
                ColorScheme = scheme,
                ViewportSize = new() { Width = width, Height = 800 },
            }
        );
        var page = await GuidedPage.Open(content, context, file);

        await With("not today", async () => await page.Answer(pain: "8"));
        await With("another session", async () => await page.Answer(pain: "3", where: "wrist"));
        await With("an answer missing", async () =>
        {
            await page.Press("some");
            await page.Dialog.Locator("[data-form='questions'] [name='pain'][value='yes']").CheckAsync();
            await page.Dialog.Locator("[data-form='questions'] [type='submit']").ClickAsync();
        });
        await With("alarm", async () => await page.Dialog.Locator("[data-alarm='saddle']:visible").ClickAsync());
        await With("ready", async () =>
        {
            await page.Answer();
            await Look("ready");
            await page.Press("start");
            await Look("learn");
            await page.Press("in-place");
            await Look("get ready");
            await page.PutForward(6);
            await Look("hold, breath");
            await page.Press("pause");
            await Look("paused");
            await page.Press("hurts");
            await Look("hurts");
            await page.Say("1", "dull");
            await Look("hurts a little");
            await page.Press("ease-off");
            await Look("eased off");
            await page.Press("end-here");
            await Look("end");
            await page.Press("close");
        });
        await With("resume", async () =>
        {
            await page.Answer();
            await page.Press("start");
            await page.Press("in-place");
            await page.PutForward(6);
            await page.Page.Keyboard.PressAsync("Escape");
            await page.Page.ReloadAsync();
            if (text > 1)
                await Barriers.SetText(page.Page, text);
            await page.Lead();
        });
        output.WriteLine($"{looked.Count} panels of {file}, {scheme}, {width} px, text {text:P0}: {string.Join(", ", looked)}");
        Assert.Equal(15, looked.Count);

        async Task With(string panel, Func<Task> after)
        {
            await page.Afresh();
            if (text > 1)
                await Barriers.SetText(page.Page, text);
            await page.Lead();
            if (panel == "not today")
                await Look("today");
            await after();
            if (await page.Dialog.CountAsync() > 0)
                await Look(panel);
        }

        async Task Look(string panel)
        {
            looked.Add(panel);
            if (LongProof.Whole || Fullest.Contains(panel))
            {
                var barriers = await Barriers.In(page.Dialog);
                Assert.True(barriers.Length == 0, $"{panel}: {string.Join("\n", barriers)}");
            }

            Assert.True(
                await page.Dialog.EvaluateAsync<int>("dialog => dialog.scrollWidth - dialog.clientWidth") <= 0,
                $"{panel} scrolls sideways"
            );
            var heading = await page.Dialog.EvaluateAsync<double>(
                "dialog => [...dialog.querySelectorAll('h2')].find(one => one.getClientRects().length > "
                    + "0).getBoundingClientRect().width / Math.min(innerWidth, 700)"
            );
            Assert.True(heading > 0.6, $"The heading of {panel} has only {heading:P0} of the line.");
            var small = await page.Dialog.EvaluateAsync<string[]>(Small);
            Assert.True(small.Length == 0, $"{panel}: {string.Join("\n", small)}");
        }
    }
}
