using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Formula, steps and a slow count of the seconds agree over generated doses, and the comparison notices each planted
/// mistake.</summary>
[Trait("Slow", "yes")]
public sealed class DoseArithmeticTests(ITestOutputHelper output)
{
    private static readonly Lazy<GeneratedLine[]> Lines = new(() => GeneratedLines.Take(2500, seed: 51).ToArray());

    private static readonly Lazy<(Dose Dose, DoseSettings Settings)[]> Doses = new(() =>
        (
            from line in Lines.Value
            let dose = DoseOf.Line(line.Text)
            from settled in new[] { dose.Low(), dose.At(c => (c.Low + c.High) / 2), dose.High() }
            from settings in new[] { DoseOf.Usual, DoseOf.Unusual }
            select (settled, settings)
        ).ToArray()
    );

    [Fact]
    public void The_closed_formula_the_steps_and_a_slow_count_give_the_same_seconds()
    {
        foreach (var (dose, settings) in Doses.Value)
        {
            var counted = NaiveClock.Count(dose, settings);
            Assert.Equal(counted, DoseMeasures.Of(dose.Settled(), settings).Seconds.Value);
            Assert.Equal(counted, Timeline.Of(dose.Settled(), settings).Seconds.Value);
        }

        GeneratedLines.ShowSpread(Lines.Value, output);
    }

    [Fact]
    public void Each_planted_mistake_in_adding_up_is_noticed()
    {
        var doses = Doses
            .Value.Take(3000)
            .Select(d => (d.Dose, d.Settings, Right: DoseMeasures.Of(d.Dose.Settled(), d.Settings).Seconds.Value))
            .ToArray();
        foreach (var slip in Enum.GetValues<Slip>().Where(s => s != Slip.None))
        {
            var noticed = doses.Count(d => NaiveClock.Count(d.Dose, d.Settings, slip) != d.Right);
            output.WriteLine($"{slip}: noticed in {noticed} of {doses.Length} doses");
            Assert.True(noticed > 0, $"{slip} was never noticed");
        }
    }

    [Fact]
    public void Measures_added_up_from_the_steps_are_those_of_the_formula()
    {
        foreach (var (dose, settings) in Doses.Value)
        {
            var measures = DoseMeasures.Of(dose.Settled(), settings);
            var steps = Timeline.Of(dose.Settled(), settings).Steps.OfType<TimelineStep.Work>().ToArray();
            var times = dose.Terms.Side is SideTerm.Both ? 2 : 1;
            AssertSame(StepSum.Of(steps, times), measures.Total);
            if (dose.Terms.Side is not (SideTerm.Each or SideTerm.Alternate))
                continue;
            var first = dose.Settled().Sides.First;
            AssertSame(StepSum.Of(steps.Where(s => s.Side == first), 1), measures.First);
            AssertSame(StepSum.Of(steps.Where(s => s.Side == first.Other()), 1), measures.Second);
            Assert.Equal(WorkMeasures.None, measures.Unsided);
        }
    }

    [Fact]
    public void Each_planted_mistake_in_measuring_is_noticed()
    {
        foreach (var slip in Enum.GetValues<MeasureSlip>().Where(s => s != MeasureSlip.None))
        {
            var noticed = Doses.Value.Count(d =>
            {
                var steps = Timeline.Of(d.Dose.Settled(), d.Settings).Steps.OfType<TimelineStep.Work>();
                return !AreSame(
                    StepSum.Of(steps, d.Dose.Terms.Side is SideTerm.Both ? 2 : 1, slip),
                    DoseMeasures.Of(d.Dose.Settled(), d.Settings).Total
                );
            });
            output.WriteLine($"{slip}: noticed in {noticed} of {Doses.Value.Length} doses");
            Assert.True(noticed > 0, $"{slip} was never noticed");
        }
    }

    [Fact]
    public void No_step_is_empty_and_every_dose_begins_and_ends_with_work()
    {
        foreach (var (dose, settings) in Doses.Value)
        {
            var steps = Timeline.Of(dose.Settled(), settings).Steps;
            Assert.All(steps, step => Assert.True(step.Seconds > Seconds.Zero));
            Assert.All(new[] { steps[0], steps[^1] }, step => Assert.IsType<TimelineStep.Work>(step));
            Assert.All(steps, step =>
                Assert.Equal(dose.Terms.Side is SideTerm.Each or SideTerm.Alternate or SideTerm.On, step.Side is not null)
            );
        }
    }

    private static void AssertSame(WorkMeasures expected, WorkMeasures measures) =>
        Assert.True(AreSame(expected, measures), $"{expected} is not {measures}");

    /// <summary>Efforts of a ramp may be thirds; they are added here to far more places than are ever shown.</summary>
    private static bool AreSame(WorkMeasures one, WorkMeasures other) =>
        one with { EffortSeconds = 0 } == other with { EffortSeconds = 0 }
        && Math.Abs(one.EffortSeconds - other.EffortSeconds) < 1e-15m;
}
