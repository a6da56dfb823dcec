using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Trainings;

/// <summary>Rounds as practice-format.md and the page of the rule rounds-against-dose have them: one set of each use a
/// round.</summary>
public sealed class RoundsTests
{
    /// <summary>By hand. Round 1: get ready 5, hold 20; change 15, get ready 5, press 10; rest 40. Round 2: hold 20, change 15,
    /// press 10. 5 + 20 + 15 + 5 + 10 + 40 + 20 + 15 + 10 = 140.</summary>
    [Fact]
    public void Two_uses_take_turns_and_each_is_got_ready_for_once()
    {
        var weeks = Rounds("rounds: 2\n  rest: 40 s\n  change: 15 s").Only();
        Assert.Equal(
            [
                "GetReady L 5",
                "Hold L 20",
                "Transition L 15",
                "GetReady L 5",
                "Press L 10",
                "Rest L 40",
                "Hold L 20",
                "Transition L 15",
                "Press L 10",
            ],
            weeks.Steps()
        );
        Assert.Equal(140, weeks.Total.Value);
    }

    /// <summary>Without rest and change it takes what it takes to get there: 10 s, because position and equipment stay.</summary>
    [Fact]
    public void Where_no_times_are_given_the_usual_transitions_stand() =>
        Assert.Equal(
            [
                "GetReady L 5",
                "Hold L 20",
                "Transition L 10",
                "GetReady L 5",
                "Press L 10",
                "Transition L 10",
                "Hold L 20",
                "Transition L 10",
                "Press L 10",
            ],
            Rounds("rounds: 2").Only().Steps()
        );

    [Fact]
    public void A_time_of_nothing_is_no_step() =>
        Assert.Equal(
            ["GetReady L 5", "Hold L 20", "GetReady L 5", "Press L 10", "Hold L 20", "Press L 10"],
            Rounds("rounds: 2\n  rest: 0 s\n  change: 0 s").Only().Steps()
        );

    /// <summary>Each round has both sides and its own change between them.</summary>
    [Theory]
    [InlineData("each side")]
    [InlineData("alternate sides")]
    public void Both_sides_are_worked_in_every_round(string side)
    {
        var weeks = Rounds("rounds: 2\n  rest: 40 s\n  change: 15 s", $"3 x hold 20 s, rest 25 s, {side}, switch 8 s").Only();
        Assert.Equal(
            [
                "GetReady L 5",
                "Hold L 20",
                "Switch R 8",
                "Hold R 20",
                "Transition L 15",
                "GetReady L 5",
                "Press L 10",
                "Rest L 40",
                "Hold L 20",
                "Switch R 8",
                "Hold R 20",
                "Transition L 15",
                "Press L 10",
            ],
            weeks.Steps()
        );
        var use = Rounds("rounds: 2\n  rest: 40 s\n  change: 15 s", $"3 x hold 20 s, rest 25 s, {side}, switch 8 s")
            .Sessions[0]
            .Uses[0];
        Assert.Equal(2 * (20 + 8 + 20), Assert.Single(use.Doses).Seconds.Value);
    }

    [Fact]
    public void The_rounds_are_the_sets_and_every_step_says_which()
    {
        var plan = Rounds("rounds: 3\n  rest: 40 s", "2 x hold 20 s, rest 25 s, on left");
        Assert.Equal(["1: 3 x hold 20 s, on left"], plan.Sessions[0].Uses[0].Doses());
        Assert.Equal(
            ["set 1 of 3", "set 2 of 3", "set 3 of 3"],
            plan.Only().Steps.Where(s => s.Kind == StepKind.Hold).Select(s => s.Detail)
        );
        Assert.Equal(
            [
                "In rounds with The brace.",
                "Go through them 3 times, one set of each a round, and rest 40 seconds between rounds.",
            ],
            plan.Sessions[0].Uses[0].Notes
        );
    }

    /// <summary>60 % of 4 rounds is 2.4, so 2 (dose-line.md, What a week asks).</summary>
    [Fact]
    public void A_lighter_week_has_fewer_rounds()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 20 s, on left")
            .Exercise("brace", "press 10 s at 40%, on left")
            .Member("ansel", ["- rounds: 4\n  rest: 40 s\n  of: [{ use: sway }, { use: brace }]"], 2, lighter: "[2]")
            .Plan("ansel");
        Assert.Equal(["1: 4 x hold 20 s, on left", "2: 2 x hold 20 s, on left"], plan.Sessions[0].Uses[0].Doses());
        Assert.Equal([4, 2], plan.Sessions[0].Weeks.Select(w => w.Steps.Count(s => s.Kind == StepKind.Press)));
    }

    [Fact]
    public void What_comes_before_and_behind_the_rounds_is_led_to_as_ever()
    {
        var weeks = Club
            .Empty.Exercise("sway", "hold 20 s, on left")
            .Exercise("brace", "press 10 s at 40%, on left")
            .Exercise("walk", "hold 5 s, on left", position: "supine")
            .Member(
                "ansel",
                ["- use: walk\n- rounds: 2\n  rest: 40 s\n  change: 15 s\n  of: [{ use: sway }, { use: brace }]\n- use: walk"]
            )
            .Plan("ansel")
            .Only();
        Assert.Equal(
            [
                "GetReady L 5",
                "Hold L 5",
                "Transition L 45",
                "GetReady L 5",
                "Hold L 20",
                "Transition L 15",
                "GetReady L 5",
                "Press L 10",
                "Rest L 40",
                "Hold L 20",
                "Transition L 15",
                "Press L 10",
                "Transition L 45",
                "GetReady L 5",
                "Hold L 5",
            ],
            weeks.Steps()
        );
    }

    [Fact]
    public void A_use_that_begins_later_joins_the_rounds_then()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 20 s, on left")
            .Exercise("brace", "press 10 s at 40%, on left")
            .Member("ansel", ["- rounds: 2\n  rest: 40 s\n  of: [{ use: sway }, { use: brace, from-week: 2 }]"], 2)
            .Plan("ansel");
        Assert.Equal(["GetReady L 5", "Hold L 20", "Rest L 40", "Hold L 20"], plan.Sessions[0].Weeks[0].Steps());
        Assert.Equal(9, plan.Sessions[0].Weeks[1].Steps.Count);
    }

    private static Plan Rounds(string head, string sway = "hold 20 s, on left") =>
        Club
            .Empty.Exercise("sway", sway)
            .Exercise("brace", "press 10 s at 40%, on left")
            .Member("ansel", [$"- {head}\n  of: [{{ use: sway }}, {{ use: brace }}]"])
            .Plan("ansel");
}
