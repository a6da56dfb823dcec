using Gradus.Domain;

namespace Gradus.Tests.Trainings;

/// <summary>What an edition holds of a practice, one thing at a time. EditionProofTests holds thousands of made
/// programmes.</summary>
public sealed class EditionContentsTests
{
    private const string Programme = "clients/ansel/programme.md";

    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2-3 x hold 30-60 s, rest 20 s, each side", signs: "calf-pull, sharp-stab, slow-breath")
        .Exercise("lean", "2 x hold 20 s, each side");

    private static readonly LittlePractice Summer = Library.Member("ansel", ["- use: sway\n- use: lean"], 2);

    [Theory]
    [InlineData("[Thu, Mon]", "Mon, Thu", "2 2")]
    [InlineData("every 2 days", "every 2 days", "4 3")]
    [InlineData("3 a week", "3 times a week, on following days too", "3 3")]
    [InlineData("3 a week, a day between", "3 times a week", "3 3")]
    [InlineData("before play", "before play", "0 0")]
    public void A_session_says_its_days_and_how_often_it_comes(string days, string said, string times)
    {
        var session = Of(Summer.Edit(Programme, "days: [Mon]", $"days: {days}")).Sessions.Single();
        Assert.Equal((said, times, ""), (session.Days, string.Join(' ', session.Times), session.InsteadOf));
    }

    /// <summary>Weeks in a row that ask the same are one.</summary>
    [Theory]
    [InlineData(
        "{ 1: 2 x hold 30 s, 3: 3 x hold 30 s }",
        "1-2 each side 2 x hold 30 s, rest 20 s|3-4 each side 3 x hold 30 s, rest 20 s"
    )]
    [InlineData("{ 1: 2 x hold 30 s, 3: 2 x hold 30 s }", "1-4 each side 2 x hold 30 s, rest 20 s")]
    [InlineData("{ 3: 2 x hold 30 s }", "3-4 each side 2 x hold 30 s, rest 20 s")]
    [InlineData(
        "{ 1: 2 x hold 30 s, 4: '2 x hold 30 s, on rear leg' }",
        "1-3 each side 2 x hold 30 s, rest 20 s|4-4 left 2 x hold 30 s, rest 20 s"
    )]
    [InlineData(
        "{ 1: '2 x hold 30 s, each side, plus 1 x on left' }",
        "1-4 each side, plus 1 x on left 2 x hold 30 s, rest 20 s"
    )]
    public void A_use_says_what_its_weeks_ask(string lines, string asks)
    {
        var practice = Library.Member("ansel", [$"- use: sway\n  by-week: {lines}"], 4);
        var use = Of(practice).Sessions.Single().Uses.Single();
        Assert.Equal(asks, string.Join('|', use.Asks.Select(a => $"{a.From}-{a.To} {a.Side} {a.Dose}")));
    }

    /// <summary>The rounds of a session are numbered; what stands between them is said where the coach wrote it.</summary>
    [Fact]
    public void Rounds_are_numbered_and_say_their_rests()
    {
        var practice = Library.Member(
            "ansel",
            [
                "- rounds: 2\n  rest: 40 s\n  change: 15 s\n  of: [{ use: sway }, { use: lean }]\n"
                    + "- use: sway\n- rounds: 3\n  of: [{ use: lean }, { use: sway }]",
                "- rounds: 4\n  rest: 30 s\n  of: [{ use: sway }, { use: lean }]",
            ]
        );
        var said = Of(practice).Sessions.Select(s => string.Join('|', s.Uses.Select(u => u.Rounds)));
        Assert.Equal(
            [
                "1: 2 times, rest 40 s, change 15 s|1: 2 times, rest 40 s, change 15 s||2: 3 times|2: 3 times",
                "1: 4 times, rest 30 s|1: 4 times, rest 30 s",
            ],
            said
        );
    }

    /// <summary>The short version is made of what is kept, and is no session beside the others; one that the coach wrote
    /// is.</summary>
    [Fact]
    public void Alternates_are_there_and_short_versions_are_not()
    {
        var practice = Library
            .Member("ansel", ["- use: sway\n- use: lean\n  keep-when-short: yes"], 2)
            .Edit(
                Programme,
                "sessions:",
                "alternate: [{ name: Away, instead-of: Session 1, kind: travel, do: [{ use: lean }] }]\nsessions:"
            );
        var sessions = Of(practice).Sessions;
        Assert.Equal([("Session 1", ""), ("Away", "Session 1")], sessions.Select(s => (s.Name, s.InsteadOf)));
        Assert.Equal([false, true, false], sessions.SelectMany(s => s.Uses).Select(u => u.IsKept));
        Assert.Equal(["sway", "lean"], Of(practice).Exercises.Select(e => e.Id.Text));
    }

    /// <summary>A use that is kept is so only where the session has a short version.</summary>
    [Fact]
    public void Where_all_is_kept_nothing_is() =>
        Assert.All(Of(Library.Member("ansel", ["- use: sway\n  keep-when-short: yes"])).Sessions.Single().Uses, u =>
            Assert.False(u.IsKept)
        );

    [Fact]
    public void What_must_be_true_before_going_on_is_a_hash()
    {
        var none = Of(Summer).Sessions[0].Uses[0].MoveOn;
        var some = Moving("pain at most 2, two sessions running");
        Assert.Equal("", none);
        Assert.Matches("^[0-9a-f]{16}$", some);
        Assert.NotEqual(some, Moving("pain at most 3, two sessions running"));

        static string Moving(string condition) =>
            Of(Library.Member("ansel", [$"- use: sway\n  move-on: [{condition}]"])).Sessions[0].Uses[0].MoveOn;
    }

    /// <summary>Whatever the coach writes of an exercise, or it asks of a body.</summary>
    [Theory]
    [InlineData("trains: ankle dorsiflexion", "trains: hip flexion")]
    [InlineData("stage: gain", "stage: control")]
    [InlineData("position: standing", "position: side-lying")]
    [InlineData("stage: gain", "stage: gain\nequipment: [wall]")]
    [InlineData("stage: gain", "stage: gain\nloads: [knee]")]
    [InlineData("stage: gain", "stage: gain\nproperties: [balance]")]
    [InlineData("stage: gain", "stage: gain\ncue: foot in front")]
    [InlineData("not-with: [calf-strain]", "not-with: [calf-strain, faint-spells]")]
    [InlineData("not-with: [calf-strain]", "not-with: [calf-strain]\nclear-first: [faint-spells]")]
    [InlineData("## Do\nGo.", "## Do\nGo on.")]
    [InlineData("## Do\nGo.", "So it is.\n\n## Do\nGo.")]
    [InlineData("## Do\nGo.", "## Set up\nStand.\n\n## Do\nGo.")]
    [InlineData("## Do\nGo.", "## Do\nGo.\n\n## Afterwards\nSit.")]
    public void The_words_of_an_exercise_are_others(string before, string after)
    {
        var (one, other) = (Of(Summer).Exercises, Of(Summer.Edit("exercises/sway.md", before, after)).Exercises);
        Assert.NotEqual(one[0].Words, other[0].Words);
        Assert.Equal(one[0].Title, other[0].Title);
        Assert.Equal(one[1], other[1]);
    }

    [Theory]
    [InlineData("loads: [knee]", "loads: [other knee]")]
    [InlineData("loads: [knee]", "loads: [ankle]")]
    [InlineData("equipment: [wall]", "equipment: [step]")]
    public void What_it_loads_and_needs_is_told_apart(string before, string after) =>
        Assert.NotEqual(Words(before), Words(after));

    [Fact]
    public void Its_title_and_its_place_in_the_file_are_not_among_them()
    {
        var other = Of(Summer.Edit("exercises/sway.md", "title: The sway", "# A remark.\ntitle: Swaying")).Exercises[0];
        Assert.Equal(Of(Summer).Exercises[0] with { Title = "Swaying" }, other);
    }

    /// <summary>Worst first, of one kind by their names; each with the exercises that carry it.</summary>
    [Fact]
    public void Signs_stand_in_their_order()
    {
        var practice = Summer
            .With("cautions/a-stab.md", "---\ntitle: Another\nkind: stop\n---\nStop.\n")
            .Edit("exercises/lean.md", "signs: [sharp-stab, calf-pull]", "signs: [calf-pull, sharp-stab, a-stab]");
        Assert.Equal(["Stop a-stab: lean", "Stop sharp-stab: sway, lean"], Said(CautionKind.Stop));
        Assert.Equal(["Expect calf-pull: sway, lean"], Said(CautionKind.Expect));
        Assert.Equal(Of(practice).Cautions.OrderBy(c => c.Kind), Of(practice).Cautions);
        Assert.NotEqual(
            Of(practice).Cautions.Single(c => c.Id.Text == "a-stab").Words,
            Of(practice.Edit("cautions/a-stab.md", "Stop.", "Stop at once.")).Cautions.Single(c => c.Id.Text == "a-stab").Words
        );

        IEnumerable<string> Said(CautionKind kind) =>
            Of(practice).Cautions.Where(c => c.Kind == kind).Select(c => $"{c.Kind} {c.Id}: {string.Join(", ", c.Exercises)}");
    }

    [Fact]
    public void What_a_clinician_said_is_a_line_each()
    {
        const string Cleared = "{ condition: calf-strain, by: A nurse, on: 2026-11-02, until: 2027-11-01";
        const string Spared = "{ by: Dr Mew, on: 2026-11-02, until: 2027-11-01, joint: right shoulder }";
        var content = Of(
            Library
                .Member("ansel", ["- use: sway"], clearances: $"[{Cleared} }}, {Cleared}, limit: effort at most 60 % }}]")
                .Edit("clients/ansel/client.yaml", "clearances:", $"restrictions: [{Spared}]\nclearances:")
        );
        Assert.Equal(
            [
                "calf-strain: A nurse, 2026-11-02 to 2027-11-01",
                "calf-strain: A nurse, 2026-11-02 to 2027-11-01; effort at most 60 %",
            ],
            content.Clearances
        );
        Assert.Equal(["right shoulder: Dr Mew, 2026-11-02 to 2027-11-01"], content.Restrictions);
    }

    [Fact]
    public void The_programme_has_its_title_its_days_and_its_pauses()
    {
        var content = Of(Summer.Edit(Programme, "weeks: 2\n", "weeks: 2\npause: { from: 2027-01-11, until: 2027-01-17 }\n"));
        Assert.Equal(("Footwork", new DateOnly(2027, 1, 4), 2), (content.Title, content.Start, content.Weeks));
        Assert.Equal([new Pause(new(2027, 1, 11), new(2027, 1, 17))], content.Pauses);
        Assert.Empty(Of(Summer).Pauses);
        Assert.Equal(CourseKey.Of(Summer.Client("ansel")), content.Programme);
    }

    private static string Words(string line) =>
        Of(Summer.Edit("exercises/sway.md", "stage: gain", $"stage: gain\n{line}")).Exercises[0].Words;

    private static EditionContent Of(LittlePractice practice) => MadeProgramme.Content(practice.Read());
}
