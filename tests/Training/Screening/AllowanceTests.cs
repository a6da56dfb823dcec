using Gradus.Domain;
using Gradus.Trainings;
using Verdict = Gradus.Trainings.Verdict;

namespace Gradus.Tests.Trainings;

/// <summary>What a coach is told of one exercise before it is in a programme. What hurts on one side leaves the other to train:
/// common practice, no source; that a leave and its limits stay in force is practice-format.md.</summary>
public sealed class AllowanceTests
{
    private const string Ankle = "calf-strain";

    /// <summary>Lying on the side rests on no ankle; who stands stands on both. What is said once, without a side, is true of
    /// both.</summary>
    [Theory]
    [InlineData("no", "side-lying", "each side", "Allowed")]
    [InlineData("yes, left", "side-lying", "each side", "Limited: left Forbidden calf-strain")]
    [InlineData("yes, right", "side-lying", "each side", "Limited: right Forbidden calf-strain")]
    [InlineData("yes, right", "side-lying", "alternate sides", "Limited: right Forbidden calf-strain")]
    [InlineData("yes, left", "side-lying", "both sides", "Forbidden: Forbidden calf-strain")]
    [InlineData("yes, left", "standing", "each side", "Forbidden: Forbidden calf-strain")]
    [InlineData("yes", "side-lying", "each side", "Forbidden: Forbidden calf-strain")]
    public void What_is_forbidden_on_one_side_is_allowed_on_the_other(
        string answer,
        string position,
        string sides,
        string said
    ) => Assert.Equal(said, Said($"2 x hold 30 s, {sides}", Ankle, answer, position: position));

    /// <summary>The trunk has no second side to turn to: its one motion is judged whole.</summary>
    [Fact]
    public void What_has_no_sides_is_tried_once()
    {
        var allowance = Of("2 x hold 30 s", Ankle, "no", trains: "thoracolumbar extension");
        Assert.Equal((Verdict.Allowed, 1), (allowance.Verdict, allowance.Tried.Count));
        Assert.Equal(2, Of("2 x hold 30 s, each side", Ankle, "no").Tried.Count);
    }

    [Theory]
    [InlineData("[]", "Forbidden: NotCleared faint-spells")]
    [InlineData(
        "[{ condition: faint-spells, by: her doctor, on: 2027-01-01, until: 2028-01-01 }]",
        "Limited: rests faint-spells"
    )]
    [InlineData(
        "[{ condition: faint-spells, by: her doctor, on: 2027-01-01, until: 2027-01-05 }]",
        "Forbidden: ClearanceShort faint-spells"
    )]
    [InlineData(
        "[{ condition: faint-spells, by: her doctor, on: 2027-01-01, until: 2028-01-01, limit: hold at most 20 s }]",
        "Forbidden: BeyondLimit faint-spells"
    )]
    public void A_leave_is_named_as_what_it_rests_on_and_a_limit_holds_from_the_first_week(string clearances, string said) =>
        Assert.Equal(said, Said("2 x hold 30 s, each side", "faint-spells", "yes", "clear-first: [faint-spells]", clearances));

    /// <summary>Who is not active yet does hard work later (four gentle weeks, common practice, no source), which is no
    /// prohibition.</summary>
    [Theory]
    [InlineData("2 x press 10 s at 80%, each side", "Limited: TooEarly regularly-active")]
    [InlineData("2 x press 10 s at 50%, each side", "Allowed")]
    public void Work_that_comes_too_early_is_left_for_later(string dose, string said) =>
        Assert.Equal(said, Said(dose, "regularly-active", "no"));

    private static string Said(
        string dose,
        string condition,
        string answer,
        string more = "",
        string clearances = "[]",
        string position = "side-lying"
    )
    {
        var allowance = Of(dose, condition, answer, more, clearances, position);
        var reasons = string.Join(", ", allowance.Reasons.Select(Say).Distinct());
        return reasons.Length == 0 ? $"{allowance.Verdict}" : $"{allowance.Verdict}: {reasons}";
    }

    private static string Say(AllowanceReason reason)
    {
        var side = reason.Side switch
        {
            Side.Left => "left ",
            Side.Right => "right ",
            _ => "",
        };
        return $"{side}{reason.Against?.GetType().Name ?? "rests"} {reason.Condition}";
    }

    private static Allowance Of(
        string dose,
        string condition,
        string answer,
        string more = "",
        string clearances = "[]",
        string position = "side-lying",
        string trains = "ankle dorsiflexion"
    )
    {
        var own = condition == Ankle ? "" : "calf-strain: no, ";
        var practice = Club
            .Empty.Exercise("sway", dose, more, position, trains)
            .With(
                "conditions.yaml",
                """
                - { id: calf-strain, name: a calf strain, question: Have you strained a calf?, where: ankle, sided: yes }
                - { id: faint-spells, name: faint spells, question: Do you faint?, where: whole body }
                """
            )
            .Member("ansel", ["- use: sway"], answers: $"{{ {own}{condition}: \"{answer}\" }}", clearances: clearances)
            .Read();
        return Assert.Single(Allowance.Of(practice, practice.Clients[0]));
    }
}
