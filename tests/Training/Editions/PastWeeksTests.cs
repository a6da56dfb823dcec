using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What counts as a change of weeks that are over.</summary>
public sealed class PastWeeksTests
{
    private static readonly EditionSession Evening = Session(
        "Evening",
        [2, 2, 2, 2],
        Use("lean", (1, 4, "left", "2 x hold 30 s"))
    );

    private static EditionSession Session(string name, Series<int> times, params EditionUse[] uses) =>
        new(name, "Mon, Thu", "", times, uses.ToSeries());

    private static EditionUse Use(string id, params (int From, int To, string Side, string Dose)[] asks) =>
        new(new(id), "", false, "", asks.Select(a => new EditionDose(a.From, a.To, a.Side, a.Dose)).ToSeries());

    private static string Changed(Series<EditionSession> now, int over = 2) =>
        string.Join(
            "; ",
            PastWeeks
                .Of([Evening], now, over)
                .Select(p => $"{p.Session} {p.Exercise?.Text ?? "times"} {string.Join(",", p.Weeks)}")
        );

    [Fact]
    public void The_same_is_no_change() => Assert.Equal("", Changed([Evening]));

    [Fact]
    public void Another_dose_in_a_week_that_is_over_is_one() =>
        Assert.Equal(
            "0 lean 2",
            Changed([Evening with { Uses = [Use("lean", (1, 1, "left", "2 x hold 30 s"), (2, 4, "left", "2 x hold 45 s"))] }])
        );

    [Fact]
    public void Another_dose_from_the_week_on_that_is_going_on_is_none() =>
        Assert.Equal(
            "",
            Changed([Evening with { Uses = [Use("lean", (1, 2, "left", "2 x hold 30 s"), (3, 4, "left", "2 x hold 45 s"))] }])
        );

    [Fact]
    public void Another_number_of_times_in_a_week_that_is_over_is_one()
    {
        Assert.Equal("0 times 1", Changed([Evening with { Times = [3, 2, 2, 2] }]));
        Assert.Equal("0 times 2", Changed([Evening with { Times = [2, 3, 3, 3] }]));
        Assert.Equal("", Changed([Evening with { Times = [2, 2, 3, 3] }]));
    }

    /// <summary>Nobody was asked to do what may be chosen in place of another, so it may be offered from any day on.</summary>
    [Theory]
    [InlineData("Evening", "")]
    [InlineData("", "1 sway 1,2")]
    public void A_session_that_was_not_there_is_one_unless_it_may_be_chosen(string insteadOf, string changed) =>
        Assert.Equal(
            changed,
            Changed([
                Evening,
                Session("Away", [0, 0, 0, 0], Use("sway", (1, 4, "left", "2 x hold 30 s"))) with
                {
                    InsteadOf = insteadOf,
                },
            ])
        );

    [Fact]
    public void Another_side_is_one() =>
        Assert.Equal("0 lean 1,2", Changed([Evening with { Uses = [Use("lean", (1, 4, "right", "2 x hold 30 s"))] }]));

    [Fact]
    public void Weeks_taken_from_an_exercise_that_stays_are_one() =>
        Assert.Equal("0 lean 1", Changed([Evening with { Uses = [Use("lean", (2, 4, "left", "2 x hold 30 s"))] }]));

    [Fact]
    public void An_exercise_that_is_taken_out_whole_is_none() =>
        Assert.Equal("", Changed([Evening with { Uses = [] }]) + Changed([]));

    [Fact]
    public void An_exercise_that_is_put_into_a_week_that_is_over_is_one()
    {
        var press = Use("press", (2, 4, "left", "2 x press 5 s"));
        Assert.Equal("0 press 2", Changed([Evening with { Uses = Evening.Uses.Append(press).ToSeries() }]));
        Assert.Equal("1 press 2", Changed([Evening, Session("Morning", [0, 1, 1, 1], press)]));
        Assert.Equal("", Changed([Evening, Session("Morning", [0, 1, 1, 1], press)], over: 1));
    }

    [Fact]
    public void Another_number_of_times_is_one_and_another_day_of_the_week_is_none()
    {
        Assert.Equal("0 times 1,2", Changed([Evening with { Days = "Mon, Thu, Sat", Times = [3, 3, 3, 3] }]));
        Assert.Equal("", Changed([Evening with { Days = "Tue, Fri" }]));
    }

    [Fact]
    public void A_session_that_is_called_otherwise_is_the_same() =>
        Assert.Equal("0 lean 1,2", Changed([Session("Night", [2, 2, 2, 2], Use("lean", (1, 4, "left", "3 x hold 30 s")))]));
}
