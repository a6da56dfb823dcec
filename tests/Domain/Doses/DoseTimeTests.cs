using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Domain;

/// <summary>Doses added up by hand after dose-line.md, Arithmetic.</summary>
public sealed class DoseTimeTests
{
    [Theory]
    [InlineData("hold 30 s", 30)]
    [InlineData("3 x hold 30 s", 90)]
    [InlineData("3 x hold 30 s, rest 20 s", (3 * 30) + (2 * 20))]
    [InlineData("2 x 4 x raise 8 s, pause 2 s", 2 * ((4 * 8) + (3 * 2)))]
    [InlineData("2 x 4 x raise 8 s, pause 2 s, rest 30 s", (2 * ((4 * 8) + (3 * 2))) + 30)]
    [InlineData("3 x move 10 reps", 3 * 10 * 4)]
    [InlineData("3 x move 10 reps, tempo 3-1-2-0", 3 * 10 * 6)]
    [InlineData("3 x move 10 reps, tempo 3-0-x-1", 3 * 10 * 5)]
    [InlineData("2 x 3 x move 10 reps, pause 5 s", 2 * ((3 * 40) + (2 * 5)))]
    [InlineData("2 x move 10 reps, rest 1 min", (2 * 40) + 60)]
    [InlineData("2 x breathe 6 breaths", 2 * 60)]
    [InlineData("4 x carry 20 m, rest 30 s", (4 * 20) + (3 * 30))]
    [InlineData("(press 10 s then hold 20 s)", 30)]
    [InlineData("2 x (3 x (press 10 s then pull 5 s) then hold 30 s)", 2 * ((3 * 15) + 30))]
    [InlineData("(3 x (2 x press 10 s then hold 20 s)), pause 4 s", 3 * (24 + 20))]
    [InlineData("press 10 s at 20 to 100% in 5 steps", 10)]
    [InlineData("3 x hold 30 s, rest 20 s, each side", (2 * 130) + 10)]
    [InlineData("3 x hold 30 s, rest 20 s, per side, switch 15 s", (2 * 130) + 15)]
    [InlineData("3 x hold 30 s, rest 20 s, each side, plus 2 x on left", (2 * 130) + 10 + (2 * 50))]
    [InlineData("hold 30 s, rest 20 s, each side, plus 1 x on left", 60 + 10 + 50)]
    [InlineData("3 x hold 30 s, alternate sides", (3 * 70) + (2 * 10))]
    [InlineData("3 x hold 30 s, rest 5 s, alternate sides", (3 * 70) + (2 * 10))]
    [InlineData("3 x hold 30 s, rest 20 s, alternate sides", (3 * 70) + (2 * 20))]
    [InlineData("3 x hold 30 s, rest 20 s, alternate sides, switch 0 s", (3 * 60) + (2 * 20))]
    [InlineData("3 x hold 30 s, rest 20 s, both sides", 130)]
    [InlineData("3 x hold 30 s, rest 20 s, on left", 130)]
    public void The_seconds_of_a_dose_are_those_added_up_by_hand(string line, int seconds) =>
        Assert.Equal(seconds, DoseOf.Seconds(line));

    [Theory]
    [InlineData("3 x move 10 reps", true)]
    [InlineData("3 x move 10 reps, tempo 3-1-2-0", false)]
    [InlineData("3 x move 10 reps, tempo 3-1-x-0", true)]
    [InlineData("3 x move 30 s", false)]
    [InlineData("(move 10 reps then move 5 reps), tempo 2-0-2-0", false)]
    [InlineData("carry 20 m", true)]
    [InlineData("hold 5 breaths", false)]
    [InlineData("(hold 30 s then carry 20 m)", true)]
    public void A_total_with_an_average_in_it_is_about(string line, bool isAbout) =>
        Assert.Equal(isAbout, DoseOf.Measures(line).About);

    [Fact]
    public void The_practice_says_how_long_a_breath_a_switch_a_repetition_and_a_metre_are()
    {
        int Seconds(string line) => DoseMeasures.Of(DoseOf.Line(line).Settled(), DoseOf.Unusual).Seconds.Value;
        Assert.Equal(5 * 9, Seconds("hold 5 breaths"));
        Assert.Equal((2 * 30) + 7, Seconds("hold 30 s, each side"));
        Assert.Equal(10 * 3, Seconds("move 10 reps"));
        Assert.Equal(10, Seconds("carry 20 m"));
        Assert.Equal(11, Seconds("carry 21 m"));
    }

    [Fact]
    public void Low_takes_every_low_end_and_high_every_high_end()
    {
        var dose = DoseOf.Line("2-3 x hold 30-60 s, rest 20 s, each side");
        Assert.Equal((2 * 80) + 10, DoseMeasures.Of(dose.Low().Settled(), DoseOf.Usual).Seconds.Value);
        Assert.Equal((2 * 220) + 10, DoseMeasures.Of(dose.High().Settled(), DoseOf.Usual).Seconds.Value);
        Assert.False(dose.IsSettled);
        Assert.True(dose.Low().IsSettled && dose.High().IsSettled);
        Assert.Equal("1 x hold 30 s", DoseOf.Line("1-3 x hold 30 s, rest 20 s").Low().ToString());
    }

    [Fact]
    public void Four_hours_are_possible_and_a_second_more_is_not()
    {
        Assert.Equal(4 * 3600, DoseOf.Seconds("4 x hold 60 min"));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read("(4 x hold 60 min then hold 1 s)", DoseOf.Usual));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read("2 x hold 60 min, each side", DoseOf.Usual));
        Assert.IsType<DoseLineResult.Understood>(DoseLine.Read("2 x hold 60 min, each side, switch 0 s", DoseOf.Usual));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read("1-5 x hold 60 min", DoseOf.Usual));
    }

    [Fact]
    public void A_dose_with_ranges_or_of_more_than_four_hours_is_not_measured()
    {
        Assert.Throws<ArgumentException>(() => DoseMeasures.Of(DoseOf.Line("2-3 x hold 30 s").Settled(), DoseOf.Usual));
        Assert.Throws<ArgumentException>(() => Timeline.Of(DoseOf.Line("2-3 x hold 30 s").Settled(), DoseOf.Usual));
        var tooLong = DoseOf.Line("4 x hold 60 min") with { Terms = new(Rest: new(1)) };
        Assert.True(DoseBounds.IsTooLong(tooLong, DoseOf.Usual));
        Assert.Throws<ArgumentException>(() => Timeline.Of(tooLong.Settled(), DoseOf.Usual));
    }
}
