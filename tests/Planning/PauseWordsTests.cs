using Gradus.Planning;
using Gradus.Rendering;

namespace Gradus.Tests.Planning;

/// <summary>What a client reads of a pause: four weeks from Monday 4 January 2027.</summary>
public sealed class PauseWordsTests
{
    private static readonly LittlePractice Practice = Club
        .Empty.Exercise("calf-hold", "2 x hold 30 s, each side")
        .Member("ada", ["- use: calf-hold"], weeks: 4);

    [Theory]
    [InlineData(
        "{ from: 2027-01-11, until: 2027-01-17 }",
        "Pause from Monday 11 January 2027 to Sunday 17 January 2027. Do nothing of this programme on these days. "
            + "Week 2 begins on Monday 18 January 2027."
    )]
    [InlineData(
        "{ from: 2027-01-13, until: 2027-01-17 }",
        "Pause from Wednesday 13 January 2027 to Sunday 17 January 2027. Do nothing of this programme on these days. "
            + "Week 2 begins on Monday 18 January 2027. Nothing is planned on the days right before the pause either, because "
            + "the week begins anew after it."
    )]
    [InlineData(
        "{ from: 2027-01-11, until: 2027-01-18 }",
        "Pause from Monday 11 January 2027 to Monday 18 January 2027. Do nothing of this programme on these days. "
            + "Week 2 begins on Tuesday 19 January 2027. After so long this page may offer you an earlier week: take that one."
    )]
    public void It_is_said_in_the_week_that_begins_after_it(string pause, string said)
    {
        var weeks = Plan(pause).Weeks;
        Assert.Equal(said, Assert.Single(weeks[1].Pauses).Sentence);
        Assert.All(weeks.Where(w => w.Number != 2), w => Assert.Empty(w.Pauses));
    }

    [Fact]
    public void Pages_and_their_scripts_are_told_the_days_and_why_stays_with_the_coach()
    {
        var plan = Plan("{ from: 2027-01-11, until: 2027-01-17, because: zzholidays }");
        Assert.Contains((PageData.Pauses, "2027-01-11/2027-01-17"), plan.Course.Attributes());
        Assert.Equal("2027-01-11/2027-01-17", plan.Weeks[1].Pauses[0].Days);
        Assert.Equal(
            "You have a pause until Sunday 17 January 2027. Do nothing of this programme until then. Week 2 begins on Monday 18 "
                + "January 2027.",
            plan.Weeks[1].Pauses[0].Now
        );
        var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), []) ?? throw new InvalidOperationException("No site.");
        Assert.All(site.Pages, p => Assert.DoesNotContain("zzholidays", p.Html, StringComparison.Ordinal));
        Assert.Contains(site.Pages, p => p.Html.Contains("data-on-pause", StringComparison.Ordinal));
    }

    [Fact]
    public void In_German_it_is_German() =>
        Assert.Equal(
            "Pause von Montag, 11. Januar 2027 bis Sonntag, 17. Januar 2027. Mach an diesen Tagen nichts aus diesem Programm. "
                + "Woche 2 beginnt am Montag, 18. Januar 2027.",
            Paused(
                Practice.Edit("clients/ada/client.yaml", "language: en", "language: de"),
                "{ from: 2027-01-11, until: 2027-01-17 }"
            )
                .Weeks[1]
                .Pauses[0]
                .Sentence
        );

    private static Plan Plan(string pause) => Paused(Practice, pause);

    private static Plan Paused(LittlePractice practice, string pause) =>
        practice.Edit("clients/ada/programme.md", "weeks: 4\n", $"weeks: 4\npause: {pause}\n").Plan("ada");
}
