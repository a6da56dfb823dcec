namespace Gradus.Tests.Browser;

/// <summary>The guided session in a browser, over file:// and offline.</summary>
public sealed class GuideTests(PublishedContent content, ITestOutputHelper output)
{
    [Fact]
    public async Task It_leads_from_the_cautions_to_the_log_and_says_nothing_every_second()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-5.html");
        Assert.Equal("I have read this: start", await page.Page.Locator("[data-lead-in]").InnerTextAsync());
        await page.Lead();
        Assert.Equal("Is any of these true today?", await page.Heading());
        await page.Answer();
        Assert.Equal("Ready?", await page.Heading());
        Assert.Matches("^Ends at 10:\\d\\d$", await page.Text("ends-ready"));
        await page.Press("start");
        Assert.Equal("New exercise: read below how it is done, then press “I'm ready”.", await page.Text("told"));
        await TheNewOneIsReadWhole(page);
        await page.Page.EvaluateAsync("window.hearing()");
        var list = await Listed.Of(page.Page, "2");
        Assert.Equal(list[0].Title, await page.Heading());
        var (waits, lengths) = (0, list.Select(s => s.Seconds).ToArray());
        for (var times = 0; times < 500 && !(await page.Stand()).StartsWith("done", StringComparison.Ordinal); times++)
        {
            if ((await page.Stand()).StartsWith("waiting", StringComparison.Ordinal))
            {
                await page.Press("in-place");
                waits++;
            }

            await page.PutForward(1);
        }

        Assert.Equal("That is all for today", await page.Heading());
        var (heard, most) = (
            await page.Page.EvaluateAsync<int>("window.heard"),
            lengths.Length + lengths.Count(s => s > 20) + (2 * waits) + 1
        );
        output.WriteLine($"{lengths.Length} steps of {lengths.Sum()} seconds: {heard} announcements, at most {most}");
        Assert.InRange(heard, lengths.Length, most);
        Assert.Equal("Saved on this phone. Your weeks go on from it.", await page.Text("kept"));
        var done = await page.Page.EvaluateAsync<string>(
            "JSON.stringify(gradus.log.rows().map(row => [row.day, row.week, row.session, row.done, "
                + "row.exercises.every(one => one.sets > 0)]))"
        );
        Assert.Equal("[[\"2026-12-14\",2,5,true,true]]", done);
        Assert.Empty(page.Troubles);
    }

    [Fact]
    public async Task Every_part_of_it_is_reached_with_the_keyboard_alone()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await Key(page, "none", "Enter");
        await Key(page, "start", "Enter");
        Assert.StartsWith("waiting 0", await page.Stand(), StringComparison.Ordinal);
        await page.Page.Keyboard.PressAsync("Space");
        Assert.StartsWith("running 0", await page.Stand(), StringComparison.Ordinal);
        await page.Page.Keyboard.PressAsync("ArrowRight");
        Assert.StartsWith("running 1", await page.Stand(), StringComparison.Ordinal);
        await page.Page.Keyboard.PressAsync("ArrowLeft");
        Assert.StartsWith("running 0", await page.Stand(), StringComparison.Ordinal);
        await page.Page.Keyboard.PressAsync("Escape");
        Assert.StartsWith("paused 0", await page.Stand(), StringComparison.Ordinal);
        await Key(page, "go", "Enter");
        Assert.Equal("pause", await page.Page.EvaluateAsync<string>("document.activeElement.dataset.act"));
        foreach (var act in new[] { "longer", "pause", "softer", "hurts" })
            await Key(page, act, "Enter");
        Assert.Equal("Stopped", await page.Heading());
        await Key(page, "end-session", "Space");
        Assert.Equal("That is all for today", await page.Heading());
        await Key(page, "close", "Enter");
        Assert.Equal(0, await page.Dialog.CountAsync());
    }

    [Fact]
    public async Task What_hurts_is_left_out_with_all_that_loads_it_and_is_asked_about_next_time()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PutForward(6);
        await page.Press("hurts");
        Assert.StartsWith("hurt 1", await page.Stand(), StringComparison.Ordinal);
        var said = await page.Dialog.Locator("[data-panel='hurts']").InnerTextAsync();
        Assert.True(
            said.IndexOf("Call 999", StringComparison.Ordinal) is var call and > 0
                && call < said.IndexOf("Chest pain", StringComparison.Ordinal)
                && said.IndexOf("Chest pain", StringComparison.Ordinal)
                    < said.IndexOf("Where does it hurt?", StringComparison.Ordinal),
            said
        );
        await page.Dialog.Locator("[data-form='hurts'] [data-where]").SelectOptionAsync("wrist");
        await page.Dialog.Locator("[data-form='hurts'] [data-side]").SelectOptionAsync("left");
        await page.Press("end-exercise");
        Assert.StartsWith("waiting 4", await page.Stand(), StringComparison.Ordinal);
        await page.PlayOn(40);
        Assert.Equal(
            "Left out today: Side-lying chest turn.",
            await page.Dialog.Locator("[data-panel='end'] [data-fill='left-out']").InnerTextAsync()
        );

        var next = await GuidedPage.Open(content, context, "session-2.html", "2026-12-16T10:00:00");
        await next.Lead();
        await next.Press("none");
        Assert.StartsWith(
            "Last time you stopped at Side-lying chest turn. Does it still hurt?",
            await next.Dialog.Locator("[data-still]:visible").InnerTextAsync(),
            StringComparison.Ordinal
        );
        await next.Dialog.Locator("[data-still]:visible [value='yes']").CheckAsync();
        await next.Dialog.Locator("[data-form='questions'] [type='submit']").ClickAsync();
        Assert.Contains(
            "Side-lying chest turn",
            await next.Dialog.Locator("[data-panel='ready'] .note").InnerTextAsync(),
            StringComparison.Ordinal
        );
        Assert.Equal("no", await next.Page.EvaluateAsync<string>("gradus.log.all()[0].morning"));
    }

    [Fact]
    public async Task A_step_that_was_made_softer_does_not_show_how_hard_it_was_to_be()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        for (var times = 0; times < 80 && !(await page.Dialog.Locator("[data-fill='effort']").IsVisibleAsync()); times++)
            await page.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Contains("%", await page.Text("detail"), StringComparison.Ordinal);
        await page.Press("pause");
        await page.Press("softer");
        Assert.Equal("", await page.Dialog.Locator("[data-fill='detail']").TextContentAsync());
    }

    [Fact]
    public async Task A_page_that_was_closed_goes_on_where_it_was_for_three_hours()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PutForward(6);
        await page.PutForward(20);
        await page.Page.CloseAsync();

        var soon = await GuidedPage.Open(content, context, "session-1.html", "2026-12-14T12:55:00");
        await soon.Lead();
        Assert.Equal("You were at 1: Side-lying chest turn: hold, left side.", await soon.Text("at-step"));
        await soon.Press("resume");
        Assert.Equal("waiting 1 80", await soon.Stand());
        await soon.Page.CloseAsync();
        var late = await GuidedPage.Open(content, context, "session-1.html", "2026-12-14T16:30:00");
        await late.Lead();
        Assert.Equal("Is any of these true today?", await late.Heading());
    }

    [Fact]
    public async Task Where_it_was_closed_while_it_hurt_that_comes_first()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PutForward(6);
        await page.Press("hurts");
        await page.Page.CloseAsync();
        var soon = await GuidedPage.Open(content, context, "session-1.html", "2026-12-14T10:05:00");
        await soon.Lead();
        await soon.Press("resume");
        Assert.Equal("Stopped", await soon.Heading());
    }

    /// <summary>The cautions of the exercise in full, kind by kind, then what to set up; and both ways on, to begin it and to
    /// stop, in sight from the first.</summary>
    private static async Task TheNewOneIsReadWhole(GuidedPage page)
    {
        var said = await page.Dialog.Locator("[data-panel='play']").InnerTextAsync();
        var due = await page.Page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('main > .cautions .caution')]
              .filter(one => (one.querySelector('.belongs')?.textContent ?? 'A').includes('A')).map(one => one.innerText.trim())
            """
        );
        Assert.NotEmpty(due);
        Assert.All(due, sign => Assert.Contains(sign, said, StringComparison.Ordinal));
        int[] order = [said.IndexOf(due[0], StringComparison.Ordinal), said.IndexOf("Set up", StringComparison.Ordinal)];
        Assert.DoesNotContain(-1, order);
        Assert.Equal(order.Order(), order);
        foreach (var act in (string[])["in-place", "hurts"])
            Assert.True(
                await page.Page.EvaluateAsync<bool>(
                    "act => { const all = [...document.querySelectorAll(`dialog[open] [data-act='${act}']`)]; "
                        + "const at = all.find(one => one.checkVisibility()).getBoundingClientRect(); "
                        + "return at.top >= 0 && at.bottom <= innerHeight; }",
                    act
                ),
                act
            );
    }

    /// <summary>Tab until the keyboard is on that button, then the key.</summary>
    private static async Task Key(GuidedPage page, string act, string key)
    {
        await page.TabTo($"[data-act='{act}']");
        await page.Page.Keyboard.PressAsync(key);
    }
}
