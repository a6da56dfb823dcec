using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>What cannot wait: each sign leads to the number in one press, from wherever it is asked, and from there nothing leads
/// on.</summary>
public sealed class RedFlagTests(PublishedContent content)
{
    private static readonly string[] Flags = ["chest", "breath", "faint", "weakness", "speech", "sight", "headache", "saddle"];

    public static TheoryData<string, int, int> Screens() => new() { { "before", 320, 640 }, { "stop", 390, 844 } };

    [Theory, MemberData(nameof(Screens))]
    public async Task Each_sign_is_one_press_from_the_number_and_nothing_leads_on(string from, int width, int height)
    {
        await using var context = await Context(width, height);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        foreach (var flag in Flags)
        {
            await page.Afresh();
            if (from == "stop")
            {
                await page.Begin();
                await page.Press("hurts");
            }
            else
                await page.Lead();

            // The number is there before anybody has pressed anything, and without scrolling.
            await InSight(page, ".flags a.call:visible");
            await page.Dialog.Locator($"[data-alarm='{flag}']:visible").ClickAsync();
            await Alarmed(page, flag);
            await InSight(page, "a.call-now");
            await page.Press("close");
            Assert.Equal(0, await page.Dialog.CountAsync());
            Assert.Empty(page.Troubles);
        }
    }

    [Theory]
    [InlineData("1")]
    [InlineData("10")]
    public async Task Pain_in_the_chest_is_such_a_sign_however_little_it_is(string level)
    {
        await using var context = await Context(390, 844);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Answer(pain: level, where: "chest");
        await Alarmed(page, "chest");
    }

    [Theory]
    [InlineData("end-exercise")]
    [InlineData("end-session")]
    [InlineData("close")]
    public async Task Pain_in_the_chest_while_it_runs_has_one_way_only(string press)
    {
        await using var context = await Context(390, 844);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Press("hurts");
        await page.Say("1", "dull", "chest");
        Assert.False(await page.Dialog.Locator("[data-act='ease-off']").IsVisibleAsync());
        await page.Press(press);
        await Alarmed(page, "chest");
    }

    [Fact]
    public async Task Pain_in_the_chest_that_is_told_at_the_end_is_such_a_sign_too()
    {
        await using var context = await Context(390, 844);
        var page = await GuidedPage.Open(content, context, "session-5.html");
        await page.Begin();
        await page.PlayOn(40);
        var form = page.Dialog.Locator("[data-form='log']");
        await form.Locator("[data-level]").SelectOptionAsync("1");
        await form.Locator("[data-where]").SelectOptionAsync("chest");
        await form.Locator("[type='submit']").ClickAsync();
        await Alarmed(page, "chest");
    }

    /// <summary>A finger may slip; then the client says so, and is not kept from training.</summary>
    [Theory]
    [InlineData("no", "Not today")]
    [InlineData("yes", "Ready?")]
    [InlineData("mistake", "Ready?")]
    public async Task Next_time_a_doctor_has_to_have_said_that_it_may_go_on(string cleared, string heading)
    {
        await using var context = await Context(390, 844);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Dialog.Locator("[data-alarm='faint']:visible").ClickAsync();
        await page.Press("close");
        await page.Lead();
        await page.Press("none");
        await page.Dialog.Locator("[data-form='questions'] [type='submit']").ClickAsync();
        Assert.StartsWith(
            "Please answer: Last time you stopped for a sign that needs a doctor.",
            await page.Dialog.Locator("[data-missing]:visible").InnerTextAsync(),
            StringComparison.Ordinal
        );
        await page.Dialog.Locator($"[name='cleared'][value='{cleared}']").CheckAsync();
        await page.Dialog.Locator("[data-form='questions'] [type='submit']").ClickAsync();
        Assert.Equal(heading, await page.Heading());
    }

    [Fact]
    public async Task Where_it_is_not_for_today_the_chest_comes_first_and_the_coach_last()
    {
        await using var context = await Context(390, 844);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Answer(pain: "6");
        var said = await page.Dialog.Locator("[data-panel='not-today']").InnerTextAsync();
        int[] order = [.. new[] { "Chest pain? Call 999 now.", "It hurts too much", "Ask Ottoline Marsh" }.Select(At)];
        Assert.DoesNotContain(-1, order);
        Assert.Equal(order.Order(), order);

        int At(string words) => said.IndexOf(words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("session-1.html")]
    [InlineData("before-you-start.html")]
    public async Task The_numbers_of_the_emergency_sentence_can_be_pressed(string file)
    {
        await using var context = await Context(390, 844);
        var page = await GuidedPage.Open(content, context, file);
        foreach (var number in new[] { "999", "111" })
            Assert.Equal(
                number,
                await page
                    .Page.Locator(
                        $"body > footer .emergency a[href='tel:{number}'], main .watch .emergency a[href='tel:{number}']"
                    )
                    .First.InnerTextAsync()
            );
    }

    private Task<IBrowserContext> Context(int width, int height) =>
        GuidedPage.ContextAsync(
            content,
            new()
            {
                ViewportSize = new() { Width = width, Height = height },
            }
        );

    private static async Task InSight(GuidedPage page, string selector)
    {
        var link = page.Dialog.Locator(selector);
        Assert.Equal("tel:999", await link.GetAttributeAsync("href"));
        Assert.True(
            await link.EvaluateAsync<bool>(
                "link => { const box = link.getBoundingClientRect(); return box.top >= 0 && box.bottom <= innerHeight && "
                    + "link.contains(document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2)); }"
            ),
            "The number is out of sight."
        );
    }

    private static async Task Alarmed(GuidedPage page, string flag)
    {
        Assert.Equal("Stop. Call 999 now.", await page.Heading());
        Assert.Equal(
            ["tel:999", "close"],
            await page.Dialog.EvaluateAsync<string[]>(
                "dialog => [...dialog.querySelectorAll('a, button, input, select, summary')]"
                    + ".filter(one => one.getClientRects().length > 0)"
                    + ".map(one => one.getAttribute('href') ?? one.dataset.act)"
            )
        );
        Assert.Equal(
            $"{flag} false",
            await page.Page.EvaluateAsync<string>(
                "(() => { const row = gradus.log.all().at(-1); return `${row.alarm} ${row.done}`; })()"
            )
        );
        Assert.Equal(0, await page.Page.EvaluateAsync<int>("gradus.log.rows().length"));
    }
}
