using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>practice-format.md, Programmes: a session that is some uses of another, with a share of its sets, is never written
/// twice, so that it cannot drift from what it is taken from.</summary>
public sealed class TakenSessionTests
{
    private const string Programme = "clients/ansel/programme.md";

    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2-4 x hold 20-60 s, rest 20 s, on left", "harder: brace")
        .Exercise("lean", "2 x hold 20 s, rest 15 s, on right")
        .Exercise("brace", "2-4 x press 10-20 s at 40-60%, rest 20 s, on left", "not-with: [faint-spells]");

    private const string Whole = """
        - use: sway
          by-week: { 1: 3 x hold 30 s, 3: 3 x hold 40 s }
        - use: lean
          from-week: 2
        - rounds: 5
          rest: 30 s
          of: [{ use: sway, as: round, side: right }, { use: lean, as: other }]
        """;

    /// <summary>By hand, half of three sets is two and of two is one. Week 1: 5 + 30 + 20 + 30 = 85; week 2: and 10 + 5 + 20, so
    /// 120; week 3: 20 more.</summary>
    [Fact]
    public void It_has_the_doses_the_weeks_and_the_order_of_the_whole_with_its_share_of_the_sets()
    {
        var plan = With("uses: [lean, sway], share: 50").Plan("ansel");
        var away = plan.Sessions[1];
        Assert.Equal(("Away", 1, "Travelling? In place of Session 1"), (away.Name, away.InsteadOf, away.Days));
        Assert.Equal([(1, 85), (2, 120), (3, 140)], away.Weeks.Select(w => (w.Weeks[0], w.Total.Value)));
    }

    /// <summary>Half of five rounds is three, of two uses each.</summary>
    [Fact]
    public void Of_rounds_it_has_fewer_rounds()
    {
        var (some, whole) = (With("uses: [round, other], share: 50"), With("uses: [round, other]"));
        Assert.Equal((6, 10), (Holds(some), Holds(whole)));

        static int Holds(LittlePractice practice) =>
            practice.Plan("ansel").Sessions[1].Weeks[0].Steps().Count(s => s.StartsWith("Hold R", StringComparison.Ordinal));
    }

    [Fact]
    public void All_of_a_session_is_that_session()
    {
        var plan = With("").Plan("ansel");
        Assert.Equal(plan.Sessions[0].Uses.Select(u => u.Doses()), plan.Sessions[1].Uses.Select(u => u.Doses()));
        Assert.Equal(
            plan.Sessions[0].Weeks.Select(w => (string.Join(' ', w.Weeks), w.Total)),
            plan.Sessions[1].Weeks.Select(w => (string.Join(' ', w.Weeks), w.Total))
        );
    }

    /// <summary>Where the dose grows by itself, and a version is done from a week on, it is the same too.</summary>
    [Fact]
    public void What_grows_and_what_becomes_harder_is_taken_as_it_is()
    {
        var plan = With(
                "",
                "- use: sway\n  by-week: { 1: 2 x hold 30 s, 3: { use: harder } }\n- use: sway\n  as: again\n- use: lean"
            )
            .Plan("ansel");
        Assert.Equal(4, plan.Sessions[0].Uses.Count);
        Assert.Equal(plan.Sessions[0].Uses.Select(u => u.Doses()), plan.Sessions[1].Uses.Select(u => u.Doses()));
    }

    [Fact]
    public void A_yes_against_a_use_of_it_blocks_there_too()
    {
        var read = With("uses: [sway]", "- use: sway\n  by-week: { 1: 2 x hold 30 s, 3: { use: harder } }\n- use: lean")
            .Edit("clients/ansel/client.yaml", "faint-spells: no", "faint-spells: yes")
            .Read();
        Assert.Equal(
            [(1, "brace"), (2, "brace")],
            Planned.Uses(read, read.Clients.Single()).Where(u => u.Against.Count > 0).Select(u => (u.Session, u.Exercise.Id.Text))
        );
    }

    /// <summary>It is not in the weeks' totals.</summary>
    [Fact]
    public void It_changes_nothing_of_the_load()
    {
        Assert.Equal(Load(Member()), Load(With("share: 50")));
        Assert.NotEmpty(Load(Member()));

        static Series<WeekLoad> Load(LittlePractice practice)
        {
            var read = practice.Read();
            return Training.Of(read, read.Clients.Single()).Loads;
        }
    }

    private static LittlePractice Member(string uses = Whole) =>
        Library.Member("ansel", [uses], 4, answers: "{ calf-strain: no, faint-spells: no }");

    private static LittlePractice With(string taken, string uses = Whole) =>
        Member(uses)
            .Edit(
                Programme,
                "sessions:",
                $"alternate:\n  - {{ name: Away, of: Session 1, kind: travel{(taken.Length > 0 ? ", " : "")}{taken} }}\nsessions:"
            );
}
