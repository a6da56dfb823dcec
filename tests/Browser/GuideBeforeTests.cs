namespace Gradus.Tests.Browser;

/// <summary>What comes before the guided session: the cautions, the questions, and what follows from the answers.</summary>
public sealed class GuideBeforeTests(PublishedContent content)
{
    /// <summary>What begins in the second week brings signs that nobody has read in the first.</summary>
    [Fact]
    public async Task Who_is_sent_to_a_session_is_led_when_its_signs_are_read_and_to_the_new_ones_first()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var first = await GuidedPage.Open(content, context, "session-1.html#lead", "2026-12-07T10:00:00");
        await ReadFirst(first, isNew: false);
        await first.Lead();
        Assert.Equal("Is any of these true today?", await first.Heading());

        var again = await GuidedPage.Open(content, context, "session-1.html#lead", "2026-12-07T10:00:00");
        Assert.Equal("Is any of these true today?", await again.Heading());
        await again.Press("close");
        Assert.Equal("Start", await again.Page.Locator("[data-lead-in]").InnerTextAsync());
        await again.Page.EvaluateAsync("window.putDay(7 * 24 * 60 * 60 * 1000); gradus.log.choose(2, gradus.today())");

        var second = await GuidedPage.Open(content, context, "session-1.html#lead", "2026-12-14T10:00:00");
        await ReadFirst(second, isNew: true);
        await second.Lead();
        Assert.Equal("Is any of these true today?", await second.Heading());

        static async Task ReadFirst(GuidedPage page, bool isNew)
        {
            Assert.Equal(0, await page.Dialog.CountAsync());
            Assert.Equal(isNew, await page.Page.Locator("[data-lead-unread]").IsVisibleAsync());
            Assert.Equal("I have read this: start", await page.Page.Locator("[data-lead-in]").InnerTextAsync());
            var top = await page.Page.EvaluateAsync<double>("document.querySelector('.cautions h2').getBoundingClientRect().top");
            Assert.InRange(top, 0, 200);
        }
    }

    [Theory]
    [InlineData("0", "no", "no", "Ready?", "")]
    [InlineData("2", "no", "no", "Ready?", "")]
    [InlineData("3", "no", "no", "Not today", "this week has nothing easier. Rest today.")]
    [InlineData("0", "yes", "no", "Do another session today", "Ankles and hips, short")]
    [InlineData("6", "no", "no", "Not today", "Ask Ottoline Marsh before you train again:")]
    [InlineData("0", "no", "yes", "Not today", "Ask Ottoline Marsh before you train again:")]
    public async Task The_answers_choose_among_the_coachs_own_sessions(
        string pain,
        string worse,
        string ill,
        string heading,
        string says
    )
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Answer(pain, worse, ill);
        Assert.Equal(heading, await page.Heading());
        Assert.Contains(says, await page.Dialog.InnerTextAsync(), StringComparison.Ordinal);
        if (heading == "Do another session today")
        {
            await page.Dialog.Locator("[data-take]:visible").ClickAsync();
            await page.Page.WaitForURLAsync("**/session-5.html#*");
            await page.Lead();
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
        await page.Answer(pain: "3", where: where, side: side);
        Assert.Equal(isOffered ? "Do another session today" : "Not today", await page.Heading());
        Assert.Equal(isOffered ? 1 : 0, await page.Dialog.Locator("[data-take]:visible").CountAsync());
        if (!isOffered)
            return;
        await page.Dialog.Locator("[data-take]:visible").ClickAsync();
        await page.Page.WaitForURLAsync("**/session-5.html#*");
        await page.Lead();
        Assert.Equal("Ready?", await page.Heading());
    }

    [Fact]
    public async Task A_missing_answer_is_asked_for_and_nothing_starts()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Press("some");
        var form = page.Dialog.Locator("[data-form='questions']");
        await Missing("Does anything hurt right now?");
        var now = form.Locator("[data-pain-where]");
        Assert.False(await now.Locator("[data-where]").IsVisibleAsync());
        await form.Locator("[name='pain'][value='yes']").CheckAsync();
        await Missing("Where");
        Assert.True(await page.Page.EvaluateAsync<bool>("document.activeElement.matches('[data-where]')"));
        await now.Locator("[data-where]").SelectOptionAsync("knee");
        await now.Locator("[data-level]").SelectOptionAsync("1");
        await now.Locator("[data-side]").SelectOptionAsync("left");
        await Missing("Was any pain worse the morning after your last session?");
        Assert.Equal("Which?", await page.Heading());

        async Task Missing(string question)
        {
            await form.Locator("[type='submit']").ClickAsync();
            Assert.Equal($"Please answer: {question}", await page.Dialog.Locator("[data-missing]:visible").InnerTextAsync());
        }
    }
}
