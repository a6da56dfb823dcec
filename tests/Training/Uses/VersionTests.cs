using Gradus.Planning;

namespace Gradus.Tests.Trainings;

/// <summary>practice-format.md, Programmes, and dose-line.md: easier and harder versions by week, sessions that may be chosen,
/// and the short version.</summary>
public sealed class VersionTests
{
    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2-3 x hold 30-60 s, rest 20 s, on left", "easier: lean\nharder: brace")
        .Exercise("lean", "1-2 x hold 20-30 s, rest 15 s, on left")
        .Exercise(
            "brace",
            "2-4 x press 10-20 s at 40%, rest 20 s, on left",
            "not-with: [calf-strain, faint-spells]",
            signs: "sharp-stab, calf-pull"
        );

    /// <summary>brace (2-4 x press 10-20 s) over its own weeks 3 to 5: 20 s, 26 s, 32 s of pressing, never by more than 30 per
    /// cent.</summary>
    [Fact]
    public void A_version_is_done_from_its_week_to_the_next_entry_and_grows_over_these_weeks()
    {
        var plan = Plan("by-week: { 1: 2 x hold 30 s, 3: { use: harder }, 6: 3 x hold 45 s }", 7);
        var uses = plan.Sessions[0].Uses;
        Assert.Equal(["sway", "brace"], uses.Select(u => u.Exercise.Text));
        Assert.Equal(["1 2: 2 x hold 30 s, rest 20 s, on left", "6 7: 3 x hold 45 s, rest 20 s, on left"], uses[0].Doses());
        Assert.Equal(
            [
                "3: 2 x press 10 s at 40%, rest 20 s, on left",
                "4: 2 x press 13 s at 40%, rest 20 s, on left",
                "5: 2 x press 16 s at 40%, rest 20 s, on left",
            ],
            uses[1].Doses()
        );
        Assert.Equal(["Weeks 3 to 5: do The brace instead."], uses[0].Notes);
        Assert.Equal(["Weeks 1, 2, 6 and 7: do The sway instead."], uses[1].Notes);
        Assert.Equal(
            ["Weeks 1 and 2", "Week 3", "Week 4", "Week 5", "Weeks 6 and 7"],
            plan.Sessions[0].Weeks.Select(w => w.Heading)
        );
    }

    [Fact]
    public void It_ends_with_the_last_week_of_use_and_a_lighter_week_is_lighter_for_it_too()
    {
        var uses = Plan("until-week: 4\n  by-week: { 2: { use: easier }, 3: { use: harder } }", 6, lighter: "[4]")
            .Sessions[0]
            .Uses;
        Assert.Equal(["lean", "brace"], uses.Select(u => u.Exercise.Text));
        Assert.Equal(["2: 1 x hold 20 s, on left"], uses[0].Doses());
        Assert.Equal(["3: 2 x press 10 s at 40%, rest 20 s, on left", "4: 1 x press 10 s at 40%, on left"], uses[1].Doses());
    }

    [Fact]
    public void A_yes_that_forbids_only_the_harder_version_is_an_objection_to_it()
    {
        var practice = Library
            .Member(
                "ansel",
                ["- use: sway\n  by-week: { 1: 2 x hold 30 s, 2: { use: harder } }"],
                2,
                answers: "{ calf-strain: no, faint-spells: yes }"
            )
            .Read();
        var client = practice.Clients.Single();
        var objections = Planned.Uses(practice, client).Select(u => (u.Exercise.Id.Text, u.Against.Count));
        Assert.Equal([("sway", 0), ("brace", 1)], objections);
    }

    [Fact]
    public void A_session_to_choose_instead_is_planned_like_any_other_and_takes_no_time_of_the_week()
    {
        var plan = Library
            .Member("ansel", ["- use: sway"], 2)
            .Edit(
                "clients/ansel/programme.md",
                "sessions:",
                "alternate: [{ name: On the road, instead-of: Session 1, kind: travel, do: [{ use: lean }] }]\nsessions:"
            )
            .Plan("ansel");
        Assert.Equal(["Session 1", "On the road"], plan.Sessions.Select(s => s.Name));
        Assert.Equal(
            (2, 1, "session-2.html", "Travelling? In place of Session 1"),
            (plan.Sessions[1].Number, plan.Sessions[1].InsteadOf, plan.Sessions[1].Path, plan.Sessions[1].Days)
        );
        Assert.Equal(["GetReady L 5", "Hold L 20"], plan.Sessions[1].Weeks[0].Steps());
        Assert.Contains(plan.Exercises, e => e.Id.Text == "lean");
        Assert.NotEmpty(plan.CautionsFor(plan.Sessions[1].Exercises));
        Assert.Equal([1], plan.Weeks[0].Sessions.Select(s => s.Session));
        Assert.Equal(plan.Sessions[0].Weeks[0].Total, plan.Weeks[0].Total);
        Assert.DoesNotContain(plan.Dates, d => d.Note.Contains("session-2", StringComparison.Ordinal));
    }

    [Fact]
    public void The_short_version_keeps_what_is_marked_and_its_time_is_its_own()
    {
        var plan = Library.Member("ansel", ["- use: sway\n- use: lean\n  keep-when-short: yes"], 1).Plan("ansel");
        Assert.Equal(["Session 1", "Session 1, short"], plan.Sessions.Select(s => s.Name));
        Assert.Equal("Short of time? In place of Session 1", plan.Sessions[1].Days);
        Assert.Equal(25, plan.Only(2).Total.Value);
        Assert.Single(plan.Exercise(new("lean")).Uses);
    }

    [Theory]
    [InlineData("- use: sway\n- use: lean")]
    [InlineData("- use: sway\n  keep-when-short: yes\n- use: lean\n  keep-when-short: yes")]
    public void Where_nothing_or_everything_is_kept_there_is_no_short_version(string uses) =>
        Assert.Single(Library.Member("ansel", [uses], 1).Plan("ansel").Sessions);

    private static Plan Plan(string use, int weeks, string lighter = "[]") =>
        Library
            .Member("ansel", [$"- use: sway\n  {use}"], weeks, lighter: lighter, answers: "{ calf-strain: no, faint-spells: no }")
            .Plan("ansel");
}
