namespace Gradus.Tests.Browser;

/// <summary>The guided session in a browser, over file:// and offline.</summary>
public sealed class GuideTests(PublishedContent content, ITestOutputHelper output)
{
    [Fact]
    public async Task It_leads_from_the_cautions_to_the_log_and_says_nothing_every_second()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-5.html");
        await page.Lead();
        Assert.Equal("Read these cautions", await page.Heading());
        Assert.Equal(
            await page.Page.Locator("main > .cautions .caution h4:visible").AllInnerTextsAsync(),
            await page.Dialog.Locator(".caution h4:visible").AllInnerTextsAsync()
        );
        await page.Press("read");
        await page.Answer();
        Assert.Equal("Ready?", await page.Heading());
        Assert.Matches("^Ends at 10:\\d\\d$", await page.Text("ends-ready"));
        await page.Press("start");
        Assert.Equal("New to you: take your time, and go on when you know it.", await page.Text("learn"));
        await page.Page.EvaluateAsync("window.hearing()");
        var list = await Listed.Of(page.Page, "2");
        Assert.Equal(list[0].What, await page.Heading());
        var (waits, lengths) = (0, list.Select(s => s.Seconds).ToArray());
        for (var times = 0; times < 500 && !(await page.Stand()).StartsWith("done", StringComparison.Ordinal); times++)
        {
            if ((await page.Stand()).StartsWith("waiting", StringComparison.Ordinal))
            {
                await page.Press("go");
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
        await Key(page, "read", "Enter");
        await page.Answer();
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
        foreach (var act in new[] { "longer", "softer", "pause", "hurts" })
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
            await page.Dialog.Locator("[data-panel='end'] .note").InnerTextAsync()
        );

        var next = await GuidedPage.Open(content, context, "session-2.html", "2026-12-16T10:00:00");
        await next.Lead();
        await next.Press("read");
        await next.Press("no-pain");
        Assert.StartsWith(
            "Last time you stopped at Side-lying chest turn. Does it still hurt?",
            await next.Dialog.Locator("[data-still]:visible").InnerTextAsync(),
            StringComparison.Ordinal
        );
        await next.AnswerMore(still: "yes");
        Assert.Contains(
            "Side-lying chest turn",
            await next.Dialog.Locator("[data-panel='ready'] .note").InnerTextAsync(),
            StringComparison.Ordinal
        );
        Assert.Equal("no", await next.Page.EvaluateAsync<string>("gradus.log.all()[0].morning"));
    }

    [Theory]
    [InlineData("0", "no", "no", "all", "Ready?", "")]
    [InlineData("2", "no", "no", "all", "Ready?", "")]
    [InlineData("3", "no", "no", "all", "Not today", "this week has nothing easier. Rest today.")]
    [InlineData("0", "yes", "no", "all", "Do another session today", "Ankles and hips, short")]
    [InlineData("0", "no", "no", "10", "Do another session today", "Ankles and hips, short")]
    [InlineData("6", "no", "no", "all", "Not today", "Ask Ottoline Marsh before you train again:")]
    [InlineData("0", "no", "yes", "all", "Not today", "Ask Ottoline Marsh before you train again:")]
    public async Task The_answers_choose_among_the_coachs_own_sessions(
        string pain,
        string worse,
        string ill,
        string minutes,
        string heading,
        string says
    )
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Press("read");
        await page.Answer(pain, worse, ill, minutes);
        Assert.Equal(heading, await page.Heading());
        Assert.Contains(says, await page.Dialog.InnerTextAsync(), StringComparison.Ordinal);
        if (heading == "Do another session today")
        {
            await page.Dialog.Locator("[data-take]:visible").ClickAsync();
            await page.Page.WaitForURLAsync("**/session-5.html#lead");
            await page.Press("read");
            Assert.Equal("Ready?", await page.Heading());
        }
    }

    /// <summary>The short session is made for little time, not for a sore place: of the right ankle and of either knee it loads
    /// with all that it has, so then there is nothing easier, and nothing is offered.</summary>
    [Theory]
    [InlineData("wrist", "right", true)]
    [InlineData("ankle", "left", true)]
    [InlineData("ankle", "right", false)]
    [InlineData("knee", "left", false)]
    public async Task What_loads_a_sore_place_is_not_offered_as_the_easier_session(string where, string side, bool isOffered)
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Press("read");
        await page.Answer(pain: "3", where: where, side: side);
        Assert.Equal(isOffered ? "Do another session today" : "Not today", await page.Heading());
        Assert.Equal(isOffered ? 1 : 0, await page.Dialog.Locator("[data-take]:visible").CountAsync());
        if (!isOffered)
            return;
        await page.Dialog.Locator("[data-take]:visible").ClickAsync();
        await page.Page.WaitForURLAsync("**/session-5.html#lead");
        await page.Press("read");
        Assert.Equal("Ready?", await page.Heading());
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
        await page.Press("softer");
        Assert.Equal("", await page.Dialog.Locator("[data-fill='detail']").TextContentAsync());
    }

    [Fact]
    public async Task A_missing_answer_is_asked_for_and_nothing_starts()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Press("read");
        await page.Press("pain");
        await page.Dialog.Locator("[data-form='where'] [type='submit']").ClickAsync();
        Assert.Equal("Please answer: Where", await page.Dialog.Locator("[data-missing]:visible").InnerTextAsync());
        Assert.True(await page.Page.EvaluateAsync<bool>("document.activeElement.matches('[data-where]')"));
        await page.Dialog.Locator("[data-form='where'] [data-where]").SelectOptionAsync("knee");
        await page.Dialog.Locator("[data-form='where'] [data-level]").SelectOptionAsync("1");
        await page.Dialog.Locator("[data-form='where'] [type='submit']").ClickAsync();
        await page.Dialog.Locator("[data-form='questions'] [type='submit']").ClickAsync();
        Assert.Equal(
            "Please answer: Was any pain worse the morning after your last session?",
            await page.Dialog.Locator("[data-missing]:visible").InnerTextAsync()
        );
        Assert.Equal("How are you today?", await page.Heading());
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
        Assert.Equal("You were at step 2: Side-lying chest turn: hold, left side.", await soon.Text("at-step"));
        await soon.Press("resume");
        Assert.Equal("waiting 1 80", await soon.Stand());
        await soon.Page.CloseAsync();
        var late = await GuidedPage.Open(content, context, "session-1.html", "2026-12-14T16:30:00");
        await late.Lead();
        Assert.Equal("Does anything hurt right now?", await late.Heading());
    }

    /// <summary>What begins in the second week brings signs that nobody has read in the first.</summary>
    [Fact]
    public async Task Signs_that_come_with_another_week_are_read_too()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var first = await GuidedPage.Open(content, context, "session-1.html", "2026-12-07T10:00:00");
        await first.Lead();
        var known = await first.Dialog.Locator(".caution h4:visible").AllInnerTextsAsync();
        await first.Press("read");
        await first.Press("close");
        await first.Lead();
        Assert.Equal("Does anything hurt right now?", await first.Heading());

        var second = await GuidedPage.Open(content, context, "session-1.html", "2026-12-14T10:00:00");
        await second.Page.EvaluateAsync("gradus.log.choose(2, gradus.today())");
        await second.Page.ReloadAsync();
        await second.Lead();
        Assert.Equal("Read these cautions", await second.Heading());
        Assert.NotEmpty((await second.Dialog.Locator(".caution h4:visible").AllInnerTextsAsync()).Except(known));
        await second.Press("read");
        await second.Press("close");
        await second.Lead();
        Assert.Equal("Does anything hurt right now?", await second.Heading());
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

    /// <summary>Tab until the keyboard is on that button, then the key.</summary>
    private static async Task Key(GuidedPage page, string act, string key)
    {
        await page.TabTo($"[data-act='{act}']");
        await page.Page.Keyboard.PressAsync(key);
    }
}
