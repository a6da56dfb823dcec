using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>What coaches do, carried through six weeks as an envelope: common practice, no source. Every number by hand: low +
/// round-half-up((high − low)·k/5), k from 0 to 5.</summary>
public sealed class TradeGrowthTests
{
    /// <summary>A passive stretch at the end of the range of up to ten slow breaths takes 90 to 120 s: common practice, no
    /// source. Breaths 5 + 5·k/5; at 9 s a breath the last week takes 90 s, at 12 s 120 s.</summary>
    [Theory]
    [InlineData(9, "45 54 63 72 81 90")]
    [InlineData(10, "50 60 70 80 90 100")]
    [InlineData(12, "60 72 84 96 108 120")]
    public void A_stretch_grows_to_ten_slow_breaths(int breath, string seconds)
    {
        var settings = DoseSettings.Default with { Breath = new(breath) };
        Assert.Equal(
            [
                "1 x hold 5 breaths",
                "1 x hold 6 breaths",
                "1 x hold 7 breaths",
                "1 x hold 8 breaths",
                "1 x hold 9 breaths",
                "1 x hold 10 breaths",
            ],
            SixWeeks("hold 5-10 breaths").Select(d => d.ToString())
        );
        Assert.Equal(
            seconds,
            string.Join(
                ' ',
                SixWeeks("hold 5-10 breaths").Select(d => DoseMeasures.Of(d.Settled(), settings).StretchSeconds.Value)
            )
        );
    }

    /// <summary>An isometric ramp runs 20, 40, 60, 80, 100 % in five equal steps and is held at the top for a few seconds: common
    /// practice, no source. Five times grow(2, 4): 2, 2, 3, 3, 4, 4 (2·1/5 is nearer 0, 2·2/5 nearer 1, 2·3/5 nearer 1, 2·4/5
    /// nearer 2); the hold at the top 2 + 3·k/5: 2, 3, 3, 4, 4, 5.</summary>
    [Fact]
    public void A_ramp_keeps_its_five_efforts_while_its_time_grows()
    {
        var weeks = SixWeeks("(press 10-20 s at 20 to 100% in 5 steps then press 2-5 s at 100%)")
            .Select(d => Timeline.Of(d.Settled(), DoseOf.Usual).Steps.Cast<TimelineStep.Work>().ToArray())
            .ToArray();
        Assert.Equal([2, 2, 3, 3, 4, 4], weeks.Select(w => Assert.Single(w.Take(5).Select(s => s.Seconds.Value).Distinct())));
        Assert.Equal([2, 3, 3, 4, 4, 5], weeks.Select(w => w[5].Seconds.Value));
        Assert.All(weeks, w => Assert.Equal([20m, 40m, 60m, 80m, 100m, 100m], w.Select(s => s.EffortPercent)));
    }

    /// <summary>Starts easier and ends at all there is: first effort stays 20, the last 60 + 40·k/5, and the five efforts stay
    /// evenly spaced: common practice, no source.</summary>
    [Fact]
    public void A_ramp_that_grows_harder_stays_evenly_spaced()
    {
        var weeks = SixWeeks("press 10 s at 20 to 60-100% in 5 steps")
            .Select(d =>
                Timeline
                    .Of(d.Settled(), DoseOf.Usual)
                    .Steps.Cast<TimelineStep.Work>()
                    .Select(s => s.EffortPercent!.Value)
                    .ToArray()
            )
            .ToArray();
        Assert.Equal(
            [
                [20, 30, 40, 50, 60],
                [20, 32, 44, 56, 68],
                [20, 34, 48, 62, 76],
                [20, 36, 52, 68, 84],
                [20, 38, 56, 74, 92],
                [20, 40, 60, 80, 100],
            ],
            weeks
        );
    }

    /// <summary>Two to three rounds of ramp, pull and stretch follow one long stretch: common practice, no source. Rounds 2 +
    /// round-half-up(k/5): 2, 2, 2, 3, 3, 3; a round is 10 + 5 + 30 = 45 s, the long stretch ten breaths: 100 + 90 or 100 + 135
    /// s.</summary>
    [Fact]
    public void Rounds_of_ramp_pull_and_stretch_grow_from_two_to_three()
    {
        var weeks = SixWeeks(
                "(hold 10 breaths then 2-3 x (press 10 s at 20 to 100% in 5 steps then pull 5 s at 80% then hold 30 s))"
            )
            .ToArray();
        Assert.Equal([190, 190, 190, 235, 235, 235], weeks.Select(d => DoseMeasures.Of(d.Settled(), DoseOf.Usual).Seconds.Value));
        Assert.Equal(
            [160, 160, 160, 190, 190, 190],
            weeks.Select(d => DoseMeasures.Of(d.Settled(), DoseOf.Usual).StretchSeconds.Value)
        );
        Assert.Equal([20, 20, 20, 30, 30, 30], weeks.Select(d => DoseMeasures.Of(d.Settled(), DoseOf.Usual).EffortSeconds));
    }

    /// <summary>End-range raises of three to four repetitions of 8 to 10 s, started with less and grown in time and repetitions:
    /// common practice, no source. Repetitions 2 + 2·k/5: 2, 2, 3, 3, 4, 4; seconds 5 + 5·k/5.</summary>
    [Fact]
    public void Raises_start_with_less_and_grow_in_time_and_repetitions()
    {
        var weeks = SixWeeks("2 x 2-4 x raise 5-10 s, pause 5 s, rest 30 s").ToArray();
        Assert.Equal(
            ["2 x raise 5", "2 x raise 6", "3 x raise 7", "3 x raise 8", "4 x raise 9", "4 x raise 10"],
            weeks.Select(d => $"{d.Actions.Single().Times} x raise {d.Actions.Single().Amount.Number}")
        );
        Assert.Equal(
            [20, 24, 42, 48, 72, 80],
            weeks.Select(d => DoseMeasures.Of(d.Settled(), DoseOf.Usual).ContractionSeconds.Value)
        );
        Assert.Equal([60, 64, 92, 98, 132, 140], weeks.Select(d => DoseMeasures.Of(d.Settled(), DoseOf.Usual).Seconds.Value));
        Assert.All(weeks.Skip(3), d => Assert.InRange(d.Actions.Single().Times!.Low, 3, 4));
        Assert.All(weeks.Skip(3), d => Assert.InRange(d.Actions.Single().Amount.Number.Low, 8, 10));
    }

    /// <summary>The same in a client's plan, with a lighter fourth week: the growth counts on behind it.</summary>
    [Fact]
    public void In_a_plan_the_growth_goes_on_behind_a_lighter_week()
    {
        var plan = Club
            .Empty.Exercise("lift", "2 x 2-4 x raise 5-10 s, pause 5 s, rest 30 s, on left")
            .Member("ansel", ["- use: lift"], 6, lighter: "[4]")
            .Plan("ansel");
        Assert.Equal([60, 64, 92, 34, 132, 140], plan.Sessions[0].Uses[0].Doses.Select(d => d.Seconds.Value));
        Assert.Equal("A lighter week on purpose: 1 set fewer, raise 1 second longer", plan.Sessions[0].Uses[0].Doses[3].Change);
        Assert.Equal("Against week 3: 1 more time, raise 2 seconds longer", plan.Sessions[0].Uses[0].Doses[4].Change);
    }

    private static IEnumerable<Dose> SixWeeks(string envelope) =>
        Enumerable.Range(1, 6).Select(week => DoseGrowth.At(DoseOf.Line(envelope), week, 1, 6));
}
