namespace Gradus.Tests.Browser;

/// <summary>Stop, it hurts: two safer ways, and a third for a pain that is dull and little. And what was hardly begun is not
/// told as done.</summary>
public sealed class GuideStoppedTests(PublishedContent content)
{
    [Theory]
    [InlineData("2", "dull", "knee", true)]
    [InlineData("1", "dull", "wrist", true)]
    [InlineData("3", "dull", "knee", false)]
    [InlineData("1", "sharp", "knee", false)]
    [InlineData("1", "", "knee", false)]
    [InlineData("", "dull", "knee", false)]
    [InlineData("1", "dull", "", false)]
    [InlineData("1", "dull", "chest", false)]
    public async Task To_go_on_more_gently_is_offered_for_a_dull_pain_that_is_little(
        string level,
        string feel,
        string where,
        bool isOffered
    )
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Press("hurts");
        Assert.False(await page.Dialog.Locator("[data-act='ease-off']").IsVisibleAsync());
        await page.Say(level, feel, where);
        Assert.Equal(isOffered, await page.Dialog.Locator("[data-act='ease-off']").IsVisibleAsync());
        string[] ways =
        [
            "Skip this exercise",
            "End session",
            .. isOffered ? ["It is dull, 2 at most: go on gently"] : Array.Empty<string>(),
        ];
        Assert.Equal(
            ways,
            await page.Dialog.Locator("[data-panel='hurts'] > .choices > li:not([hidden]) button").AllInnerTextsAsync()
        );
    }

    /// <summary>Sharp, or above the bound of the practice: the coach is asked before the next session, and above it nothing goes
    /// on.</summary>
    [Theory]
    [InlineData("7", "dull", true, true)]
    [InlineData("7", "sharp", true, true)]
    [InlineData("2", "sharp", false, true)]
    [InlineData("3", "dull", false, false)]
    public async Task Who_has_a_sharp_or_a_great_pain_is_told_to_ask_first(string level, string feel, bool isOver, bool mustAsk)
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Press("hurts");
        await page.Say(level, feel, "wrist");
        await page.Press("end-exercise");
        Assert.Equal(isOver, await page.Heading() == "That is all for today");
        if (!isOver)
        {
            Assert.Equal(
                "Left out today: Side-lying chest turn.",
                await page.Dialog.Locator("[data-panel='play'] [data-fill='left-out']").InnerTextAsync()
            );

            // It is not forgotten when the page is closed and opened again.
            await page.Page.ReloadAsync();
            await page.Lead();
            await page.Press("resume");
            await page.PlayOn(40);
        }

        Assert.Equal(mustAsk, await page.Dialog.Locator("[data-fill='ask-first']").IsVisibleAsync());
    }

    /// <summary>The hold of 80 seconds goes on with what is left of it, and counts when it is over.</summary>
    [Fact]
    public async Task To_go_on_more_gently_goes_on_with_the_same_side()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PutForward(6);
        await page.PutForward(20);
        await page.Press("hurts");
        await page.Say("2", "dull");
        await page.Press("ease-off");
        Assert.Equal("paused 1 59", await page.Stand());
        Assert.Equal("Use less effort from now on.", await page.Text("said"));
        Assert.EndsWith("Use less effort from now on.", await page.Text("detail"), StringComparison.Ordinal);
        await page.Press("go");
        await page.PutForward(59);
        Assert.Equal(
            "true 2",
            await page.Page.EvaluateAsync<string>(
                "(() => { const { state } = Object.values(gradus.guides).find(one => one.dialog.open).guide; return "
                    + "`${state.did[1]} ${state.felt.level}`; })()"
            )
        );
        Assert.StartsWith("running 2", await page.Stand(), StringComparison.Ordinal);
    }

    /// <summary>One piece of work is done, and everything else is passed over.</summary>
    [Fact]
    public async Task A_session_of_which_next_to_nothing_was_done_is_not_told_as_done()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PutForward(6);
        await page.PutForward(80);
        await PassOver(page);
        Assert.Equal("That is all for today", await page.Heading());
        var did = await page.Text("did");
        Assert.Matches("^You did 1 of [0-9]+ steps\\.$", did);
        Assert.Equal("Saved on this phone; this does not count as a session.", await page.Text("kept"));
        await page.Dialog.Locator("[data-log='message']:visible").ClickAsync();
        Assert.Matches(
            $"^Mon 14 Dec, week 2, Ankles and hips: {did["You did ".Length..]} Stopped early. Effort –, pain –.\n"
                + $"gradus 2026-12-14 [0-9:]{{5}}; .*; kind full; stopped; steps {did["You did ".Length..^" steps.".Length]}; "
                + "minutes [0-9.]+; pain-before 0; sets .*; sum [0-9a-f]{8}$",
            await page.Dialog.Locator("[data-log-text]").InputValueAsync()
        );
        Assert.Equal(0, await page.Page.EvaluateAsync<int>("gradus.log.rows().length"));
        Assert.Equal(1, await page.Page.EvaluateAsync<int>("gradus.log.all().length"));
        await page.Press("close");
        Assert.True(await page.Page.Locator("[data-do]").First.IsVisibleAsync());
    }

    /// <summary>A third of the pieces of work is enough, one fewer is not.</summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(-1, false)]
    public async Task A_third_of_the_work_counts_as_a_session(int more, bool counts)
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Page.EvaluateAsync(
            "more => { const { guide } = Object.values(gradus.guides).find(one => one.dialog.open); const work = "
                + "guide.steps.map((step, i) => i).filter(i => gradus.isWork(guide.steps[i])); "
                + "for (const i of work.slice(0, Math.ceil(work.length / 3) + more)) guide.state.did[i] = true; }",
            more
        );
        await PassOver(page);
        Assert.Equal(counts ? 1 : 0, await page.Page.EvaluateAsync<int>("gradus.log.rows().length"));
        Assert.Equal(
            counts ? "Saved on this phone. Your weeks go on from it." : "Saved on this phone; this does not count as a session.",
            await page.Text("kept")
        );
    }

    /// <summary>Forward to the end: the key is pressed by the page itself, as often as it takes.</summary>
    private static Task PassOver(GuidedPage page) =>
        page.Page.EvaluateAsync(
            """
            () => {
              const { dialog, guide } = Object.values(gradus.guides).find(one => one.dialog.open);
              for (let times = 0; times < 300 && guide.state.phase !== 'done'; times++)
                dialog.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true, cancelable: true }));
            }
            """
        );
}
