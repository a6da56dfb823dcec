using Gradus.Domain;

namespace Gradus.Tests.Reading;

public sealed class ConditionReaderTests
{
    [Fact]
    public void Those_of_the_practice_are_bound_behind_those_that_everybody_is_asked() =>
        Assert.Equal(
            [
                new(
                    new("calf-strain"),
                    "a calf strain in the last 6 weeks",
                    "Have you strained a calf in the last 6 weeks?",
                    Of("ankle"),
                    true,
                    At(1, 3)
                ),
                new(
                    new("faint-spells"),
                    "fainting or dizzy spells",
                    "Have you fainted or felt dizzy in the last 3 months?",
                    Of("whole body"),
                    false,
                    At(6, 3)
                ),
                new(new("sore-wrist"), "a sore wrist", "Is a wrist of yours sore?", Of("wrist"), true, At(10, 3)),
            ],
            LittlePractice.Golden.Read().Conditions.Where(c => c.Basis is null)
        );

    /// <summary>practice-format.md lists the ids; each question can be reviewed: why it is asked, where that comes from, and how
    /// far the source is confirmed.</summary>
    [Fact]
    public void Everybody_is_asked_what_the_format_lists_and_each_question_says_why()
    {
        var always = LittlePractice.Golden.Read().Conditions.Where(c => c.IsAlwaysAsked).ToArray();
        Assert.Equal(Domain.FloorAnswers.Ids, always.Select(c => c.Id.Text));
        Assert.All(always, c => Assert.EndsWith("?", c.Question, StringComparison.Ordinal));
        Assert.All(always, c =>
            Assert.Contains(c.Basis?.Mark, new[] { "seen", "second-hand", "memory", "common practice, no source" })
        );
        Assert.All(always, c => Assert.True((c.Basis?.Source.Length, c.Basis?.Because.Length) is (> 10, > 10), c.Id.Text));
    }

    [Fact]
    public void A_practice_may_put_such_a_question_in_its_own_words_but_not_ask_less()
    {
        const string own = "- id: hernia\n  name: a rupture\n  question: Is there a rupture?\n  where: whole body\n";
        var reworded = LittlePractice.Golden.Edit("conditions.yaml", "- id: faint-spells", own + "- id: faint-spells");
        var practice = reworded.Read();
        var hernia = Assert.Single(practice.Conditions, c => c.Id.Text == "hernia");
        Assert.Equal(("a rupture", true, 21), (hernia.Name, hernia.IsAlwaysAsked, practice.Conditions.ToList().IndexOf(hernia)));
        var narrower = Assert.Single(
            reworded.Edit("conditions.yaml", "rupture?\n  where: whole body", "rupture?\n  where: lower-back").Findings()
        );
        Assert.Equal(
            (
                "conditions.yaml:6:3",
                "'hernia' is asked of everybody, for the whole body, without sides; here it is asked otherwise."
            ),
            (narrower.At.ToString(), narrower.Message)
        );
    }

    [Fact]
    public void A_condition_that_cannot_be_bound_is_not_called_unknown_elsewhere()
    {
        var wrong = LittlePractice.Golden.Edit("conditions.yaml", "  where: ankle\n", "  where: elbo\n");
        Assert.Equal(["conditions.yaml:4:10"], wrong.Findings().Select(f => f.At.ToString()));
    }

    [Fact]
    public void A_list_of_conditions_that_cannot_be_read_is_said_once()
    {
        Assert.Single(LittlePractice.Golden.With("conditions.yaml", "- id: [calf-strain").Findings());
        Assert.Single(LittlePractice.Golden.Without("conditions.yaml").Findings());
        Assert.Single(LittlePractice.Golden.With("conditions.yaml", "calf-strain: yes").Findings());
    }

    private static Region Of(string name) => Region.Find(name) ?? throw new ArgumentException(name, nameof(name));

    private const string Former = "'heart-metabolic-kidney' is not asked any more: 3 questions took its place.";

    /// <summary>The id of before, wherever it may stand, is answered by the three that took its place.</summary>
    [Theory]
    [InlineData("exercises/sway.md", "not-with: [calf-strain]", "not-with: [calf-strain, heart-metabolic-kidney]")]
    [InlineData("exercises/sway.md", "not-with: [calf-strain]", "not-with: [calf-strain]\nclear-first: [heart-metabolic-kidney]")]
    [InlineData(
        "clients/ansel/client.yaml",
        "clearances: []",
        "clearances: [{ condition: heart-metabolic-kidney, by: Dr Quill, on: 2026-11-01, until: 2027-11-01 }]"
    )]
    [InlineData("clients/ansel/answers.yaml", "  heart-disease: no\n", "  heart-disease: no\n  heart-metabolic-kidney: yes\n")]
    public void An_id_of_before_is_told_what_took_its_place(string path, string said, string instead)
    {
        var finding = Assert.Single(Before.Edit(path, said, instead).Findings());
        Assert.Equal(("condition-unknown", Former), (finding.Rule.Text, finding.Message));
        Assert.Equal(
            "Write heart-disease, metabolic-disease, kidney-disease in its place, each with what is true of it.",
            finding.Help
        );
    }

    /// <summary>Its answer cannot be taken for one of the three, nor for none.</summary>
    [Fact]
    public void An_answer_under_an_id_of_before_leaves_all_that_took_its_place_unread()
    {
        var practice = Before.Edit(
            "clients/ansel/answers.yaml",
            "  heart-disease: no\n  metabolic-disease: no\n  kidney-disease: no\n",
            "  heart-metabolic-kidney: no\n"
        );
        Assert.Equal(Former, Assert.Single(practice.Findings()).Message);
    }

    [Fact]
    public void A_question_of_ones_own_under_an_id_of_before_is_refused()
    {
        var finding = Assert.Single(
            Before
                .Edit(
                    "conditions.yaml",
                    "- id: faint-spells",
                    "- id: heart-metabolic-kidney\n  name: heart\n  question: Heart?\n  where: whole body\n- id: faint-spells"
                )
                .Findings()
        );
        Assert.Equal(("condition-unknown", Former), (finding.Rule.Text, finding.Message));
        Assert.Contains("heart-disease, metabolic-disease, kidney-disease", finding.Help, StringComparison.Ordinal);
    }

    private static readonly LittlePractice Before = Club
        .Empty.Exercise("sway", "hold 30 s, each side")
        .Member("ansel", ["- use: sway"]);

    private static Location At(int line, int column) => new("conditions.yaml", line, column);
}
