using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Three uses in turn: one with both sides, one on a side, one without. Times by hand.</summary>
public sealed class RoundsOfThreeTests
{
    private const string Three = "of: [{ use: sway }, { use: brace }, { use: nod }]";

    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2 x hold 20 s, rest 25 s, each side, switch 8 s", "harder: brace")
        .Exercise("brace", "press 10 s at 40%, on right")
        .Exercise("nod", "hold 6 s", position: "sitting", trains: "cervical flexion");

    /// <summary>Get ready 3·5; a round 20 + 8 + 20, 12, 10, 12, 6 = 88; two rounds with a rest of 50: 15 + 176 + 50 = 241. Of
    /// these work 2·(40 + 10 + 6) = 112, rest 50, moving about 15 + 2·8 + 4·12 = 79.</summary>
    [Theory]
    [InlineData("each side")]
    [InlineData("alternate sides")]
    public void A_rest_and_a_change_of_their_own(string side)
    {
        var weeks = Library
            .Exercise("sway", $"2 x hold 20 s, rest 25 s, {side}, switch 8 s")
            .Member("ansel", [$"- rounds: 2\n  rest: 50 s\n  change: 12 s\n  {Three}"])
            .Plan("ansel")
            .Only();
        Assert.Equal(
            [
                "GetReady L 5",
                "Hold L 20",
                "Switch R 8",
                "Hold R 20",
                "Transition R 12",
                "GetReady R 5",
                "Press R 10",
                "Transition - 12",
                "GetReady - 5",
                "Hold - 6",
                "Rest L 50",
                "Hold L 20",
                "Switch R 8",
                "Hold R 20",
                "Transition R 12",
                "Press R 10",
                "Transition - 12",
                "Hold - 6",
            ],
            weeks.Steps()
        );
        Assert.Equal(241, weeks.Total.Value);
        Assert.Equal((112, 50, 79), (weeks.Shares.Work.Value, weeks.Shares.Rest.Value, weeks.Shares.Moving.Value));
    }

    /// <summary>Standing to standing 10, standing to sitting 30, and back 30: 15 + 2·(48 + 10 + 10 + 30 + 6) + 30 =
    /// 253.</summary>
    [Fact]
    public void Neither_rest_nor_change() => Assert.Equal(253, Total("rounds: 2"));

    /// <summary>Only the rest is given: 15 + 208 + 50. Only the change: 15 + 2·88 + 30, because going back to the first use is no
    /// change within a round.</summary>
    [Fact]
    public void One_of_them_alone()
    {
        Assert.Equal(15 + 208 + 50, Total("rounds: 2\n  rest: 50 s"));
        Assert.Equal(15 + 176 + 30, Total("rounds: 2\n  change: 12 s"));
        Assert.Equal(15 + (3 * 104) + (2 * 50), Total("rounds: 3\n  rest: 50 s"));
    }

    /// <summary>One round has nothing behind it: 15 + 48 + 10 + 10 + 30 + 6 = 119.</summary>
    [Fact]
    public void A_single_round_has_no_rest() => Assert.Equal(119, Total("rounds: 1\n  rest: 50 s"));

    /// <summary>4 rounds, 60 % of them 2.4: 2. Week 1: 15 + 4·88 + 3·50 = 517; week 2: 15 + 2·88 + 50 = 241.</summary>
    [Fact]
    public void A_lighter_week_has_fewer_rounds_of_all_three()
    {
        var plan = Library
            .Member("ansel", [$"- rounds: 4\n  rest: 50 s\n  change: 12 s\n  {Three}"], 2, lighter: "[2]")
            .Plan("ansel");
        Assert.Equal([517, 241], plan.Sessions[0].Weeks.Select(w => w.Total.Value));
        Assert.All(plan.Sessions[0].Uses, u =>
            Assert.StartsWith("Planned easy week: 2 sets fewer", u.Doses[1].Change, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Lines_of_weeks_give_the_work_and_the_rounds_give_the_sets()
    {
        var plan = Library
            .Member(
                "ansel",
                [
                    "- rounds: 3\n  rest: 50 s\n  of: [{ use: sway, side: left, by-week: { 1: hold 10 s, 3: hold 15 s } "
                        + "}, { use: brace }]",
                ],
                3
            )
            .Plan("ansel");
        Assert.Equal(["1 2: 3 x hold 10 s, on left", "3: 3 x hold 15 s, on left"], plan.Sessions[0].Uses[0].Doses());
        Assert.Equal([30, 45], plan.Sessions[0].Uses[0].Doses.Select(d => d.Seconds.Value));
    }

    /// <summary>A pause stands inside a set and stays: 3·5 + 2·4 = 23 a round. What one side has more would be a set of no
    /// round.</summary>
    [Fact]
    public void A_pause_stays_and_a_set_more_goes()
    {
        var plan = Library
            .Exercise("sway", "2 x 3 x raise 5 s, pause 4 s, rest 20 s, each side, plus 1 x on left")
            .Member("ansel", ["- rounds: 2\n  rest: 50 s\n  of: [{ use: sway }, { use: brace }]"])
            .Plan("ansel");
        Assert.Equal(["1: 2 x 3 x raise 5 s, pause 4 s, each side"], plan.Sessions[0].Uses[0].Doses());
        Assert.Equal(2 * (23 + 10 + 23), plan.Sessions[0].Uses[0].Doses[0].Seconds.Value);
    }

    [Fact]
    public void A_version_takes_its_place_in_the_rounds()
    {
        var plan = Library
            .Member(
                "ansel",
                [
                    "- rounds: 2\n  rest: 50 s\n  change: 12 s\n  of: [{ use: nod }, { use: sway, by-week: { 1: hold 20 "
                        + "s, 2: { use: harder } } }]",
                ],
                2
            )
            .Plan("ansel");
        Assert.Equal(
            [
                "GetReady - 5",
                "Hold - 6",
                "Transition R 12",
                "GetReady R 5",
                "Press R 10",
                "Rest - 50",
                "Hold - 6",
                "Transition R 12",
                "Press R 10",
            ],
            plan.Sessions[0].Weeks[1].Steps()
        );
        Assert.Equal(
            [
                "In rounds with The sway and The brace.",
                "Go through them 2 times, one set of each a round, and rest 50 seconds between rounds.",
            ],
            plan.Sessions[0].Uses[0].Notes
        );
    }

    /// <summary>Two blocks with the same figures stay two: each has its own rest.</summary>
    [Fact]
    public void Blocks_behind_each_other_are_not_run_together()
    {
        const string Block = "- rounds: 2\n  rest: 50 s\n  change: 12 s\n  of: [{ use: brace }, { use: nod }]";
        var steps = Library.Member("ansel", [$"{Block}\n{Block}"]).Plan("ansel").Only().Steps();
        Assert.Equal(2, steps.Count(s => s.StartsWith("Rest", StringComparison.Ordinal)));
        Assert.Equal(4, steps.Count(s => s.StartsWith("GetReady", StringComparison.Ordinal)));
        Assert.Equal(
            ["Press R 10", "Transition - 12", "Hold - 6", "Transition R 30", "GetReady R 5", "Press R 10"],
            steps[6..12]
        );
    }

    /// <summary>What is counted before there is a plan is what the plan shows.</summary>
    [Fact]
    public void Times_without_words_are_those_of_the_plan()
    {
        var practice = Library.Member("ansel", [$"- rounds: 3\n  rest: 50 s\n  {Three}\n- use: sway"], 3, lighter: "[2]");
        var read = practice.Read();
        var counted = Timelines.Of(Planned.Uses(read, read.Clients.Single()), 3, read.Card.Settings);
        Assert.Equal(
            practice.Plan("ansel").Sessions[0].Weeks.Select(w => (w.Weeks, w.Total, w.About)),
            counted.Select(w => (w.Weeks, w.Total, w.About))
        );
        Assert.Equal(2, counted.Count);
    }

    private static int Total(string head) => Library.Member("ansel", [$"- {head}\n  {Three}"]).Plan("ansel").Only().Total.Value;
}
