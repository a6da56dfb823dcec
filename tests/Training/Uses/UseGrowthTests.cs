using Gradus.Planning;

namespace Gradus.Tests.Trainings;

/// <summary>How the uses of a programme grow beside each other, by hand after dose-line.md, How it grows.</summary>
public sealed class UseGrowthTests
{
    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2 x hold 30-45 s, rest 20 s, on left")
        .Exercise("lean", "2 x hold 30-45 s, rest 20 s, on left")
        .Exercise("turn", "2 x hold 30-45 s, rest 20 s, on right")
        .Exercise("lift", "2 x raise 5-8 s, rest 20 s, on left")
        .Exercise("brace", "2-3 x press 10-12 s at 50%, rest 20 s, on left");

    /// <summary>sway would be 30, 30, 35, 45. Where lean begins in week 3, on the same side by the same measure, it stays in that
    /// week, and walks in the three others: 30, 35, 45.</summary>
    [Theory]
    [InlineData("- use: sway", "30 30 35 45")]
    [InlineData("- use: sway\n- use: lean\n  from-week: 3", "30 35 35 45")]
    [InlineData("- use: sway\n- use: turn\n  from-week: 3", "30 30 35 45")]
    [InlineData("- use: sway\n- use: lift\n  from-week: 3", "30 30 35 45")]
    [InlineData("- use: sway\n- use: lean", "30 30 35 45")]
    public void No_use_grows_in_the_week_in_which_other_work_of_its_kind_begins(string uses, string holds) =>
        Assert.Equal(holds, Holds(Library.Member("ansel", [uses], 4).Plan("ansel"), 0));

    /// <summary>What goes by the days of play is in no week's total, and keeps nothing from growing.</summary>
    [Fact]
    public void What_begins_before_play_keeps_nothing_from_growing() =>
        Assert.Equal(
            "30 30 35 45",
            Holds(
                Library
                    .Member("ansel", ["- use: sway", "- use: lean\n  from-week: 3"], 4)
                    .Edit(
                        "clients/ansel/programme.md",
                        "name: Session 2\n    days: [Mon]",
                        "name: Session 2\n    days: before play"
                    )
                    .Plan("ansel"),
                0
            )
        );

    /// <summary>An alternate session has the doses of the same exercise in the session that it stands for; in rounds it walks by
    /// itself, with one set.</summary>
    [Theory]
    [InlineData("- use: sway", "- use: sway", "30 30 35 45")]
    [InlineData("- use: sway\n  by-week: { 1: 2 x hold 30 s, 3: 2 x hold 38 s }", "- use: sway", "30 30 38 38")]
    [InlineData("- use: sway", "- use: sway\n  by-week: { 1: 2 x hold 32 s }", "32 32 32 32")]
    [InlineData("- use: sway\n  from-week: 3", "- use: sway", "30 30 30 35")]
    public void A_session_instead_of_another_has_its_doses(string uses, string instead, string holds)
    {
        var alternate = string.Concat(instead.Split('\n').Select(line => $"      {line}\n"));
        var plan = Library
            .Member("ansel", [uses], 4)
            .Edit(
                "clients/ansel/programme.md",
                "sessions:",
                $"alternate:\n  - name: Away\n    instead-of: Session 1\n    kind: travel\n    do:\n{alternate}sessions:"
            )
            .Plan("ansel");
        Assert.Equal(holds, Holds(plan, 1));
    }

    /// <summary>It is not cut again, and growth stands still over it.</summary>
    [Fact]
    public void A_line_for_a_lighter_week_is_that_weeks_alone()
    {
        var plan = Library.Member("ansel", ["- use: sway\n  by-week: { 3: 1 x hold 20 s }"], 4, lighter: "[3]").Plan("ansel");
        Assert.Equal("30 35 20 45", Holds(plan, 0));
        Assert.Equal("Planned easy week: 1 set fewer, −15 s a hold", plan.Sessions[0].Uses[0].Doses[2].Change);
    }

    /// <summary>sway begins in week 1 all the same, so it does not grow in week 2, where lean begins.</summary>
    [Fact]
    public void A_line_for_a_lighter_week_is_no_beginning() =>
        Assert.Equal(
            "30 30 20 35",
            Holds(
                Library
                    .Member(
                        "ansel",
                        ["- use: sway\n  by-week: { 3: 1 x hold 20 s }\n- use: lean\n  from-week: 2"],
                        4,
                        lighter: "[3]"
                    )
                    .Plan("ansel"),
                0
            )
        );

    [Fact]
    public void In_rounds_only_the_amounts_grow() =>
        Assert.Equal(
            ["1 2: 2 x press 10 s at 50%, on left", "3: 2 x press 12 s at 50%, on left"],
            Library
                .Member("ansel", ["- rounds: 2\n  of:\n    - use: brace\n    - use: turn"], 3)
                .Plan("ansel")
                .Sessions[0]
                .Uses[0]
                .Doses()
        );

    private static string Holds(Plan plan, int session) =>
        string.Join(
            ' ',
            plan.Sessions[session]
                .Uses[0]
                .Doses.SelectMany(d => d.Weeks.Select(w => (Week: w, d.Dose)))
                .OrderBy(d => d.Week)
                .Select(d => d.Dose.Actions.First().Amount)
        );
}
