using Gradus.Planning;

namespace Gradus.Tests.Planning;

/// <summary>Who must leave something out, or ask first; what a client answered and was cleared for; and how much pain is all
/// right.</summary>
public sealed class PlannedNotesTests
{
    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "hold 30 s, each side", "not-with: [sore-wrist, calf-strain]\nclear-first: [faint-spells]")
        .Exercise("brace", "hold 20 s, each side", "not-with: [calf-strain]\nclear-first: [faint-spells, sore-wrist]");

    private const string Both = "- use: sway\n- use: brace";

    [Fact]
    public void Each_condition_stands_once_with_the_exercises_it_applies_to() =>
        Assert.Equal(
            [
                "Leave out with: A calf strain in the last 6 weeks (The sway, The brace) | A sore wrist (The sway)",
                "Ask a doctor first with: Fainting or dizzy spells (The sway, The brace) | A sore wrist (The brace)",
            ],
            Notes("{ calf-strain: no, faint-spells: no, sore-wrist: no }")
        );

    [Fact]
    public void A_page_of_one_exercise_says_what_concerns_that_one()
    {
        var plan = Plan("{ calf-strain: no, faint-spells: no, sore-wrist: no }");
        Assert.Contains(
            "Ask a doctor first with: Fainting or dizzy spells | A sore wrist",
            plan.SignsOn("exercise-brace.html", [new("brace")]).Notes.Select(Show)
        );
    }

    [Fact]
    public void A_cleared_client_reads_the_clearance_first_and_is_not_sent_to_a_doctor()
    {
        var notes = Notes(
            "{ calf-strain: no, faint-spells: yes, sore-wrist: no }",
            "[{ condition: faint-spells, by: Dr Quill, on: 2026-11-01, until: 2027-11-16, limit: effort at most 60 % }]"
        );
        Assert.Equal(
            "Fainting or dizzy spells. Your answer: Yes. You have been cleared until 16 November 2027: effort up to 60 per cent. "
                + "Applies to: The sway, The brace",
            notes[0]
        );
    }

    [Theory]
    [InlineData("2027-01-10", "2027-11-16", "You have been cleared from 10 January 2027 until 16 November 2027.")]
    [InlineData("2026-11-01", "2026-11-20", "Check with your doctor first: The sway, The brace.")]
    [InlineData("2027-11-01", "2027-11-20", "Check with your doctor first: The sway, The brace.")]
    public void A_clearance_counts_where_it_holds_on_some_day_of_the_programme(string on, string until, string said) =>
        Assert.Contains(
            said,
            Notes(
                "{ calf-strain: no, faint-spells: yes, sore-wrist: no }",
                $"[{{ condition: faint-spells, by: Dr Quill, on: {on}, until: {until} }}]"
            )[0],
            StringComparison.Ordinal
        );

    [Fact]
    public void A_yes_for_one_side_names_that_side()
    {
        var note = Notes("{ calf-strain: \"yes, left\", faint-spells: no, sore-wrist: no }")[0];
        Assert.Equal(
            "A calf strain in the last 6 weeks. Your answer: Yes, on the left. Do not do on the left: The sway, The brace.",
            note
        );
    }

    /// <summary>The day without its weekday; who answered yes to something is asked for what is new.</summary>
    [Theory]
    [InlineData("no", "Asked on 2 November 2026. If any of these is true now, tell Hesper Quill before you train.")]
    [InlineData(
        "yes",
        "Asked on 2 November 2026. If any of these is true now that was not true then, tell Hesper Quill before you train."
    )]
    public void The_day_of_the_answers_is_said(string faint, string said) =>
        Assert.Equal(said, Plan($"{{ calf-strain: no, faint-spells: {faint}, sore-wrist: no }}").Asked);

    /// <summary>Bounds: settings of practice.md, both inclusive below.</summary>
    [Fact]
    public void The_pain_rule_has_the_bounds_of_the_practice()
    {
        Assert.Equal(
            [
                "Pain from 0 to 10",
                "0 is no pain, 10 the worst you can imagine.",
                "Up to 2: go on, as long as the pain is dull and does not get worse.",
                "Above 2, up to 5: do less today, or do the easier session if there is one.",
                "Above 5, or sharp pain of any strength: stop, and tell Hesper Quill.",
                "If it is worse the next morning than before you trained, do less next time, and tell Hesper Quill.",
            ],
            Plan("{ calf-strain: no, faint-spells: no, sore-wrist: no }").PainRule.Lines()
        );
    }

    private static string[] Notes(string answers, string clearances = "[]")
    {
        var plan = Plan(answers, clearances);
        return [.. plan.SignsOn(PagePath.BeforeYouStart, plan.Exercises.Select(e => e.Id)).Notes.Select(Show)];
    }

    private static Plan Plan(string answers, string clearances = "[]") =>
        Library.Member("ansel", [Both], answers: answers, clearances: clearances).Plan("ansel");

    private static string Show(PlannedNote note) =>
        note.Title.EndsWith(':')
            ? $"{note.Title} {string.Join(" | ", note.Sentences)}"
            : $"{note.Title}. {string.Join(' ', note.Sentences)}";

    /// <summary>A session calls its exercises by their letters.</summary>
    [Fact]
    public void A_session_names_the_exercises_by_their_letters()
    {
        var plan = Plan("{ calf-strain: no, faint-spells: no, sore-wrist: no }");
        var signs = plan.SignsOn(plan.Sessions[0].Path, plan.Sessions[0].Exercises);
        Assert.Equal(
            [
                "Leave out with: A calf strain in the last 6 weeks (A, B) | A sore wrist (A)",
                "Ask a doctor first with: Fainting or dizzy spells (A, B) | A sore wrist (B)",
            ],
            signs.Notes.Select(Show)
        );
        Assert.All(signs.Kinds.SelectMany(k => k.Signs), s => Assert.Equal("A, B", s.Where));
    }

    /// <summary>What a clinician asked to be spared stands before everything else that a page with exercises notes.</summary>
    [Theory]
    [InlineData("joint: left wrist", "To spare: left wrist", "Your exercises leave it out.")]
    [InlineData(
        "joint: left wrist\n    limit: [hold at most 20 s, effort at most 30 %]",
        "To spare: left wrist",
        "Your exercises keep to this: hold for up to 20 seconds, effort up to 30 per cent."
    )]
    [InlineData(
        "movement: wrist extension",
        "To spare: wrist extension",
        "None of your exercises trains it or asks for it. Keep from it in everything else too."
    )]
    [InlineData(
        "limit: not lying on the front",
        "To spare: whatever you do",
        "Your exercises keep to this: do not lie on your front."
    )]
    public void What_is_to_be_spared_is_said_first(string written, string title, string last)
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, each side")
            .Member("ansel", ["- use: sway"])
            .Edit(
                "clients/ansel/client.yaml",
                "clearances: []",
                "restrictions:\n  - by: her physiotherapist\n    on: 2026-12-01\n    until: 2027-03-31\n    "
                    + $"{written}\nclearances: []"
            )
            .Plan("ansel");
        var note = plan.SignsOn(plan.Sessions[0].Path, plan.Sessions[0].Exercises).Notes[0];
        Assert.Equal(
            (title, "Asked for by her physiotherapist on 1 December 2026, until 31 March 2027.", last),
            (note.Title, note.Sentences[0], note.Sentences[1])
        );
    }
}
