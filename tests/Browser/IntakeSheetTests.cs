using Gradus.Tests.House;
using Gradus.Tests.Rendering;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>What an intake sheet looks like and keeps, with scripts and without.</summary>
public sealed class IntakeSheetTests(PublishedContent content, ITestOutputHelper output)
{
    /// <summary>In <c>tests/run</c> those that differ most.</summary>
    public static TheoryData<ColorScheme, int, double> Screens() =>
        new(
            LongProof.First(
                2,
                [
                    (ColorScheme.Dark, 320, 2.0),
                    (ColorScheme.Light, 1280, 1.0),
                    (ColorScheme.Dark, 1280, 1.0),
                    (ColorScheme.Light, 320, 1.0),
                    (ColorScheme.Dark, 320, 1.0),
                ]
            )
        );

    [Theory, MemberData(nameof(Screens))]
    public async Task It_opens_offline_without_request_error_or_barrier(ColorScheme scheme, int width, double textSize)
    {
        await using var sheet = await OpenSheet.Open(
            content.Browser,
            new()
            {
                ColorScheme = scheme,
                ViewportSize = new() { Width = width, Height = 800 },
            }
        );
        var page = sheet.Page;
        if (textSize > 1)
            await Barriers.SetText(page, textSize);
        var barriers = (await Barriers.In(page)).ToList();
        await sheet.Question("ankle-injury").GetByLabel("Yes, on the left").CheckAsync();
        await sheet.Page.Locator("[data-hurts]").CheckAsync();
        await sheet.Place(1, "where").SelectOptionAsync("neck");
        await page.ClickAsync("#save");
        Assert.StartsWith("Not saved yet.", await sheet.Status(), StringComparison.Ordinal);
        barriers.AddRange(await Barriers.In(page));
        Assert.Empty(barriers);
        Assert.Empty(sheet.Troubles);
        Assert.Equal(
            0,
            await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        );
        var targets = await page.EvaluateAsync<float[]>(
            "[...document.querySelectorAll('.replies label, button:not([hidden]), select, "
                + "input:not([type=radio])')].flatMap(e => [e.getBoundingClientRect().width, e.getBoundingClientRect().height])"
        );
        Assert.All(targets, side => Assert.InRange(side, 44, float.MaxValue));
        output.WriteLine($"{targets.Length / 2} targets of at least 44 px");
    }

    [Fact]
    public async Task It_is_valid()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        Assert.Equal("", await NuCheckerTests.Check([sheet.Path]));
    }

    [Fact]
    public async Task Nothing_is_kept_once_it_is_saved()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        await sheet.Question("hernia").GetByLabel("Yes").CheckAsync();
        Assert.Contains("  hernia: yes\n", await sheet.Saved(), StringComparison.Ordinal);
        Assert.Equal(
            "0 0  0 0",
            await sheet.Page.EvaluateAsync<string>(
                "(async () => [localStorage.length, sessionStorage.length, document.cookie, (await "
                    + "indexedDB.databases()).length, (await caches?.keys?.() ?? []).length].join(' '))()"
            )
        );
        await sheet.Page.ReloadAsync();
        Assert.Equal(0, await sheet.Page.Locator("input:checked").CountAsync());
        Assert.Empty(sheet.Troubles);
    }

    [Fact]
    public async Task Without_scripts_it_is_whole_and_says_that_it_cannot_save()
    {
        await using var scripted = await OpenSheet.Open(content.Browser);
        await using var plain = await OpenSheet.Open(content.Browser, new() { JavaScriptEnabled = false });
        Assert.Equal(OpenSheet.Asked.Questions.Count, await plain.Page.Locator("[data-asked]").CountAsync());
        foreach (var opened in (OpenSheet[])[scripted, plain])
            await opened.Page.Locator("[data-hurts]").CheckAsync();
        foreach (var what in (string[])["[data-asked] > legend", ".replies label", "select", "input"])
        {
            var (seen, all) = (plain.Page.Locator(what), scripted.Page.Locator(what));
            Assert.Equal(await all.AllInnerTextsAsync(), await seen.AllInnerTextsAsync());
            foreach (var one in await seen.AllAsync())
                Assert.True(await one.IsVisibleAsync() && await one.IsEnabledAsync());
        }

        Assert.True(await plain.Page.Locator("#no-script").IsVisibleAsync());
        Assert.Equal(0, await scripted.Page.Locator("#no-script").CountAsync());
        foreach (var button in await plain.Page.Locator("button").AllAsync())
            Assert.False(await button.IsVisibleAsync());
        await plain.Page.Locator("[name=year]").PressAsync("Enter");
        Assert.Equal("file://" + plain.Path, plain.Page.Url);
    }

    /// <summary>With scripts and without; an answer that is taken back takes the places with it.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Places_are_asked_only_where_something_hurts(bool scripts)
    {
        await using var sheet = await OpenSheet.Open(content.Browser, new() { JavaScriptEnabled = scripts });
        var level = sheet.Place(1, "level");
        var pain = sheet.Question("pain-now");
        Assert.False(await level.IsVisibleAsync());
        await sheet.Page.Locator("[data-hurts]").CheckAsync();
        Assert.True(await level.IsVisibleAsync());
        await pain.GetByLabel("Don't know / rather not say").CheckAsync();
        Assert.False(await level.IsVisibleAsync());
        await sheet.Page.Locator("[data-hurts]").CheckAsync();
        await pain.GetByLabel("No, nothing hurts").CheckAsync();
        Assert.False(await level.IsVisibleAsync());
    }

    [Fact]
    public async Task A_script_that_was_changed_afterwards_does_not_run()
    {
        await using var sheet = await OpenSheet.Open(content.Browser);
        await File.WriteAllTextAsync(
            sheet.Path,
            (await File.ReadAllTextAsync(sheet.Path, TestContext.Current.CancellationToken)).Replace(
                "</script>",
                ";0</script>",
                StringComparison.Ordinal
            ),
            TestContext.Current.CancellationToken
        );
        await sheet.Page.ReloadAsync();
        Assert.Contains(sheet.Troubles, said => said.Contains("Content Security Policy", StringComparison.Ordinal));
        Assert.True(await sheet.Page.Locator("#no-script").IsVisibleAsync());
    }

    [Fact]
    public async Task Hostile_texts_are_read_and_do_nothing()
    {
        await using var sheet = await OpenSheet.Open(
            content.Browser,
            asked: AskedSheet.Of(HostilePractice.Hostile.Read().Practice)
        );
        Assert.Contains(
            HostilePractice.Shown("question").InHeader[..60],
            await sheet.Question("calf-strain").InnerTextAsync(),
            StringComparison.Ordinal
        );
        Assert.Contains("  calf-strain: not asked\n", await sheet.Saved(), StringComparison.Ordinal);
        await sheet.Page.ClickAsync("#clear");
        Assert.Contains("<script>touched=1</script>", await sheet.Status(), StringComparison.Ordinal);
        Assert.Equal("undefined", await sheet.Page.EvaluateAsync<string>("typeof touched"));
        Assert.Empty(sheet.Troubles);
    }
}
