using Gradus.Domain;

namespace Gradus.Tests.Planning;

/// <summary>practice-format.md, Translations: a client's pages carry what the coach wrote in the client's language.</summary>
public sealed class PlannedLanguageTests
{
    [Fact]
    public void Every_caution_is_said_in_the_client_s_language_one_that_attaches_among_them()
    {
        var cautions = GermanClub.Translated.Plan("odile").Cautions;
        Assert.Equal(
            [
                "Stop stechen: A stabbing pain / End the exercise.",
                "EaseOff krampf: A cramp in the foot / Let go until it has gone.",
                "TakeCare festhalten: Something to hold on to / Stand beside the wall.",
                "Expect wadenzug: A pull in the calf / That is the stretch.",
            ],
            cautions.Select(c => $"{c.Kind} {c.Id}: {string.Join(" / ", c.Lines())}")
        );
        Assert.Equal(["fersenheben"], cautions[2].Exercises.Select(e => e.Text));
    }

    [Fact]
    public void An_exercise_is_told_in_the_client_s_language_part_by_part_and_filled_from_the_dose()
    {
        var exercise = GermanClub.Translated.Plan("odile").Exercises[0];
        Assert.Equal("Calf stretch", exercise.Title);
        Assert.Equal(["The rear heel stays down in the lunge."], exercise.Text.Why.Lines());
        Assert.Equal(["Stand before a wall."], exercise.Text.SetUp.Lines());
        Assert.Equal(["Stay there for 30 to 35 seconds. The heel raise comes next."], exercise.Text.Do.Lines());
        Assert.Equal(["Later", "Rest 20 seconds."], exercise.Text.More.Lines());
    }

    [Fact]
    public void A_link_in_a_translation_leads_to_an_exercise_only_where_the_client_does_it()
    {
        Assert.Equal(["fersenheben"], Links("odile"));
        Assert.Empty(Links("ida"));

        static string[] Links(string client) =>
            [
                .. GermanClub
                    .Translated.Plan(client)
                    .Exercises[0]
                    .Text.Do.Inlines()
                    .OfType<Inline.ExerciseLink>()
                    .Select(l => l.Exercise.Text),
            ];
    }

    [Fact]
    public void The_steps_and_the_notes_name_an_exercise_as_it_is_translated()
    {
        var plan = GermanClub
            .Translated.Member(
                "odile",
                [
                    "- rounds: 2\n  of:\n    - use: wadendehnung\n    - use: fersenheben",
                    "- use: wadendehnung\n  by-week: { 1: 2 x hold 30 s, 2: { use: harder } }",
                ],
                weeks: 2
            )
            .Plan("odile");
        Assert.Equal(
            ["Calf stretch", "Heel raise", "Calf stretch", "Heel raise"],
            plan.Sessions.SelectMany(s => s.Uses).Select(u => u.Title)
        );
        Assert.Contains("Heel raise", plan.Sessions[0].Uses[0].Notes[0], StringComparison.Ordinal);
        Assert.Equal(["Week 2: do Heel raise instead."], plan.Sessions[1].Uses[0].Notes);
        var words = plan.Sessions.SelectMany(s => s.Weeks).SelectMany(w => w.Steps).Select(s => s.Words).ToArray();
        Assert.Contains("A hold, left leg", words);
        Assert.DoesNotContain(words, w => GermanClub.German.Any(g => w.Contains(g, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_picture_of_the_translation_is_handed_over_and_that_of_the_original_is_not()
    {
        var plan = GermanClub
            .Translated.With("exercises/wand.png", PictureTests.Png)
            .With("exercises/wall.png", PictureTests.Png)
            .Edit("exercises/wadendehnung.md", "Stell dich vor eine Wand.", "![Vor der Wand](wand.png)")
            .Edit("exercises/wadendehnung.en.md", "Stand before a wall.", "![Before the wall](wall.png)")
            .Plan("ida");
        Assert.Equal(["exercises/wall.png"], plan.Pictures.Select(p => p.Path));
    }

    [Fact]
    public void What_is_not_translated_stays_as_the_coach_wrote_it()
    {
        var plan = GermanClub
            .Untranslated.With("cautions/stechen.en.md", "---\ntitle: A stabbing pain\n---\nEnd it.\n")
            .Plan("ida");
        Assert.Equal(["A stabbing pain", "Ein Zug in der Wade"], plan.Cautions.Select(c => c.Title));
        Assert.Equal("Wadendehnung", plan.Exercises[0].Title);
    }

    [Fact]
    public void Whoever_reads_the_coach_s_language_gets_the_original()
    {
        var english = GermanClub
            .Translated.Edit("practice.md", "language: de", "language: en")
            .With("cautions/stechen.de.md", "---\ntitle: Anders\n---\nAnders.\n");
        Assert.Equal(["Stechender Schmerz", "Ein Zug in der Wade"], english.Plan("ida").Cautions.Select(c => c.Title));
    }

    [Fact]
    public void The_translated_practice_is_made_once_and_is_itself_in_every_language()
    {
        var practice = GermanClub.Translated.Read();
        Assert.Same(practice, practice.In("de"));
        var english = practice.In("en");
        Assert.NotSame(practice, english);
        Assert.Same(english, practice.In("en"));
        Assert.Same(english, english.In("en"));
        Assert.Equal("A stabbing pain", english.Find(new CautionId("stechen"))?.Title);
        Assert.Equal("Stechender Schmerz", practice.Find(new CautionId("stechen"))?.Title);
    }
}
