namespace Gradus.Tests.Browser;

/// <summary>What is said once is not lost: what hurt, whoever closes the page afterwards; what was answered, whoever sends it at
/// once; and what keeps somebody from training, on page one too.</summary>
public sealed class GuideKeepsTests(PublishedContent content)
{
    /// <summary>Not pressed away: the exercise is left out until the coach knows of it, and asked about every time.</summary>
    [Theory]
    [InlineData("untold", true)]
    [InlineData("yes", true)]
    [InlineData("no", false)]
    public async Task A_sharp_pain_is_asked_about_though_the_page_was_closed(string still, bool isLeftOut)
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Press("hurts");
        await page.Dialog.Locator("[name='feel'][value='sharp']").CheckAsync();
        await page.Press("end-exercise");
        await page.Dialog.Locator("[data-act='close']:visible").First.ClickAsync();
        await page.Page.CloseAsync();

        var later = await GuidedPage.Open(content, context, "session-1.html", "2026-12-17T10:00:00");
        await later.Lead();
        await later.Press("none");
        var question = later.Dialog.Locator("[data-still]:visible");
        Assert.Equal(3, await question.Locator("input:visible").CountAsync());
        await question.Locator($"[value='{still}']:visible").CheckAsync();
        await later.Dialog.Locator("[data-form='questions'] [type='submit']").ClickAsync();
        Assert.Equal("Ready?", await later.Heading());
        var note = later.Dialog.GetByText("Left out today: Side-lying chest turn.");
        Assert.Equal(isLeftOut, await note.Locator("visible=true").CountAsync() > 0);
    }

    /// <summary>A pain that the coach need not hear of first has two answers, as ever.</summary>
    [Fact]
    public async Task A_dull_one_is_yes_or_no()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Press("hurts");
        await page.Say("2", "dull");
        await page.Press("end-exercise");
        await page.Dialog.Locator("[data-act='close']:visible").First.ClickAsync();
        var later = await GuidedPage.Open(content, context, "session-1.html", "2026-12-17T10:00:00");
        await later.Lead();
        await later.Press("none");
        Assert.Equal(
            ["no", "yes"],
            await later
                .Dialog.Locator("[data-still] input:visible")
                .EvaluateAllAsync<string[]>("all => all.map(one => one.value)")
        );
    }

    [Fact]
    public async Task A_session_in_which_it_hurt_is_one_line_of_the_log_to_its_end()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Press("hurts");
        await page.Dialog.Locator("[name='feel'][value='sharp']").CheckAsync();
        await page.Press("end-exercise");
        Assert.Equal("1 false true", await Log(page));
        await page.Page.ReloadAsync();
        await page.Lead();
        await page.Press("resume");
        await page.PlayOn();
        Assert.Equal("1 true true", await Log(page));

        static Task<string> Log(GuidedPage page) =>
            page.Page.EvaluateAsync<string>(
                "(all => [all.length, all[0].done, all[0].exercises[0].stopped].join(' '))(gradus.log.all())"
            );
    }

    [Fact]
    public async Task What_is_sent_has_the_answers_in_it_saved_or_not()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PlayOn();
        var form = page.Dialog.Locator("[data-form='log']");
        await form.Locator("[data-effort]").SelectOptionAsync("4");
        await form.Locator("[data-level]").SelectOptionAsync("2");
        await page.Dialog.Locator("button[data-log='message']").ClickAsync();
        Assert.Contains(
            "Effort 4, pain 2",
            await page.Dialog.Locator("[data-log-text]").InputValueAsync(),
            StringComparison.Ordinal
        );
    }

    /// <summary>Beside a step that runs stands what tells of it, and of no other.</summary>
    [Fact]
    public async Task A_press_has_its_own_line_beside_it_and_a_pull_its_own()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        var seen = new Dictionary<string, string>();
        for (var times = 0; times < 200 && seen.Count < 2; times++)
        {
            var kind = await page.Dialog.Locator("[data-picture]").GetAttributeAsync("data-kind") ?? "";
            var title = await page.Text("what");
            if (title == "Seated hip turn-out" && kind is "press" or "pull")
                seen[kind] = string.Join(
                    " / ",
                    await page
                        .Dialog.Locator("[data-fill='doing'] li")
                        .EvaluateAllAsync<string[]>(
                            "all => all.filter(one => !one.hidden)"
                                + ".map(one => one.value + '. ' + one.textContent.split(' for ')[0])"
                        )
                );
            if (await page.Dialog.Locator("[data-act='in-place']:visible").CountAsync() > 0)
                await page.Press("in-place");
            else
                await page.PutForward(9);
        }

        Assert.Equal("1. Push the knee up into your hand", seen["press"]);
        Assert.Equal("2. Turn the effort round. Draw the knee down towards the floor", seen["pull"]);
    }

    [Theory]
    [InlineData("2026-12-21T10:00:00", "A doctor has to say first that you may train.", "{ alarm: 'chest', done: false }")]
    [InlineData("2027-01-18T10:00:00", null, "{}")]
    public async Task Page_one_offers_nothing_that_nobody_may_do(string now, string? says, string row)
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "index.html", now);
        await page.Page.EvaluateAsync(
            "gradus.log.add(Object.assign({ day: '2026-12-14', start: '18:00', week: 1, session: 1, did: 5, of: 5, "
                + $"exercises: [] }}, {row}))"
        );
        await page.Page.ReloadAsync();
        Assert.Equal(0, await page.Page.Locator("[data-go]:visible").CountAsync());
        if (says is not null)
            Assert.Equal(says, await page.Page.Locator(".cards > li").First.Locator(".say:visible").InnerTextAsync());
    }

    /// <summary>Tamsin's legs may be done on any day; her shoulder waits for Saturday.</summary>
    [Fact]
    public async Task What_may_be_done_today_stands_before_what_is_next()
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-09T10:00:00");
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + content.PagesOf("tamsin").First(p => Path.GetFileName(p) == "index.html"));
        Assert.Equal("Legs and middle", await page.Locator(".cards > li h3").First.InnerTextAsync());
    }
}
