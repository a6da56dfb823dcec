using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>Rufus's pages on days of his programme: six weeks from Monday 7 December 2026, sessions on Monday, Thursday and
/// Saturday.</summary>
public sealed class WeekOnPageTests(PublishedContent content)
{
    [Theory]
    [InlineData("2026-12-01T10:00:00", "It begins on Monday 7 December 2026.", "")]
    [InlineData("2026-12-07T10:00:00", "Week 1 of 6", "Ankles and hips: Today")]
    [InlineData("2026-12-15T10:00:00", "Week 1 of 6", "Ankles and hips: Next")]
    [InlineData("2026-12-19T10:00:00", "Week 1 of 6", "Hips and weapon arm: Today")]
    [InlineData("2027-01-16T23:59:00", "Week 1 of 6", "Hips and weapon arm: Today")]
    public async Task The_calendar_says_what_is_due(string now, string says, string due)
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, now);
        var page = await Open(context, "index.html");
        Assert.Contains(says, await page.Locator(".now").InnerTextAsync(), StringComparison.Ordinal);
        var first = page.Locator(".cards > li").First;
        if (due.Length == 0)
            Assert.Equal(0, await page.Locator(".say:visible").CountAsync());
        else
            Assert.Equal(
                due,
                $"{await first.Locator("h3").InnerTextAsync()}: {await first.Locator(".say:visible").InnerTextAsync()}"
            );
    }

    /// <summary>Tamsin has a session twice a week, on days of her own: it may be done until it was done twice, and not on two
    /// days in a row.</summary>
    [Fact]
    public async Task Where_no_day_is_fixed_the_page_says_that_it_may_be_done_today()
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, Days[0]);
        foreach (var (now, open) in Days.Zip([true, false, true, false]))
        {
            await context.Clock.SetFixedTimeAsync(now);
            var page = await context.NewPageAsync();
            await page.GotoAsync("file://" + content.PagesOf("tamsin").First(p => Path.GetFileName(p) == "index.html"));
            var card = page.Locator(".cards > li", new() { HasText = "Legs and middle" }).First;
            Assert.Equal(open, await card.GetByText("Any day, also today").IsVisibleAsync());
            Assert.False(open && await page.GetByText("Nothing is planned for today.").IsVisibleAsync());
            if (open)
                await page.EvaluateAsync(
                    "session => gradus.log.add({ day: gradus.today(), week: gradus.weekNow().week, session })",
                    int.Parse(await card.GetAttributeAsync("data-due") ?? "", System.Globalization.CultureInfo.InvariantCulture)
                );
        }
    }

    private static readonly string[] Days =
    [
        "2026-12-15T10:00:00",
        "2026-12-16T10:00:00",
        "2026-12-17T10:00:00",
        "2026-12-19T10:00:00",
    ];

    [Theory]
    [InlineData("2026-12-14T10:00:00", 2)]
    [InlineData("2026-12-21T10:00:00", 3)]
    public async Task What_has_nothing_in_this_week_is_put_away_with_it(string now, int shown)
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, now);
        var page = await Open(context, "index.html");
        await page.EvaluateAsync("gradus.log.choose(gradus.weekNow().most, gradus.today())");
        await page.ReloadAsync();
        var others = page.Locator(".instead > li:visible");
        Assert.Equal(shown, await others.CountAsync());
        foreach (var other in await others.AllAsync())
            Assert.Equal(1, await other.Locator(".lengths time:visible").CountAsync());
    }

    /// <summary>Who opens a session that this week has not gets its steps by one button; never a page without any.</summary>
    [Fact]
    public async Task A_session_of_another_week_is_one_button_away()
    {
        var offered = 0;
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-14T10:00:00");
        foreach (var path in content.PagesOf("rufus").Where(p => p.Contains("/session-", StringComparison.Ordinal)))
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync("file://" + path);
            await page.Locator(".by-the-second > summary").ClickAsync();
            if (await page.Locator("section.weeks:visible").CountAsync() == 0)
            {
                await page.Locator("button[data-all-weeks]").ClickAsync();
                offered++;

                // With the steps come what is done in them and the signs.
                foreach (var part in new[] { "article.exercise", ".cautions .caution", ".not-with li" })
                    Assert.Equal(await page.Locator(part).CountAsync(), await page.Locator($"{part}:visible").CountAsync());
            }

            Assert.True(await page.Locator("section.weeks:visible").CountAsync() > 0, path);
            Assert.True(await page.Locator("article.exercise:visible").CountAsync() > 0, path);
        }

        Assert.True(offered > 0);
    }

    [Fact]
    public async Task What_was_done_carries_the_weeks_on_in_every_page_and_in_the_one_file()
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-21T10:00:00");
        await Done(context, "2026-12-07T10:00:00", "session-1.html");
        await Done(context, "2026-12-10T10:00:00", "session-4.html");
        var page = await Done(context, "2026-12-12T10:00:00", "session-2.html");
        Assert.Equal("Saved on this phone. Your weeks go on from it.", await page.GetByRole(AriaRole.Status).InnerTextAsync());

        await context.Clock.SetFixedTimeAsync("2026-12-14T10:00:00");
        Assert.Equal(
            ["Weeks 1"],
            (await ShownWeeks(context, "session-2.html", "2026-12-12T11:00:00"))
                .Select(w => "Weeks " + w.Split(' ')[1][..1])
                .Distinct()
        );
        Assert.Contains("Week 2 of 6", await TextOf(context, "index.html", "2026-12-14T10:00:00"), StringComparison.Ordinal);
        Assert.Contains("Week 2 of 6", await TextOf(context, "all-pages.html", "2026-12-14T10:00:00"), StringComparison.Ordinal);

        // Longer than a week without training, and longer than two.
        Assert.Contains(
            "You have been away for more than 7 days. Repeat the last week that you finished.",
            await TextOf(context, "index.html", "2026-12-21T10:00:00"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "You have been away for more than 14 days. Begin again with week 1.",
            await TextOf(context, "index.html", "2026-12-27T10:00:00"),
            StringComparison.Ordinal
        );
        Assert.Equal(["Week 1"], await ShownWeeks(context, "session-1.html", "2026-12-27T10:00:00"));
    }

    /// <summary>In the fifth week, with nothing done: nobody begins with what others have grown to, and who has trained says
    /// so.</summary>
    [Fact]
    public async Task Who_opens_it_late_begins_with_week_1_and_is_asked()
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2027-01-04T10:00:00");
        Assert.Equal(["Week 1"], await ShownWeeks(context, "session-1.html", "2027-01-04T10:00:00"));
        var page = await Open(context, "index.html");
        var said = await page.Locator(".now").InnerTextAsync();
        Assert.Contains("Week 1 of 6", said, StringComparison.Ordinal);
        Assert.Contains("No session is saved here yet, so this is week 1.", said, StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "Week 5", Exact = true }).ClickAsync();
        Assert.Contains("Week 5 of 6", await TextOf(context, "index.html", "2027-01-04T11:00:00"), StringComparison.Ordinal);
        Assert.Equal(["Week 5"], await ShownWeeks(context, "session-1.html", "2027-01-04T11:00:00"));
    }

    [Fact]
    public async Task An_easier_week_is_one_button_away_and_every_week_another()
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-28T10:00:00");
        var page = await Open(context, "index.html");
        await page.GetByRole(AriaRole.Button, new() { Name = "Week 4", Exact = true }).ClickAsync();
        Assert.Contains("Week 4 of 6", await page.Locator(".now").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(["Week 4"], await ShownWeeks(context, "session-1.html", "2026-12-28T10:00:00"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Week 2", Exact = true }).ClickAsync();
        Assert.Contains("Week 2 of 6", await page.Locator(".now").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(0, await page.GetByRole(AriaRole.Button, new() { Name = "Week 5", Exact = true }).CountAsync());
        Assert.Equal(["Week 2"], await ShownWeeks(context, "session-1.html", "2026-12-28T10:00:00"));
        var session = await OpenList(context, "session-1.html");
        await session.GetByRole(AriaRole.Button, new() { Name = "Show every week" }).ClickAsync();
        Assert.Equal(await session.Locator(".steps").CountAsync(), await session.Locator(".steps:visible").CountAsync());
        Assert.Equal(["Week 2"], await ShownWeeks(context, "session-2.html", "2026-12-28T11:00:00"));
    }

    [Fact]
    public async Task What_was_noted_can_be_taken_back()
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-07T10:00:00");
        var page = await Done(context, "2026-12-07T10:00:00", "session-1.html");
        Assert.Contains("Done today", await TextOf(context, "index.html", "2026-12-07T10:00:00"), StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        Assert.Equal("Mark as done", await page.EvaluateAsync<string>("document.activeElement.textContent"));
        Assert.DoesNotContain("Done today", await TextOf(context, "index.html", "2026-12-07T10:00:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_browser_that_keeps_nothing_says_so_and_the_page_stays_whole()
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-14T10:00:00");
        await context.AddInitScriptAsync(
            "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });"
        );
        var page = await Open(context, "session-1.html");
        var errors = new List<string>();
        page.PageError += (_, error) => errors.Add(error);
        await page.GetByRole(AriaRole.Button, new() { Name = "Mark as done" }).ClickAsync();
        Assert.Equal(
            "Nothing can be saved here. Please note it on paper.",
            await page.GetByRole(AriaRole.Status).InnerTextAsync()
        );
        Assert.Empty(errors);
        var home = await Open(context, "index.html");
        home.PageError += (_, error) => errors.Add(error);
        await home.GetByRole(AriaRole.Button, new() { Name = "Week 2", Exact = true }).ClickAsync();
        Assert.Contains("Week 2 of 6", await home.Locator(".now").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Empty(errors);
    }

    [Theory]
    [InlineData("not json")]
    [InlineData("{}")]
    [InlineData("[1, null, {\"day\": \"x\"}, {\"day\": \"2026-12-07\", \"week\": \"one\", \"session\": 1}]")]
    public async Task What_somebody_else_wrote_there_is_left_out(string kept)
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-14T10:00:00");
        var page = await Open(context, "index.html");
        await page.EvaluateAsync(
            "kept => localStorage.setItem('gradus.' + document.querySelector('[data-course]').dataset.course + '.log', kept)",
            kept
        );
        Assert.Contains("Week 1 of 6", await TextOf(context, "index.html", "2026-12-14T10:00:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_that_is_kept_has_a_name_in_it()
    {
        await using var context = await content.ContextAsync(new() { Offline = true }, "2026-12-07T10:00:00");
        var page = await Done(context, "2026-12-07T10:00:00", "session-1.html");
        var kept = await page.EvaluateAsync<string>("JSON.stringify(Object.entries(localStorage))");
        Assert.Matches(
            "^\\[\\[\"gradus\\.[0-9a-f]{16}\\.log\",\"\\[\\{[^a-z]*day[^a-z]*week[^a-z]*session[^a-z]*\\}\\]\"\\]\\]$",
            kept
        );
    }

    /// <summary>A line that scripts remove says what cannot be done without them; every week shows.</summary>
    [Fact]
    public async Task Without_scripts_every_week_shows_and_a_line_says_why()
    {
        await using var plain = await content.ContextAsync(new() { Offline = true, JavaScriptEnabled = false });
        await using var scripted = await content.ContextAsync(new() { Offline = true });
        foreach (var name in new[] { "index.html", "session-1.html" })
        {
            Assert.StartsWith(
                "Scripts do not run here.",
                await (await Open(plain, name)).Locator(".no-script").InnerTextAsync(),
                StringComparison.Ordinal
            );
            Assert.Equal(0, await (await Open(scripted, name)).Locator(".no-script").CountAsync());
            var page = name == "index.html" ? await Open(plain, name) : await OpenList(plain, name);
            Assert.Equal(
                await page.Locator("[data-weeks]").CountAsync(),
                await page.Locator("[data-weeks]:visible").CountAsync()
            );
        }
    }

    private async Task<IPage> Done(IBrowserContext context, string now, string session)
    {
        await context.Clock.SetFixedTimeAsync(now);
        var page = await Open(context, session);
        await page.GetByRole(AriaRole.Button, new() { Name = "Mark as done" }).ClickAsync();
        return page;
    }

    private async Task<string> TextOf(IBrowserContext context, string name, string now)
    {
        await context.Clock.SetFixedTimeAsync(now);
        return await (await Open(context, name)).Locator("main").InnerTextAsync();
    }

    private async Task<IReadOnlyList<string>> ShownWeeks(IBrowserContext context, string name, string now)
    {
        await context.Clock.SetFixedTimeAsync(now);
        return await (await OpenList(context, name)).Locator(".weeks:visible h3").AllInnerTextsAsync();
    }

    /// <summary>With the list of its steps open.</summary>
    private async Task<IPage> OpenList(IBrowserContext context, string name)
    {
        var page = await Open(context, name);
        await page.Locator(".by-the-second > summary").ClickAsync();
        return page;
    }

    private async Task<IPage> Open(IBrowserContext context, string name)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + content.PagesOf("rufus").First(p => Path.GetFileName(p) == name));
        return page;
    }
}
