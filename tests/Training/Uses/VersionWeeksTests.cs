using Gradus.Planning;

namespace Gradus.Tests.Trainings;

/// <summary>The weeks of easier and harder versions, exact at both ends. brace grows 10 + round-half-up(10·k/n) s over its own
/// weeks.</summary>
public sealed class VersionWeeksTests
{
    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "hold 30-60 s, on left", "easier: lean\nharder: brace")
        .Exercise("lean", "hold 20-30 s, on left")
        .Exercise("brace", "press 10-20 s at 40%, on left");

    [Theory]
    [InlineData(
        "by-week: { 1: hold 30 s, 4: { use: harder } }",
        "sway 1 2 3: hold 30 | brace 4: press 10, 5: press 13, 6: press 16"
    )]
    [InlineData("by-week: { 1: hold 30 s, 6: { use: harder } }", "sway 1 2 3 4 5: hold 30 | brace 6: press 10")]
    [InlineData(
        "by-week: { 1: { use: harder } }",
        "brace 1: press 10, 2: press 11, 3: press 13, 4: press 15, 5: press 17, 6: press 20"
    )]
    [InlineData("by-week: { 1: { use: harder }, 2: hold 40 s }", "sway 2 3 4 5 6: hold 40 | brace 1: press 10")]
    [InlineData("by-week: { 3: { use: harder } }", "brace 3: press 10, 4: press 13, 5: press 16, 6: press 20")]
    [InlineData(
        "by-week: { 2: { use: easier }, 5: { use: harder } }",
        "lean 2: hold 20, 3: hold 24, 4: hold 30 | brace 5: press 10, 6: press 13"
    )]
    [InlineData("from-week: 3\n  by-week: { 1: { use: harder } }", "brace 3: press 10, 4: press 13, 5: press 16, 6: press 20")]
    [InlineData(
        "from-week: 3\n  by-week: { 1: { use: harder }, 5: hold 40 s }",
        "sway 5 6: hold 40 | brace 3: press 10, 4: press 13"
    )]
    [InlineData(
        "until-week: 4\n  by-week: { 1: hold 30 s, 2: { use: harder } }",
        "sway 1: hold 30 | brace 2: press 10, 3: press 13, 4: press 16"
    )]
    [InlineData("until-week: 4\n  by-week: { 2: { use: harder }, 6: hold 40 s }", "brace 2: press 10, 3: press 13, 4: press 16")]
    [InlineData(
        "by-week: { 1: { use: harder }, 3: hold 30 s, 5: { use: harder } }",
        "sway 3 4: hold 30 | brace 1: press 10, 2: press 13, 5: press 10, 6: press 13"
    )]
    [InlineData(
        "by-week: { 1: { use: harder }, 3: { use: harder } }",
        "brace 1: press 10, 2: press 13, 3: press 10, 4: press 13, 5: press 16, 6: press 20"
    )]
    public void From_its_entry_to_the_last_week_before_the_next(string use, string weeks)
    {
        var plan = Library.Member("ansel", [$"- use: sway\n  {use}"], 6).Plan("ansel");
        Assert.Equal(
            weeks,
            string.Join(" | ", plan.Sessions[0].Uses.Select(u => $"{u.Exercise} {string.Join(", ", u.Doses.Select(Written))}"))
        );
        Assert.Equal(
            plan.Sessions[0].Uses.SelectMany(u => u.Doses).SelectMany(d => d.Weeks).Order(),
            plan.Sessions[0].Weeks.SelectMany(w => w.Weeks).Order()
        );
    }

    /// <summary>The growth of a version stands still over a lighter week: 10, 13 in weeks 2 and 4; 60 % of 3 sets is 2.</summary>
    [Fact]
    public void A_lighter_week_is_taken_from_the_last_full_one_of_the_version()
    {
        var plan = Library
            .Exercise("brace", "3 x press 10-20 s at 40%, rest 30 s, on left")
            .Member("ansel", ["- use: sway\n  by-week: { 1: hold 30 s, 2: { use: harder } }"], 4, lighter: "[3]")
            .Plan("ansel");
        Assert.Equal(
            [
                "2: 3 x press 10 s at 40%, rest 30 s, on left",
                "3: 2 x press 10 s at 40%, rest 30 s, on left",
                "4: 3 x press 13 s at 40%, rest 30 s, on left",
            ],
            plan.Sessions[0].Uses[1].Doses()
        );
        Assert.Equal(
            ["Starting point", "Planned easy week: 1 set fewer", "Since week 2: +3 s a press"],
            plan.Sessions[0].Uses[1].Doses.Select(d => d.Change)
        );
    }

    /// <summary>A programme's side is that of the version too.</summary>
    [Fact]
    public void A_side_of_the_programme_holds_for_the_version()
    {
        var plan = Library
            .Member("ansel", ["- use: sway\n  side: front leg\n  by-week: { 1: hold 30 s, 2: { use: harder } }"], 2)
            .Plan("ansel");
        Assert.All(plan.Sessions[0].Uses, u => Assert.Equal("right leg, your front leg", u.Sides));
    }

    private static string Written(PlannedDose dose) =>
        $"{string.Join(' ', dose.Weeks)}: {dose.Dose.Actions.Single().Verb.ToString().ToLowerInvariant()} "
        + $"{dose.Dose.Actions.Single().Amount}";
}
