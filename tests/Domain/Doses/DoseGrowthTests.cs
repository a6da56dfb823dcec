using Gradus.Domain;

namespace Gradus.Tests.Domain;

public sealed class DoseGrowthTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("2-3 x hold 30-60 s, rest 20 s, each side", "2x30 2x36 2x42 3x48 3x54 3x60")]
    [InlineData("1-10 x hold 1-2 s", "1x1 3x1 5x1 6x2 8x2 10x2")]
    public void Each_number_grows_on_its_own_and_a_half_goes_up(string line, string weeks) =>
        Assert.Equal(
            weeks,
            string.Join(
                " ",
                Enumerable
                    .Range(3, 6)
                    .Select(week => Grown(line, week, 3, 8))
                    .Select(d => $"{d.Sets}x{d.Parts[0].Actions[0].Amount.Number}")
            )
        );

    [Theory]
    [InlineData("1-2 x hold 30 s", 2, 3, "2 x hold 30 s")]
    [InlineData("1-2 x hold 30 s", 2, 4, "1 x hold 30 s")]
    [InlineData("1-4 x hold 30 s", 2, 3, "3 x hold 30 s")]
    public void A_number_half_way_between_two_is_rounded_up(string line, int week, int last, string expected) =>
        Assert.Equal(expected, Grown(line, week, 1, last).ToString());

    [Fact]
    public void One_week_gives_the_low_end() =>
        Assert.Equal("2 x hold 30 s, rest 20 s", Grown("2-3 x hold 30-60 s, rest 20 s", 4, 4, 4).ToString());

    [Fact]
    public void A_ramp_grows_in_steps_of_its_own_number_of_steps() =>
        Assert.Equal(
            [
                "1 x press 10 s at 20 to 60% in 5 steps",
                "1 x press 15 s at 22 to 68% in 5 steps",
                "1 x press 15 s at 24 to 76% in 5 steps",
                "1 x press 20 s at 26 to 84% in 5 steps",
                "1 x press 20 s at 28 to 92% in 5 steps",
                "1 x press 25 s at 30 to 100% in 5 steps",
            ],
            Enumerable.Range(1, 6).Select(week => Grown("press 10-25 s at 20-30 to 60-100% in 5 steps", week, 1, 6).ToString())
        );

    [Fact]
    public void A_rest_that_has_nothing_to_act_on_yet_falls_away_in_silence()
    {
        Assert.Equal("1 x hold 30 s", Grown("1-2 x hold 30 s, rest 20 s", 1, 1, 2).ToString());
        Assert.Equal("2 x hold 30 s, rest 20 s", Grown("1-2 x hold 30 s, rest 20 s", 2, 1, 2).ToString());
        Assert.Equal("1 x 1 x raise 8 s", Grown("1 x 1-3 x raise 8 s, pause 2 s", 1, 1, 3).ToString());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    public void A_week_outside_the_weeks_of_use_has_no_dose(int week) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Grown("2-3 x hold 30 s", week, 1, 6));

    [Fact]
    public void Growth_never_falls_meets_both_ends_and_keeps_whole_steps_and_settled_lines()
    {
        var lines = GeneratedLines.Take(1500, seed: 9).ToArray();
        foreach (var dose in lines.Select(line => DoseOf.Line(line.Text)))
        {
            var weeks = Enumerable.Range(2, 7).Select(week => DoseGrowth.At(dose, week, 2, 8)).ToArray();
            Assert.Equal(dose.Low(), weeks[0]);
            Assert.Equal(dose.High(), weeks[^1]);
            Assert.Equal(dose.High(), dose.High() with { Terms = dose.Terms });
            foreach (var week in weeks)
            {
                Assert.True(week.IsSettled);
                Assert.Equal(week, DoseOf.Line(week.ToString()));
                Assert.All(week.Actions.Where(a => a.Effort is Effort.Ramp), a =>
                    Assert.Equal(0, a.Amount.Number.Low % ((Effort.Ramp)a.Effort!).Steps)
                );
            }

            foreach (var (before, after) in weeks.Zip(weeks.Skip(1)))
                Assert.All(Numbers(before).Zip(Numbers(after)), pair => Assert.True(pair.First <= pair.Second));
        }

        GeneratedLines.ShowSpread(lines, output);
    }

    [Fact]
    public void The_comparison_notices_growth_that_rounds_down_or_forgets_the_ramp()
    {
        var doses = GeneratedLines.Take(1500, seed: 9).Select(line => DoseOf.Line(line.Text)).ToArray();
        int Noticed(Func<Count, int> pick) =>
            doses.Count(d => !Numbers(DoseGrowth.At(d, 2, 1, 3)).SequenceEqual(Numbers(d, pick)));
        var (down, forgetful) = (Noticed(c => (c.Low + c.High) / 2), Noticed(c => (c.Low + c.High + 1) / 2));
        output.WriteLine($"rounding down: {down}, ramps grown like other spans: {forgetful}");
        Assert.True(down > forgetful && forgetful > 0);
    }

    [Theory]
    [InlineData(3, 60, 2)]
    [InlineData(2, 60, 1)]
    [InlineData(1, 60, 1)]
    [InlineData(5, 50, 3)]
    [InlineData(4, 10, 1)]
    [InlineData(100, 60, 60)]
    [InlineData(3, 100, 3)]
    public void A_lighter_week_keeps_the_share_of_the_sets_half_up_and_at_least_one(int sets, int share, int kept) =>
        Assert.Equal(kept, DoseGrowth.Lighter(DoseOf.Line($"{sets} x hold 30 s").Settled(), share).Sets);

    [Fact]
    public void A_lighter_week_drops_a_rest_that_has_nothing_to_act_on_and_keeps_the_rest_of_plus()
    {
        Assert.Equal(
            "1 x hold 30 s, each side",
            DoseGrowth.Lighter(DoseOf.Line("2 x hold 30 s, rest 20 s, each side").Settled(), 60).ToString()
        );
        Assert.Equal(
            "1 x hold 30 s, rest 20 s, each side, plus 1 x on left",
            DoseGrowth.Lighter(DoseOf.Line("2 x hold 30 s, rest 20 s, each side, plus 1 x on left").Settled(), 60).ToString()
        );
        Assert.Throws<ArgumentException>(() => DoseGrowth.Lighter(DoseOf.Line("2-3 x hold 30 s").Settled(), 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => DoseGrowth.Lighter(DoseOf.Line("2 x hold 30 s").Settled(), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DoseGrowth.Lighter(DoseOf.Line("2 x hold 30 s").Settled(), 101));
    }

    private static Dose Grown(string line, int week, int first, int last) => DoseGrowth.At(DoseOf.Line(line), week, first, last);

    private static IEnumerable<int> Numbers(Dose dose) => Numbers(dose, count => count.Low);

    private static IEnumerable<int> Numbers(Dose dose, Func<Count, int> pick) =>
        [
            pick(dose.Sets),
            .. dose.Parts.Select(p => pick(p.Times)),
            .. dose.Actions.SelectMany(a => new[] { pick(a.Times ?? new(1)), pick(a.Amount.Number) }),
            .. dose.Actions.Select(a => a.Effort).OfType<Effort.Steady>().Select(e => pick(e.Percent)),
            .. dose.Actions.Select(a => a.Effort).OfType<Effort.Ramp>().SelectMany(e => new[] { pick(e.First), pick(e.Last) }),
        ];
}
