using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>What coaches do, as lines: common practice, no source.</summary>
public sealed class TradeFactsTests
{
    /// <summary>A passive stretch at the end of the range of up to ten slow breaths takes 90 to 120 s: common practice, no
    /// source.</summary>
    [Theory]
    [InlineData(9, 90)]
    [InlineData(10, 100)]
    [InlineData(12, 120)]
    public void Ten_slow_breaths_of_stretch_take_a_minute_and_a_half_to_two(int breath, int seconds)
    {
        var settings = DoseSettings.Default with { Breath = new(breath) };
        Assert.Equal(seconds, DoseMeasures.Of(DoseOf.Line("1 x hold 10 breaths").Settled(), settings).StretchSeconds.Value);
    }

    /// <summary>A still push built up in five equal steps to all there is and kept there a few seconds: common practice, no
    /// source.</summary>
    [Fact]
    public void A_push_is_built_up_in_five_equal_steps_and_kept_at_the_top()
    {
        var dose = DoseOf.Line("(press 10 s at 20 to 100% in 5 steps then press 3 s at 100%)");
        var steps = Timeline.Of(dose.Settled(), DoseOf.Usual).Steps.Cast<TimelineStep.Work>();
        Assert.Equal(
            [(2, 20m), (2, 40m), (2, 60m), (2, 80m), (2, 100m), (3, 100m)],
            steps.Select(s => (s.Seconds.Value, s.EffortPercent ?? 0))
        );
        Assert.Equal(6 + 3, DoseMeasures.Of(dose.Settled(), DoseOf.Usual).EffortSeconds);
    }

    /// <summary>One long stretch, then two to three rounds of a ramp, a pull and a stretch: common practice, no source.</summary>
    [Fact]
    public void Two_to_three_rounds_of_ramp_pull_and_stretch_follow_one_long_stretch()
    {
        var dose = DoseOf.Line(
            "(hold 10 breaths then 2-3 x (press 10 s at 20 to 100% in 5 steps then pull 5 s at 80% then hold 30 s)), each side"
        );
        var (low, high) = (
            DoseMeasures.Of(dose.Low().Settled(), DoseOf.Usual),
            DoseMeasures.Of(dose.High().Settled(), DoseOf.Usual)
        );
        Assert.Equal(100 + (2 * 30), low.First.StretchSeconds.Value);
        Assert.Equal(100 + (3 * 30), high.First.StretchSeconds.Value);
        Assert.Equal(2 * 15, low.First.ContractionSeconds.Value);
        Assert.Equal(3 * (6 + 4), high.First.EffortSeconds);
        Assert.Equal((2 * (100 + (3 * 45))) + 10, high.Seconds.Value);
    }

    /// <summary>Raises at the end of the range, three to four repetitions of 8 to 10 s, growing: common practice, no
    /// source.</summary>
    [Fact]
    public void Raises_at_the_end_of_the_range_grow_over_the_weeks()
    {
        var dose = DoseOf.Line("1-3 x 3-4 x raise 8-10 s");
        Assert.Equal(
            ["1 x 3 x raise 8 s", "1 x 3 x raise 10 s", "1 x 4 x raise 9 s", "1 x 4 x raise 10 s", "2 x 3 x raise 8 s"],
            Walked.Weeks("1-3 x 3-4 x raise 8-10 s", 5)
        );
        Assert.Equal(24, DoseMeasures.Of(dose.Low().Settled(), DoseOf.Usual).ContractionSeconds.Value);
        Assert.Equal(120, DoseMeasures.Of(dose.High().Settled(), DoseOf.Usual).ContractionSeconds.Value);
    }
}
