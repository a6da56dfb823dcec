using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>What the guided session asks so that the coach hears it: a day without, the morning after, what it was like where it
/// hurt, and what was measured.</summary>
public sealed class GuideReturnTests(PublishedContent content)
{
    [Theory]
    [InlineData("time", "Why not today?")]
    [InlineData("other", "Why not today?")]
    [InlineData("ill", "Not today")]
    [InlineData("health", "Not today")]
    [InlineData("pain", "Not today")]
    public async Task A_day_without_leaves_a_line_and_is_no_session(string reason, string heading)
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Press("skip");
        await page.Dialog.Locator($"[data-skip='{reason}']").ClickAsync();
        Assert.Equal(heading, await page.Heading());
        await page.Dialog.Locator("[data-act='close']:visible").ClickAsync();
        Assert.Equal(reason, await Log(page, "all()[0].skip"));
        Assert.Equal("0 1", await Log(page, "rows().length + ' ' + gradus.log.all().length"));
        Assert.Contains(
            $",{reason},,,\r\n",
            await Log(page, "all() && gradus.writeLog(gradus.log.all())"),
            StringComparison.Ordinal
        );

        // Said again on the same day, the last counts.
        await page.Lead();
        await page.Press("skip");
        await page.Dialog.Locator("[data-skip='time']").ClickAsync();
        Assert.Equal("time 1", await Log(page, "all()[0].skip + ' ' + gradus.log.all().length"));
    }

    [Fact]
    public async Task Too_ill_to_train_is_noted_by_itself()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Answer(ill: "yes");
        Assert.Equal("Not today", await page.Heading());
        Assert.Equal("ill", await Log(page, "all()[0].skip"));
    }

    [Fact]
    public async Task The_morning_after_has_a_place_and_a_level_where_somebody_says_them()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Page.EvaluateAsync(
            "gradus.log.add({ day: '2026-12-12', start: '18:00', week: 1, session: 1, did: 5, of: 5, exercises: [] })"
        );
        await page.Lead();
        await page.Press("some");
        var form = page.Dialog.Locator("[data-form='questions']");
        await form.Locator("[name='pain'][value='no']").CheckAsync();
        await form.Locator("[name='ill'][value='no']").CheckAsync();
        var then = form.Locator("[data-worse-where]");
        Assert.False(await then.IsVisibleAsync());
        await form.Locator("[name='worse'][value='yes']").CheckAsync();
        await then.Locator("[data-where]").SelectOptionAsync("knee");
        await then.Locator("[data-side]").SelectOptionAsync("left");
        await then.Locator("[data-level]").SelectOptionAsync("4");
        await form.Locator("[type='submit']").ClickAsync();
        Assert.Equal("4 left knee yes", await Log(page, "all().map(r => gradus.painText(r.after) + ' ' + r.morning)[0]"));
    }

    [Theory]
    [InlineData("numb")]
    [InlineData("snap")]
    [InlineData("swollen")]
    [InlineData("no-weight")]
    public async Task What_a_clinician_should_see_today_ends_the_session_whatever_is_pressed(string feel)
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Press("hurts");
        await page.Say("2", feel);
        await page.Press("end-exercise");
        Assert.Equal("That is all for today", await page.Heading());
        await Assertions.Expect(page.Dialog.GetByText("See a doctor or a physiotherapist today.")).ToBeVisibleAsync();
        Assert.Equal(
            $"{feel} {feel} false",
            await Log(page, "all().map(r => [r.feel, r.exercises[0].feel, r.done].join(' '))[0]")
        );
    }

    [Fact]
    public async Task A_dull_pain_does_not()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.Press("hurts");
        await page.Say("2", "dull");
        await page.Press("end-session");
        await Assertions.Expect(page.Dialog.GetByText("See a doctor or a physiotherapist today.")).ToBeHiddenAsync();
    }

    /// <summary>Three tries a side; those that lie more than 1.5 cm apart are asked again (common practice, no source).</summary>
    [Fact]
    public async Task Three_numbers_a_side_are_kept_and_far_apart_is_said()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.OpenAt(
            context,
            content.PagesOf("nuala").First(p => Path.GetFileName(p) == "session-2.html"),
            "2026-12-14T10:00:00"
        );
        await page.Begin();
        await page.PlayOn(40);
        var fields = page.Dialog.Locator("[data-measured]:visible");
        Assert.Equal(2, await fields.CountAsync());
        await Fill(fields.Nth(0), "9.5", "10", "11.5");
        await Assertions.Expect(fields.Nth(0).Locator("[data-again]")).ToBeVisibleAsync();
        await Fill(fields.Nth(0), "9.5", "10", "11");
        await Assertions.Expect(fields.Nth(0).Locator("[data-again]")).ToBeHiddenAsync();
        await Fill(fields.Nth(1), "8", "8.5", "8.5");
        await page.Dialog.Locator("[data-form='log'] [type='submit']").ClickAsync();
        var rows = JsonNode.Parse(await Log(page, "all() && JSON.stringify(gradus.log.all()[0].exercises)"));
        Assert.Equal(
            """[["left",[9.5,10,11]],["right",[8,8.5,8.5]]]""",
            new JsonArray([
                .. (rows?.AsArray() ?? []).Select(r =>
                    (JsonNode)new JsonArray(r?["side"]?.DeepClone(), r?["measured"]?.DeepClone())
                ),
            ]).ToJsonString()
        );

        static async Task Fill(ILocator part, params string[] values)
        {
            for (var i = 0; i < values.Length; i++)
                await part.Locator("[data-try]").Nth(i).FillAsync(values[i]);
        }
    }

    private static Task<string> Log(GuidedPage page, string what) =>
        page.Page.EvaluateAsync<string>($"String(gradus.log.{what})");
}
