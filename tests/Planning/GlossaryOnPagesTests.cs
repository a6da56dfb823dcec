using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Planning;

/// <summary>practice-format.md, Words. A word is marked where a page's text first has it, and the text stays what it
/// was.</summary>
public sealed class GlossaryOnPagesTests
{
    [Theory]
    [InlineData("A lunge, then another lunge.", "lunge")]
    [InlineData("Long LUNGES end here.", "LUNGES")]
    [InlineData("Lunging is no lunge-like plunge.", "")]
    [InlineData("The lunge's end.", "lunge")]
    [InlineData("Stand *on guard*, then lunge.", "on guard, lunge")]
    [InlineData("Stand on\nguard.", "on guard")]
    [InlineData("Be on your guard.", "guard")]
    [InlineData("Turn into the flèche.", "flèche")]
    [InlineData("Turn into the FLÈCHE.", "FLÈCHE")]
    [InlineData("See the [lunge](https://example.org/).", "")]
    [InlineData("## The lunge\nGo.", "")]
    [InlineData("- Go.\n- Lunge.", "Lunge")]
    public void A_whole_word_is_marked_where_it_first_stands(string letter, string marked)
    {
        var plan = Practice(letter).Plan("ansel");
        Assert.Equal(marked, string.Join(", ", Terms(plan.Programme.Letter).Select(t => t.Words)));
        Assert.Equal(
            Practice(letter).Without("glossary.yaml").Plan("ansel").Programme.Letter.Lines(),
            plan.Programme.Letter.Lines()
        );
    }

    [Fact]
    public void A_page_explains_the_words_of_its_own_texts_in_their_order()
    {
        var plan = Practice("A lunge.").Edit("cautions/calf-pull.md", "\n---\n", "\n---\nMore after a flèche. ").Plan("ansel");
        Assert.Equal(["lunge: A long step."], Explained(plan, "index.html"));
        Assert.Equal(["flèche: A run.", "on guard: How you stand.", "lunge: A long step."], Explained(plan, "session-1.html"));
        Assert.Equal(
            ["guard: What covers you.", "flèche: A run.", "on guard: How you stand.", "lunge: A long step."],
            Explained(plan, "exercise-sway.html")
        );
        Assert.Equal(["flèche: A run."], Explained(plan, "before-you-start.html"));
        Assert.Empty(Explained(plan, "weeks.html"));
    }

    [Fact]
    public void On_one_page_a_word_is_marked_once_outside_the_cautions()
    {
        var plan = Practice("Go.").Member("ansel", ["- use: sway\n- use: nod"]).Plan("ansel");
        Assert.Equal(
            [1, 0],
            plan.Sessions[0].Uses.Select(u => u.Text.Instructions.SelectMany(Terms).Count(t => t.Word == "lunge"))
        );
        Assert.Equal([1, 1], plan.Exercises.Select(e => e.Text.Instructions.SelectMany(Terms).Count(t => t.Word == "lunge")));
    }

    [Fact]
    public void A_client_of_another_language_gets_no_words_in_the_practice_s_own()
    {
        var plan = GermanClub.Translated.With("glossary.yaml", "calf: Die Wade.\n").Plan("odile");
        Assert.Empty(plan.Exercises.SelectMany(e => Explained(plan, e.Path)));
    }

    [Theory]
    [InlineData("\"-\": A sign.\n\"(\": Another.\nlunge: A long step.")]
    [InlineData("lunge: A long step.\nLunge: Another step.")]
    public void Odd_words_do_no_harm(string glossary) =>
        Assert.Equal(
            ["lunge: A long step."],
            Explained(Practice("A lunge - (so).").With("glossary.yaml", glossary + "\n").Plan("ansel"), "index.html")
        );

    private static LittlePractice Practice(string letter) =>
        Club
            .Empty.With(
                "glossary.yaml",
                "lunge: A long step.\non guard: How you stand.\nguard: What covers you.\nflèche: A run.\n"
            )
            .Exercise(
                "sway",
                "2 x hold 30 s, rest 20 s, each side",
                body: "Your guard.\n\n## Set up\nStand on guard.\n\n## Do\nLunge."
            )
            .Exercise("nod", "hold 10 s", trains: "cervical flexion", body: "## Do\nLunge for {hold}.")
            .Member("ansel", ["- use: sway"], letter: letter);

    private static IEnumerable<Inline.Term> Terms(Gradus.Domain.Prose prose) => prose.Inlines().OfType<Inline.Term>();

    private static string[] Explained(Plan plan, string path) =>
        [.. plan.TermsOn(path).Select(t => $"{t.Word}: {t.Explanation}")];
}
