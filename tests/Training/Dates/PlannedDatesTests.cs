using System.Globalization;
using Gradus.Planning;

namespace Gradus.Tests.Trainings;

/// <summary>The days of a calendar, counted by hand from Monday 4 January 2027.</summary>
public sealed class PlannedDatesTests
{
    [Theory]
    [InlineData("[Mon]", 2, "01-04 01-11")]
    [InlineData("[Sun]", 2, "01-10 01-17")]
    [InlineData("[Thu, Mon]", 2, "01-04 01-07 01-11 01-14")]
    [InlineData("every 2 days", 2, "01-04 01-06 01-08 01-10 01-12 01-14 01-16")]
    [InlineData("every 3 days", 3, "01-04 01-07 01-10 01-13 01-16 01-19 01-22")]
    [InlineData("2 a week, a day between", 2, "")]
    [InlineData("3 a week, a day between", 2, "")]
    [InlineData("before play", 2, "")]
    public void Only_fixed_days_are_planned(string days, int weeks, string planned) =>
        Assert.Equal(planned, Days(Plan(days, weeks)));

    [Theory]
    [InlineData("[Mon, Thu]", "01-07 01-11 01-14 01-18")]
    [InlineData("every 2 days", "01-06 01-08 01-10 01-12 01-14 01-16 01-18")]
    public void Weeks_begin_on_the_first_day_of_the_programme(string days, string planned) =>
        Assert.Equal(
            planned,
            Days(Practice(days, 2).Edit("clients/ansel/programme.md", "2027-01-04", "2027-01-06").Plan("ansel"))
        );

    /// <summary>A week that a pause touches begins anew on the day after it; nothing stands in a pause, nor in what it cuts
    /// off.</summary>
    [Theory]
    [InlineData("[Mon, Thu]", "{ from: 2027-01-11, until: 2027-01-17 }", "01-04 01-07 01-18 01-21 01-25 01-28")]
    [InlineData("[Mon, Thu]", "{ from: 2027-01-13, until: 2027-01-17 }", "01-04 01-07 01-18 01-21 01-25 01-28")]
    [InlineData("[Mon, Thu]", "{ from: 2027-01-12, until: 2027-01-12 }", "01-04 01-07 01-14 01-18 01-21 01-25")]
    [InlineData("[Mon]", "{ from: 2027-01-05, until: 2027-01-05 }", "01-11 01-18 01-25")]
    [InlineData("[Mon]", "{ from: 2027-01-24, until: 2027-01-24 }", "01-04 01-11 01-25")]
    [InlineData(
        "[Mon]",
        "[{ from: 2027-01-18, until: 2027-01-24 }, { from: 2027-01-11, until: 2027-01-13 }]",
        "01-04 01-25 02-01"
    )]
    public void A_pause_shifts_the_days_behind_it(string days, string pause, string planned) =>
        Assert.Equal(planned, Days(Paused(Practice(days, 3), pause).Plan("ansel")));

    /// <summary>So a calendar moves the events that it has already.</summary>
    [Fact]
    public void A_session_keeps_its_name_for_calendars_when_a_pause_moves_it() =>
        Assert.Equal(
            Plan("[Mon, Thu]", 3).Dates.Select(d => d.Uid),
            Paused(Practice("[Mon, Thu]", 3), "{ from: 2027-01-11, until: 2027-01-17 }").Plan("ansel").Dates.Select(d => d.Uid)
        );

    private static LittlePractice Paused(LittlePractice practice, string pause) =>
        practice.Edit("clients/ansel/programme.md", "sessions:\n", $"pause: {pause}\nsessions:\n");

    [Fact]
    public void Days_go_on_across_the_last_of_February_and_of_the_year() =>
        Assert.Equal(
            "02-27 02-29 03-02 03-04",
            Days(Practice("every 2 days", 1).Edit("clients/ansel/programme.md", "2027-01-04", "2028-02-27").Plan("ansel"))
        );

    [Fact]
    public void Two_years_have_all_their_days() => Assert.Equal(2 * 104, Plan("[Mon, Sat]", 104).Dates.Count);

    /// <summary>Three sets of 30 s with 15 s between are 120 s, with 5 s to get ready 125 s; 60 % of three sets, half up, are
    /// two: 75 s and 5 s.</summary>
    [Fact]
    public void A_lighter_week_has_its_days_and_its_shorter_length()
    {
        var plan = Plan("[Mon]", 3, lighter: "[2]");
        Assert.Equal("01-04 01-11 01-18", Days(plan));
        Assert.Equal([125, 80, 125], plan.Dates.Select(d => d.Length.Value));
        Assert.NotEqual(plan.Dates[0].Note, plan.Dates[1].Note);
        Assert.Equal(plan.Dates[0].Note, plan.Dates[2].Note);
    }

    [Fact]
    public void A_week_in_which_a_session_is_empty_has_no_day_of_it()
    {
        var practice = Practice("[Mon]", 4)
            .Edit("clients/ansel/programme.md", "- use: sway", "- use: sway\n        from-week: 2\n        until-week: 3");
        Assert.Equal("01-11 01-18", Days(practice.Plan("ansel")));
    }

    [Fact]
    public void The_same_session_keeps_its_name_for_calendars_when_an_earlier_week_empties()
    {
        var without = Practice("[Mon, Thu]", 3)
            .Edit("clients/ansel/programme.md", "- use: sway", "- use: sway\n        from-week: 2")
            .Plan("ansel");
        Assert.Equal(Plan("[Mon, Thu]", 3).Dates.Skip(2).Select(d => d.Uid), without.Dates.Select(d => d.Uid));
    }

    [Fact]
    public void Sessions_of_one_day_stand_in_their_order_and_those_without_a_day_are_left_out()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, on left")
            .Member("ansel", ["- use: sway", "- use: sway\n  side: left", "- use: sway\n  side: left"])
            .Edit("clients/ansel/programme.md", "name: Session 2\n    days: [Mon]", "name: Session 2\n    days: before play")
            .Edit("clients/ansel/programme.md", "name: Session 3\n    days: [Mon]", "name: Session 3\n    days: [Sun, Mon]")
            .Plan("ansel");
        Assert.Equal(
            ["01-04 Exercises, session 1", "01-04 Exercises, session 3", "01-10 Exercises, session 3"],
            plan.Dates.Select(d => $"{Day(d)} {d.Title}")
        );
        Assert.All(plan.Dates, d => Assert.Contains($"session-{d.Title[^1]}.html", d.Note, StringComparison.Ordinal));
    }

    [Fact]
    public void Two_clients_never_share_a_name_for_calendars()
    {
        var practice = Club
            .Empty.Exercise("sway", "hold 30 s, on left")
            .Member("ansel", ["- use: sway"], 3)
            .Member("brida", ["- use: sway"], 3);
        Assert.Empty(practice.Plan("ansel").Dates.Select(d => d.Uid).Intersect(practice.Plan("brida").Dates.Select(d => d.Uid)));
    }

    [Fact]
    public void What_is_planned_is_what_the_weeks_hold()
    {
        var plan = Plan("every 3 days", 9, lighter: "[4, 8]");
        Assert.Equal(
            plan.Weeks.SelectMany(w => w.Sessions).SelectMany(s => s.Dates.Select(date => (date, s.Seconds))),
            plan.Dates.Select(d => (d.Date, d.Length))
        );
    }

    private static string Days(Plan plan) => string.Join(' ', plan.Dates.Select(Day));

    private static string Day(PlannedDate date) => date.Date.ToString("MM-dd", CultureInfo.InvariantCulture);

    private static Plan Plan(string days, int weeks, string lighter = "[]") => Practice(days, weeks, lighter).Plan("ansel");

    private static LittlePractice Practice(string days, int weeks, string lighter = "[]") =>
        Club
            .Empty.Exercise("sway", "3 x hold 30 s, rest 15 s, on left")
            .Member("ansel", ["- use: sway"], weeks, lighter: lighter)
            .Edit("clients/ansel/programme.md", "    days: [Mon]", $"    days: {days}");

    /// <summary>Get ready 5 s and 30 s of hold: the second session of a day begins 35 s after the first.</summary>
    [Fact]
    public void Of_two_sessions_on_one_day_the_second_begins_when_the_first_ends()
    {
        var dates = Club
            .Empty.Exercise("sway", "hold 30 s, on left")
            .Member("ansel", ["- use: sway", "- use: sway"])
            .Edit("clients/ansel/client.yaml", "zone: Europe/London", "zone: Europe/London\nhour: \"18:30\"")
            .Plan("ansel")
            .Dates;
        Assert.Equal(
            [new DateTime(2027, 1, 4, 18, 30, 0, DateTimeKind.Utc), new DateTime(2027, 1, 4, 18, 30, 35, DateTimeKind.Utc)],
            dates.Select(d => d.Start!.Value)
        );
    }
}
