using System.Globalization;
using Gradus.Domain;

namespace Gradus.Tests.Domain;

public sealed class TimelineTests
{
    [Theory]
    [InlineData("2 x hold 30 s, rest 20 s", "hold 30, rest 20, hold 30")]
    [InlineData("2 x hold 30 s", "hold 30, hold 30")]
    [InlineData("2 x hold 30 s, rest 0 s", "hold 30, hold 30")]
    [InlineData("1 x 3 x raise 8 s, pause 2 s", "raise 8, pause 2, raise 8, pause 2, raise 8")]
    [InlineData("2 x move 5 reps, rest 1 min", "move 20, rest 60, move 20")]
    [InlineData("hold 3 breaths", "hold 30")]
    [InlineData("carry 20 m", "carry 20")]
    [InlineData(
        "press 10 s at 20 to 100% in 5 steps",
        "press 2 at 20, press 2 at 40, press 2 at 60, press 2 at 80, press 2 at 100"
    )]
    [InlineData("press 9 s at 60 to 20% in 3 steps", "press 3 at 60, press 3 at 40, press 3 at 20")]
    [InlineData("(2 x (press 5 s at 50% then pull 3 s) then hold 30 s)", "press 5 at 50, pull 3, press 5 at 50, pull 3, hold 30")]
    [InlineData("2 x hold 30 s, rest 20 s, on left", "hold 30, rest 20, hold 30")]
    [InlineData("2 x hold 30 s, rest 20 s, both sides", "hold 30, rest 20, hold 30")]
    public void The_steps_of_one_side_follow_each_other_with_rest_between_the_sets(string line, string steps) =>
        Assert.Equal(steps, Show(line));

    [Theory]
    [InlineData(
        "2 x hold 30 s, rest 20 s, each side",
        "1 hold 30, 1 rest 20, 1 hold 30, 2 switch 10, 2 hold 30, 2 rest 20, 2 hold 30"
    )]
    [InlineData("hold 30 s, each side, switch 0 s", "1 hold 30, 2 hold 30")]
    [InlineData(
        "hold 30 s, rest 5 s, each side, plus 2 x on left",
        "1 hold 30, 1 rest 5, 1 hold 30, 1 rest 5, 1 hold 30, 2 switch 10, 2 hold 30"
    )]
    public void A_switch_is_counted_once_between_the_two_sides(string line, string steps) => Assert.Equal(steps, Show(line));

    [Theory]
    [InlineData(
        "2 x hold 30 s, alternate sides",
        "1 hold 30, 2 switch 10, 2 hold 30, 1 switch 10, 1 hold 30, 2 switch 10, 2 hold 30"
    )]
    [InlineData(
        "2 x hold 30 s, rest 5 s, alternate sides",
        "1 hold 30, 2 switch 10, 2 hold 30, 1 switch 10, 1 hold 30, 2 switch 10, 2 hold 30"
    )]
    [InlineData(
        "2 x hold 30 s, rest 10 s, alternate sides",
        "1 hold 30, 2 switch 10, 2 hold 30, 1 rest 10, 1 hold 30, 2 switch 10, 2 hold 30"
    )]
    [InlineData("2 x hold 30 s, rest 0 s, alternate sides, switch 0 s", "1 hold 30, 2 hold 30, 1 hold 30, 2 hold 30")]
    public void Between_alternate_sets_the_longer_of_rest_and_switch_stands(string line, string steps) =>
        Assert.Equal(steps, Show(line));

    [Fact]
    public void A_step_says_which_set_round_repetition_and_step_of_a_ramp_it_is()
    {
        var steps = Steps("2 x (2 x (2 x press 4 s at 10 to 20% in 2 steps then hold 5 breaths)), each side, plus 1 x on left")
            .OfType<TimelineStep.Work>()
            .ToArray();
        Assert.Equal(2 * 5 * ((2 * 2) + 1), steps.Length);
        Assert.Equal("1.1.1.1 1.1.1.2 1.1.2.1 1.1.2.2 1.1.1. 1.2.1.1", string.Join(" ", steps.Take(6).Select(Place)));
        Assert.Equal("3.2.1. 1.1.1.1", string.Join(" ", steps.Skip(29).Take(2).Select(Place)));
        Assert.Equal(Side.Left, steps[29].Side);
        Assert.Equal(Side.Right, steps[30].Side);
        Assert.Equal((5, AmountUnit.Breaths), (steps[4].Action.Amount, steps[4].Action.Unit));
    }

    [Fact]
    public void A_felt_effort_is_no_percentage()
    {
        var step = Assert.IsType<TimelineStep.Work>(Assert.Single(Steps("carry 20 m at effort 6")));
        Assert.Equal(6, step.FeltEffort);
        Assert.Null(step.EffortPercent);
        Assert.Null(Assert.IsType<TimelineStep.Work>(Steps("press 5 s at 60%")[0]).FeltEffort);
    }

    [Fact]
    public void Every_verb_has_its_kind_of_step()
    {
        foreach (var verb in Verbs.All)
        {
            var amount = verb switch
            {
                Verb.Carry => "20 m",
                Verb.Move => "5 reps",
                _ => "5 s",
            };
            Assert.Equal(verb.ToString(), Steps($"{verb.Word()} {amount}")[0].Kind.ToString());
        }
    }

    private static string Place(TimelineStep.Work step) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{step.Place.Set}.{step.Place.Round}.{step.Place.Repetition}.{step.RampStep}"
        );

    private static Series<TimelineStep> Steps(string line) => Timeline.Of(DoseOf.Line(line).Settled(), DoseOf.Usual).Steps;

    private static string Show(string line) =>
        string.Join(
            ", ",
            Steps(line)
                .Select(step =>
                    (DoseOf.Line(line).Settled().Sides.TurnOf(step.Side) is { } turn ? $"{(int)turn + 1} " : "")
                    + $"{step.Kind.ToString().ToLowerInvariant()} {step.Seconds.Value}"
                    + (
                        step is TimelineStep.Work { EffortPercent: { } percent }
                            ? string.Create(CultureInfo.InvariantCulture, $" at {percent}")
                            : ""
                    )
                )
        );
}
