using Gradus.Planning;

namespace Gradus.Tests.Planning;

/// <summary>When a client is measured again: four weeks from Monday 4 January 2027 that gain range of an ankle and the
/// chest.</summary>
public sealed class RetestWordsTests
{
    private const string Measured = " What is measured: ankle dorsiflexion; thoracic rotation.";

    private static readonly LittlePractice Practice = Club
        .Empty.Exercise("calf-hold", "2 x hold 30 s, each side")
        .Exercise("chest-turn", "2 x hold 30 s, each side", trains: "thoracic rotation")
        .Exercise("calf-hold-again", "2 x hold 30 s, each side")
        .Member("ada", ["- use: calf-hold\n- use: chest-turn\n- use: calf-hold-again"], weeks: 4);

    [Theory]
    [InlineData("2027-01-25", "Hesper Quill measures you again on Monday 25 January 2027.", 4)]
    [InlineData("2027-01-31", "Hesper Quill measures you again on Sunday 31 January 2027.", 4)]
    [InlineData("2027-01-10", "Hesper Quill measures you again on Sunday 10 January 2027.", 1)]
    [InlineData("2027-01-11", "Hesper Quill measures you again on Monday 11 January 2027.", 2)]
    [InlineData("2027-02-01", "Hesper Quill measures you again on Monday 1 February 2027.", null)]
    [InlineData("3", "Hesper Quill measures you again in this week.", 3)]
    public void It_is_said_in_the_week_it_falls_into_or_behind_the_last(string retest, string said, int? week)
    {
        var plan = Plan(retest);
        Assert.Equal(said + Measured, plan.RetestIn(week));
        Assert.All(Enumerable.Range(1, 4).Where(w => w != week), w => Assert.Null(plan.RetestIn(w)));
        Assert.Equal(week is null, plan.RetestIn(null) is not null);
    }

    [Fact]
    public void Where_nobody_has_said_when_nothing_is_said()
    {
        var plan = Practice.Plan("ada");
        Assert.Null(plan.Retest);
        Assert.All(Enumerable.Range(1, 4), w => Assert.Null(plan.RetestIn(w)));
        Assert.Null(plan.RetestIn(null));
    }

    [Fact]
    public void What_cannot_be_measured_or_is_not_gained_is_not_named()
    {
        var plan = Edited(
            Practice
                .Edit("exercises/chest-turn.md", "stage: gain", "stage: control")
                .With(
                    "motions.yaml",
                    "- id: trunk-steadiness\n  name: trunk steadiness\n  unit: none\n  paired: no\n  how: Stay still.\n"
                )
                .Edit("exercises/calf-hold-again.md", "trains: ankle dorsiflexion", "trains: trunk steadiness"),
            "3"
        );
        Assert.Equal("Hesper Quill measures you again in this week. What is measured: ankle dorsiflexion.", plan.RetestIn(3));
    }

    [Fact]
    public void Where_more_range_is_not_the_aim_no_motion_is_named()
    {
        var mobile = Practice.Edit("clients/ada/answers.yaml", "very-mobile-joints: no", "very-mobile-joints: yes");
        Assert.Equal("Hesper Quill measures you again in this week.", Edited(mobile, "3").RetestIn(3));
    }

    [Fact]
    public void Its_day_is_in_the_calendar_behind_the_sessions_of_that_day_and_is_a_whole_one()
    {
        var dates = Edited(Practice.Edit("clients/ada/client.yaml", "zone:", "hour: \"18:30\"\nzone:"), "2027-01-25").Dates;
        Assert.Equal(5, dates.Count);
        var (session, measured) = (dates[^2], dates[^1]);
        Assert.Equal(session.Date, measured.Date);
        Assert.NotNull(session.Start);
        Assert.Null(measured.Start);
        Assert.Equal(new DateOnly(2027, 1, 25), measured.Date);
        Assert.Equal("Measured again", measured.Title);
        Assert.Equal("Your coach measures you again. Open weeks.html in your folder of exercises.", measured.Note);
        Assert.Equal(5, dates.Select(d => d.Uid).Distinct().Count());
        Assert.Equal(measured.Uid, Plan("2027-02-01").Dates[^1].Uid);
    }

    [Fact]
    public void It_stands_among_the_sessions_in_the_order_of_the_days() =>
        Assert.Equal(
            ["01-04", "01-11", "01-13", "01-18", "01-25"],
            Plan("2027-01-13").Dates.Select(d => $"{d.Date.Month:00}-{d.Date.Day:00}")
        );

    [Fact]
    public void A_week_without_a_day_is_no_date() => Assert.Equal(4, Plan("3").Dates.Count);

    [Fact]
    public void In_German_it_is_German()
    {
        var german = Practice.Edit("clients/ada/client.yaml", "language: en", "language: de");
        Assert.StartsWith(
            "Hesper Quill misst dich am Montag, 25. Januar 2027 noch einmal. Gemessen wird: Sprunggelenk, Fußspitze hochziehen; ",
            Edited(german, "2027-01-25").RetestIn(4),
            StringComparison.Ordinal
        );
    }

    private static Plan Plan(string retest) => Edited(Practice, retest);

    private static Plan Edited(LittlePractice practice, string retest) =>
        practice.Edit("clients/ada/programme.md", "weeks: 4\n", $"weeks: 4\nretest: {retest}\n").Plan("ada");
}
