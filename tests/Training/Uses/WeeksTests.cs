using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Trainings;

/// <summary>dose-line.md, What a week asks.</summary>
public sealed class WeeksTests
{
    [Theory]
    [InlineData(1, "", "Week 1")]
    [InlineData(2, "", "Weeks 1 and 2")]
    [InlineData(3, "", "Weeks 1 to 3")]
    [InlineData(4, "[3]", "Weeks 1, 2 and 4|Week 3")]
    [InlineData(5, "[2, 4]", "Weeks 1, 3 and 5|Weeks 2 and 4")]
    [InlineData(5, "[1, 2]", "Weeks 1 and 2|Weeks 3 to 5")]
    public void Weeks_with_the_same_steps_stand_together(int weeks, string lighter, string headings)
    {
        var plan = Club
            .Empty.Exercise("sway", "2 x hold 30 s, rest 20 s, each side")
            .Member("ansel", ["- use: sway"], weeks, lighter: lighter.Length > 0 ? lighter : "[]")
            .Plan("ansel");
        Assert.Equal(headings.Split('|'), plan.Sessions[0].Weeks.Select(w => w.Heading));
    }

    [Fact]
    public void A_line_holds_until_the_next_one_and_nothing_is_done_before_the_first()
    {
        var plan = Plan("by-week: { 2: 2 x hold 30 s, 4: 3 x hold 45 s }", weeks: 5);
        Assert.Equal(
            ["2 3: 2 x hold 30 s, rest 20 s, each side", "4 5: 3 x hold 45 s, rest 20 s, each side"],
            plan.Sessions[0].Uses[0].Doses()
        );
        Assert.Equal(["Weeks 2 and 3", "Weeks 4 and 5"], plan.Sessions[0].Weeks.Select(w => w.Heading));
    }

    [Fact]
    public void A_line_takes_the_terms_it_does_not_name_from_the_exercise()
    {
        var plan = Plan(
            "by-week:\n    1: 2 x hold 30 s, on rear leg\n    2: 2 x hold 30 s, rest 40 s\n    3: hold 60 s\n    4: 2 x "
                + "hold 30 s, alternate sides",
            weeks: 4
        );
        Assert.Equal(
            [
                "1: 2 x hold 30 s, rest 20 s, on left",
                "2: 2 x hold 30 s, rest 40 s, each side",
                "3: 1 x hold 60 s, each side",
                "4: 2 x hold 30 s, rest 20 s, alternate sides",
            ],
            plan.Sessions[0].Uses[0].Doses()
        );
    }

    /// <summary>By hand for 2-3 x hold 30-60 s over weeks 2 to 5: 60, 70, 90 and 110 s, which is 17, 29 and 22 per cent
    /// more.</summary>
    [Fact]
    public void Without_lines_a_dose_grows_over_the_weeks_of_use() =>
        Assert.Equal(
            [
                "2: 2 x hold 30 s, rest 20 s, each side",
                "3: 2 x hold 35 s, rest 20 s, each side",
                "4: 2 x hold 45 s, rest 20 s, each side",
                "5: 2 x hold 55 s, rest 20 s, each side",
            ],
            Plan("from-week: 2\n  until-week: 5", weeks: 6).Sessions[0].Uses[0].Doses()
        );

    [Fact]
    public void One_week_of_use_gives_the_low_end() =>
        Assert.Equal(["4: 2 x hold 30 s, rest 20 s, each side"], Plan("from-week: 4", weeks: 4).Sessions[0].Uses[0].Doses());

    /// <summary>60 % of the sets of the last full week, half up: 2 · 0.6 = 1.2 gives 1, which has no rest. Growth stands
    /// still over it.</summary>
    [Fact]
    public void A_lighter_week_has_fewer_sets_and_growth_stands_still() =>
        Assert.Equal(
            [
                "1: 2 x hold 30 s, rest 20 s, each side",
                "2: 1 x hold 30 s, each side",
                "3: 2 x hold 35 s, rest 20 s, each side",
                "4: 1 x hold 35 s, each side",
            ],
            Plan("from-week: 1", weeks: 4, lighter: "[2, 4]").Sessions[0].Uses[0].Doses()
        );

    [Fact]
    public void The_share_of_a_lighter_week_is_a_setting()
    {
        var plan = Club
            .Empty.Settings("{ lighter-share: 20 % }")
            .Exercise("sway", "3 x hold 30 s, rest 20 s, each side")
            .Member("ansel", ["- use: sway"], 2, lighter: "[2]")
            .Plan("ansel");
        Assert.Equal(["1: 3 x hold 30 s, rest 20 s, each side", "2: 1 x hold 30 s, each side"], plan.Sessions[0].Uses[0].Doses());
    }

    [Fact]
    public void A_week_in_which_one_exercise_is_not_done_leads_straight_to_the_next()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, on left")
            .Exercise("brace", "press 10 s at 40%, on left")
            .Exercise("walk", "hold 5 s, on left")
            .Member("ansel", ["- use: sway\n- use: brace\n  from-week: 2\n- use: walk"], 2)
            .Plan("ansel");
        Assert.Equal(
            ["GetReady L 5", "Hold L 30", "Transition L 10", "GetReady L 5", "Hold L 5"],
            plan.Sessions[0].Weeks[0].Steps()
        );
        Assert.Equal(8, plan.Sessions[0].Weeks[1].Steps.Count);
        Assert.Equal(new ExerciseId("walk"), plan.Sessions[0].Weeks[0].Steps[2].Exercise);
    }

    [Fact]
    public void An_exercise_that_is_never_done_is_not_in_the_plan()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, on left")
            .Exercise("late", "hold 30 s, on left")
            .Member("ansel", ["- use: sway\n- use: late\n  until-week: 2\n  by-week: { 3: hold 30 s }"], 3)
            .Plan("ansel");
        Assert.Equal([new("sway")], plan.Exercises.Select(e => e.Id));
        Assert.Equal([new("sway")], plan.Sessions[0].Uses.Select(u => u.Exercise));
    }

    private static Plan Plan(string use, int weeks, string lighter = "[]") =>
        Club
            .Empty.Exercise("sway", "2-3 x hold 30-60 s, rest 20 s, each side")
            .Member("ansel", [$"- use: sway\n  {use}"], weeks, lighter: lighter)
            .Plan("ansel");
}
