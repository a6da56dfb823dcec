using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Every rung of the ladders of made lines: dose-line.md, How it grows.</summary>
[Trait("Slow", "yes")]
public sealed class LadderTests(ITestOutputHelper output)
{
    [Fact]
    public void From_low_to_high_no_measure_falls_and_no_two_kinds_of_number_rise_at_once()
    {
        var (lines, rungs) = (0, 0);
        foreach (var dose in GeneratedLines.Take(1500, seed: 9).Select(l => DoseOf.Line(l.Text)))
        {
            var choices = dose.Actions.Select(a => a.Times ?? new(1)).Concat(dose.Parts.Select(p => p.Times));
            if (choices.Aggregate(1L, (all, range) => all * (range.High - range.Low + 1)) > 60)
                continue;
            var ladder = Ladder.Of(dose, DoseOf.Usual).Rungs;
            Assert.Equal(dose.Low(), ladder[0].Dose);
            Assert.Equal(dose.High(), ladder[^1].Dose);
            Assert.All(ladder, r => Assert.Equal(r.Dose, DoseOf.Line(r.Dose.ToString())));
            Assert.All(ladder.Zip(ladder.Skip(1)), step => Assert.Null(Fault(step.First.Dose, step.Second.Dose)));
            (lines, rungs) = (lines + 1, rungs + ladder.Count);
        }

        output.WriteLine($"{lines} lines, {rungs} rungs");
        Assert.True(lines > 500 && rungs > 3000);
    }

    [Theory]
    [InlineData("2 x hold 40 s", "2 x hold 35 s", "less")]
    [InlineData("2 x hold 30 s", "3 x hold 35 s", "2 kinds rise")]
    [InlineData("2 x 3 x raise 6 s at effort 5", "2 x 4 x raise 6 s at effort 6", "2 kinds rise")]
    public void A_step_that_is_none_is_seen(string before, string now, string fault) =>
        Assert.Equal(fault, Fault(DoseOf.Line(before), DoseOf.Line(now)));

    private static string? Fault(Dose before, Dose now)
    {
        if (!SideWork.Of(now.Settled(), DoseOf.Usual).IsNoLessThan(SideWork.Of(before.Settled(), DoseOf.Usual)))
            return "less";
        var up = new[]
        {
            now.Sets.Low > before.Sets.Low,
            Rises(before, now, a => a.Times?.Low ?? 1)
                || before.Parts.Zip(now.Parts).Any(p => p.Second.Times.Low > p.First.Times.Low),
            Rises(before, now, a => a.Amount.Number.Low),
            Rises(before, now, a => a.Effort?.Match(s => s.Percent.Low, r => r.First.Low + r.Last.Low, f => f.Rating.Low) ?? 0),
        }.Count(kind => kind);
        return up > 1 ? $"{up} kinds rise" : null;
    }

    private static bool Rises(Dose before, Dose now, Func<DoseAction, int> number) =>
        before.Actions.Zip(now.Actions).Any(a => number(a.Second) > number(a.First));
}
