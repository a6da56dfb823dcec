using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>practice-format.md, Programmes: what a client may choose on the day has a page and times of its own, is in no total,
/// and is as safe as any other session.</summary>
public sealed class AlternateSessionTests
{
    private const string Programme = "clients/ansel/programme.md";
    private const string Kept = "- use: sway\n- use: lean\n  keep-when-short: yes";

    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2-3 x hold 30-60 s, rest 20 s, on left", "harder: brace")
        .Exercise("lean", "2 x hold 20 s, rest 15 s, on right", "easier: sit")
        .Exercise("sit", "hold 10 s, on right", "clear-first: [faint-spells]", position: "sitting")
        .Exercise(
            "brace",
            "2-4 x press 10-20 s at 40-60%, rest 20 s, on left",
            "not-with: [faint-spells]",
            signs: "sharp-stab, calf-pull"
        );

    /// <summary>The sessions of the programme come first, then those written as alternates, then the short version. By hand, week
    /// 1: Session 1: 5 + 2·30 + 20, transition 10, 5 + 2·20 + 15 = 155; away: 5 + 2·20 + 15 = 60; sore: 5 + 10 = 15; short: 5 +
    /// 2·20 + 15 = 60.</summary>
    [Fact]
    public void Each_has_a_page_and_times_of_its_own_and_names_what_it_stands_in_for()
    {
        var plan = With("travel", "use: lean", "flare", "use: lean, by-week: { 1: { use: easier } }").Plan("ansel");
        Assert.Equal(
            [
                ("Session 1", "session-1.html", null, "Monday", 155),
                ("Session 2", "session-2.html", null, "Monday", 85),
                ("For travel", "session-3.html", 1, "Travelling? In place of Session 1", 60),
                ("For flare", "session-4.html", 1, "Sore today? In place of Session 1", 15),
                ("Session 1, short", "session-5.html", 1, "Short of time? In place of Session 1", 60),
            ],
            plan.Sessions.Select(s => (s.Name, s.Path, s.InsteadOf, s.Days, s.Weeks[0].Total.Value))
        );
        Assert.Equal([1, 2, 3, 4, 5], plan.Sessions.Select(s => s.Number));
        Assert.Equal([false, false, false, false, true], plan.Sessions.Select(s => s.IsShortened));
        Assert.All(plan.Sessions, s => Assert.Equal([1, 2, 3, 4], s.Weeks.SelectMany(w => w.Weeks).Order()));
    }

    [Fact]
    public void None_of_them_is_in_the_weeks_the_calendar_or_the_load()
    {
        var practice = With("travel", "use: lean", "flare", "use: sit");
        var (plan, without) = (practice.Plan("ansel"), Member(Library).Plan("ansel"));
        Assert.Equal(5, plan.Sessions.Count);
        Assert.Equal(4, plan.Weeks.Count);
        Assert.All(plan.Weeks, w => Assert.Equal([1, 2], w.Sessions.Select(s => s.Session)));
        Assert.Equal(without.Weeks.Select(w => w.Total), plan.Weeks.Select(w => w.Total));
        Assert.Equal(155 + 85, plan.Weeks[0].Total.Value);
        Assert.Equal(without.Dates, plan.Dates);
        Assert.Equal(Load(Member(Library)), Load(practice));
        Assert.NotEmpty(Load(practice));
    }

    [Fact]
    public void It_may_have_weeks_of_its_own()
    {
        var plan = With("travel", "use: lean, from-week: 2, until-week: 3", "flare", "use: lean, by-week: { 4: hold 20 s }")
            .Plan("ansel");
        Assert.Equal([2, 3], plan.Sessions[2].Weeks.SelectMany(w => w.Weeks));
        Assert.Equal(["Week 4"], plan.Sessions[3].Weeks.Select(w => w.Heading));
    }

    /// <summary>One of the rounds' uses is kept: it keeps its rounds and the rest between them. 5 + 20 + 40 + 20 = 85.</summary>
    [Fact]
    public void A_short_version_of_rounds_keeps_the_rounds()
    {
        var plan = Library
            .Member(
                "ansel",
                ["- rounds: 2\n  rest: 40 s\n  change: 15 s\n  of: [{ use: sway }, { use: lean, keep-when-short: yes }]"]
            )
            .Plan("ansel");
        Assert.Equal(["GetReady R 5", "Hold R 20", "Rest R 40", "Hold R 20"], plan.Only(2).Steps());
        Assert.Equal(85, plan.Only(2).Total.Value);
    }

    [Fact]
    public void A_short_version_has_the_doses_of_the_whole_one_in_every_week()
    {
        var plan = Library.Member("ansel", ["- use: sway\n  keep-when-short: yes\n- use: lean"], 4, lighter: "[3]").Plan("ansel");
        Assert.Equal(plan.Sessions[0].Uses[0].Doses(), plan.Sessions[1].Uses[0].Doses());
        Assert.Equal(4, plan.Sessions[1].Uses[0].Doses.Count);
    }

    /// <summary>sit is done on no other day, and still its condition is asked and shown, and its cautions stand on the
    /// page.</summary>
    [Fact]
    public void What_is_done_only_in_place_of_another_is_screened_and_has_its_cautions()
    {
        var practice = With("flare", "use: sit").Settings("{ answers-on-pages: all }");
        var plan = practice.Plan("ansel");
        Assert.Contains(plan.Health.Answers, a => a.Question.Contains("dizzy", StringComparison.Ordinal));
        var flare = plan.Sessions.Single(s => s.Name == "For flare");
        Assert.Contains(plan.SignsOn(flare.Path, flare.Exercises).Notes.SelectMany(n => n.Sentences), s =>
            s.Contains("dizzy spells", StringComparison.Ordinal)
        );
        Assert.Equal(
            ["calf-pull", "sharp-stab"],
            plan.CautionsFor(flare.Exercises).Select(c => c.Id.Text).Order(StringComparer.Ordinal)
        );
        Assert.Equal([("sit", "NotCleared")], Objections(practice, "yes"));
        Assert.Equal([("sit", "NotAsked")], Objections(practice, null));
        Assert.Empty(Objections(practice, "no"));
    }

    [Theory]
    [InlineData("use: sway, by-week: { 1: 2 x hold 30 s, 3: { use: harder } }", "brace:Forbidden")]
    [InlineData("use: lean, by-week: { 2: { use: easier } }", "sit:NotCleared")]
    [InlineData("use: lean", "")]
    public void A_yes_that_speaks_only_against_a_version_of_an_alternate_blocks(string use, string against) =>
        Assert.Equal(against, string.Join(' ', Objections(With("travel", use), "yes").Select(o => $"{o.Exercise}:{o.Kind}")));

    /// <summary>A short version keeps the versions of what it keeps, and each is judged there too.</summary>
    [Fact]
    public void A_yes_against_a_version_blocks_the_whole_and_the_short_session()
    {
        var practice = Library
            .Member(
                "ansel",
                ["- use: sway\n  keep-when-short: yes\n  by-week: { 1: 2 x hold 30 s, 2: { use: harder } }\n- use: lean"],
                2,
                answers: "{ calf-strain: no, faint-spells: yes }"
            )
            .Read();
        var uses = Planned.Uses(practice, practice.Clients.Single());
        Assert.Equal(
            [(1, "brace"), (2, "brace")],
            uses.Where(u => u.Against.Count > 0).Select(u => (u.Session, u.Exercise.Id.Text))
        );
    }

    /// <summary>Weeks 3 and 4 of a programme from 4 January 2027 are 18 to 31 January: the clearance need hold no longer than the
    /// version is done.</summary>
    [Theory]
    [InlineData("2027-01-18", "2027-01-31", "")]
    [InlineData("2027-01-19", "2027-01-31", "2027-01-18 to 2027-01-24")]
    [InlineData("2027-01-18", "2027-01-30", "2027-01-25 to 2027-01-31")]
    public void A_clearance_is_held_against_the_weeks_of_the_version(string on, string until, string days)
    {
        var practice = Member(
                Library,
                "- use: lean\n  until-week: 4\n  by-week: { 1: 2 x hold 20 s, 3: { use: easier } }",
                "yes",
                $"[{{ condition: faint-spells, by: a doctor, on: {on}, until: {until} }}]",
                5
            )
            .Read();
        var client = practice.Clients.Single();
        var missed = Planned
            .Uses(practice, client)
            .SelectMany(u => u.Against)
            .Cast<Objection.ClearanceShort>()
            .Select(o => $"{o.From:yyyy-MM-dd} to {o.Until:yyyy-MM-dd}");
        Assert.Equal(days, string.Join(", ", missed));
    }

    private static IEnumerable<(string Exercise, string Kind)> Objections(LittlePractice practice, string? dizzy)
    {
        var read = practice
            .Edit(
                "clients/ansel/client.yaml",
                "{ calf-strain: no, faint-spells: no }",
                dizzy is null ? "{ calf-strain: no }" : $"{{ calf-strain: no, faint-spells: {dizzy} }}"
            )
            .Read();
        var client = read.Clients.Single();
        return Planned.Uses(read, client).SelectMany(u => u.Against.Select(o => (u.Exercise.Id.Text, o.GetType().Name)));
    }

    private static Series<WeekLoad> Load(LittlePractice practice)
    {
        var read = practice.Read();
        return Training.Of(read, read.Clients.Single()).Loads;
    }

    private static LittlePractice Member(
        LittlePractice practice,
        string uses = Kept,
        string dizzy = "no",
        string clearances = "[]",
        int weeks = 4
    ) =>
        practice.Member(
            "ansel",
            [uses, "- use: sway"],
            weeks,
            answers: $"{{ calf-strain: no, faint-spells: {dizzy} }}",
            clearances: clearances
        );

    /// <param name="kindsAndUses">A kind and the one use of such an alternate to Session 1, by turns.</param>
    private static LittlePractice With(params string[] kindsAndUses)
    {
        var alternates = kindsAndUses
            .Chunk(2)
            .Select(a => $"  - {{ name: For {a[0]}, instead-of: Session 1, kind: {a[0]}, do: [{{ {a[1]} }}] }}\n");
        return Member(Library).Edit(Programme, "sessions:", $"alternate:\n{string.Concat(alternates)}sessions:");
    }
}
