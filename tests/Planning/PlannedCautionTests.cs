using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Planning;

public sealed class PlannedCautionTests
{
    private static readonly LittlePractice Two = Club
        .Empty.With("cautions/back-off.md", "---\ntitle: Back off\nkind: ease-off\n---\nDo less.\n")
        .Exercise("sway", "hold 30 s, each side", signs: "calf-pull, sharp-stab, slow-breath")
        .Exercise("brace", "hold 20 s, each side", signs: "sharp-stab, back-off, calf-pull", position: "sitting")
        .Member("ansel", ["- use: sway\n- use: brace", "- use: brace"]);

    [Fact]
    public void Cautions_are_merged_worst_first_each_with_the_exercises_it_belongs_to() =>
        Assert.Equal(
            [
                "Stop sharp-stab: sway brace",
                "EaseOff back-off: brace",
                "TakeCare slow-breath: sway",
                "Expect calf-pull: sway brace",
            ],
            Two.Plan("ansel").Cautions.Select(Show)
        );

    [Fact]
    public void A_session_has_those_of_its_own_exercises_only()
    {
        var plan = Two.Plan("ansel");
        Assert.Equal(
            ["Stop sharp-stab: brace", "EaseOff back-off: brace", "Expect calf-pull: brace"],
            plan.CautionsFor(plan.Sessions[1].Exercises).Select(Show)
        );
    }

    [Fact]
    public void Of_the_same_kind_the_id_decides() =>
        Assert.Equal(
            ["a-stop", "sharp-stab", "z-stop"],
            Two.With("cautions/z-stop.md", Stop)
                .With("cautions/a-stop.md", Stop)
                .Plan("ansel")
                .Cautions.Where(c => c.Kind == CautionKind.Stop)
                .Select(c => c.Id.Text)
        );

    private const string Stop = "---\ntitle: Something else\nkind: stop\nattaches-to: { stage: gain }\n---\nEnd it.\n";

    /// <summary>practice-format.md, Cautions: all keys must fit.</summary>
    [Theory]
    [InlineData("{ stage: gain }", "sway brace")]
    [InlineData("{ stage: load }", "")]
    [InlineData("{ position: sitting }", "brace")]
    [InlineData("{ trains: ankle dorsiflexion }", "sway brace")]
    [InlineData("{ trains: hip flexion }", "")]
    [InlineData("{ loads: knee }", "brace")]
    [InlineData("{ loads: ankle }", "sway")]
    [InlineData("{ property: balance }", "sway")]
    [InlineData("{ property: jumping }", "")]
    [InlineData("{ property: hard-effort }", "brace")]
    [InlineData("{ property: long-contraction }", "brace")]
    [InlineData("{ stage: gain, property: balance }", "sway")]
    [InlineData("{ position: sitting, property: balance }", "")]
    public void A_caution_is_added_where_all_that_it_attaches_to_fits(string attachesTo, string exercises)
    {
        var plan = Club
            .Empty.With("cautions/extra.md", $"---\ntitle: Extra\nkind: take-care\nattaches-to: {attachesTo}\n---\nMind it.\n")
            .Exercise("sway", "hold 30 s, each side", "loads: [ankle]\nproperties: [balance, head-low]")
            .Exercise("brace", "press 11 s at 70%, each side", "loads: [other knee]", position: "sitting")
            .Member("ansel", ["- use: sway\n- use: brace"])
            .Plan("ansel");
        Assert.Equal(exercises, string.Join(' ', plan.Cautions.Where(c => c.Id.Text == "extra").SelectMany(c => c.Exercises)));
        Assert.Equal(2, plan.Cautions.Count(c => c.Id.Text != "extra"));
    }

    /// <summary>What everybody is asked is; of the rest only what an exercise of the programme asks.</summary>
    [Fact]
    public void Health_answers_that_nobody_asks_for_are_not_in_the_plan()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, each side")
            .Settings("{ answers-on-pages: all }")
            .Member("ansel", ["- use: sway"], answers: "{ calf-strain: no, faint-spells: yes }")
            .Plan("ansel");
        Assert.Equal(["Have you strained a calf in the last 6 weeks?"], Own(plan).Select(a => a.Question));
    }

    /// <summary>A page may come into other hands: every "no" stays with the coach, unless the practice shows them all.</summary>
    [Theory]
    [InlineData("needed", "yes", "regularly-active calf-strain", true)]
    [InlineData("needed", "no", "regularly-active", true)]
    [InlineData("all", "no", "regularly-active calf-strain", false)]
    public void The_pages_hold_the_answers_that_change_something(string setting, string answer, string shown, bool elsewhere)
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, each side")
            .Settings($"{{ answers-on-pages: {setting} }}")
            .Member("ansel", ["- use: sway"], answers: $"{{ calf-strain: {answer} }}")
            .Plan("ansel");
        var named = plan.Health.Answers.Select(a =>
            a.Question.Contains("active on 3 days", StringComparison.Ordinal) ? "regularly-active"
            : a.Question.Contains("strained a calf", StringComparison.Ordinal) ? "calf-strain"
            : "another"
        );
        Assert.Equal(shown, string.Join(' ', named.Where(n => n != "another")));
        Assert.Equal(elsewhere, plan.Health.Elsewhere is not null);
        Assert.Equal(elsewhere ? 0 : FloorAnswers.Ids.Length - 1, named.Count(n => n == "another"));
    }

    [Fact]
    public void Pain_is_said_with_how_much_and_where()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, each side")
            .Member("ansel", ["- use: sway"], answers: "{ calf-strain: no, pain-now: [2 left knee, 1 lower-back] }")
            .Plan("ansel");
        Assert.Equal(
            "2 of 10, left knee; 1 of 10, lower back",
            plan.Health.Answers.Single(a => a.Question.StartsWith("Does anything hurt", StringComparison.Ordinal)).Reply
        );
        Assert.Equal(["You agreed to this training on Monday 2 November 2026."], plan.Health.Agreed);
    }

    /// <summary>The answers behind those that everybody gives.</summary>
    private static IEnumerable<PlannedAnswer> Own(Plan plan) => plan.Health.Answers.Skip(FloorAnswers.Ids.Length);

    private static string Show(PlannedCaution caution) => $"{caution.Kind} {caution.Id}: {string.Join(' ', caution.Exercises)}";
}
