using System.Globalization;
using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Measures worked out by hand after dose-line.md, Arithmetic.</summary>
public sealed class DoseMeasuresTests
{
    [Theory]
    [InlineData("3 x hold 30 s", 90, 0, 0, "0", 0)]
    [InlineData("3 x breathe 5 breaths", 150, 0, 0, "0", 0)]
    [InlineData("press 10 s at 50%", 0, 10, 0, "5", 0)]
    [InlineData("press 10 s", 0, 10, 10, "0", 0)]
    [InlineData("press 10 s at effort 7", 0, 10, 10, "0", 0)]
    [InlineData("press 10 s at 20 to 100% in 5 steps", 0, 10, 0, "6", 0)]
    [InlineData("press 9 s at 50 to 25% in 3 steps", 0, 9, 0, "3.375", 0)]
    [InlineData("2 x 4 x raise 8 s at 70%, pause 2 s", 0, 64, 0, "44.8", 8)]
    [InlineData("1 x 1 x raise 8 s", 0, 8, 8, "0", 1)]
    [InlineData("2 x move 8 reps", 0, 0, 0, "0", 16)]
    [InlineData("2 x 3 x move 8 reps", 0, 0, 0, "0", 48)]
    [InlineData("2 x 3 x move 20 s", 0, 0, 0, "0", 6)]
    [InlineData("2 x 3 x hold 5 breaths", 300, 0, 0, "0", 6)]
    [InlineData("2 x 3 x carry 20 m", 0, 0, 0, "0", 6)]
    [InlineData("2 x (3 x (2 x press 5 s at 40% then move 4 reps) then hold 30 s)", 60, 60, 0, "24", 36)]
    [InlineData("2 x 3 x press 5 s at 40%, each side", 0, 60, 0, "24", 12)]
    [InlineData("2 x 3 x press 5 s at 40%, each side, plus 1 x on left", 0, 75, 0, "30", 15)]
    [InlineData("2 x 3 x press 5 s at 40%, alternate sides", 0, 60, 0, "24", 12)]
    [InlineData("2 x 3 x press 5 s at 40%, both sides", 0, 60, 0, "24", 12)]
    [InlineData("2 x 3 x press 5 s at 40%, on left", 0, 30, 0, "12", 6)]
    public void The_measures_of_a_dose_are_those_worked_out_by_hand(
        string line,
        int stretch,
        int contraction,
        int unrated,
        string effort,
        int reps
    )
    {
        var measures = DoseOf.Measures(line);
        Assert.Equal(
            new WorkMeasures(
                new(stretch),
                new(contraction),
                new(unrated),
                decimal.Parse(effort, CultureInfo.InvariantCulture),
                reps
            ),
            measures.Total
        );
        Assert.Equal(effort, (measures.EffortSeconds / 1.0000000000000000000000000000m).ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Each_side_has_its_own_measures_and_plus_goes_to_the_first()
    {
        var measures = DoseOf.Measures("2 x hold 30 s, each side, plus 1 x on right");
        Assert.Equal(90, measures.First.StretchSeconds.Value);
        Assert.Equal(60, measures.Second.StretchSeconds.Value);
        Assert.Equal(WorkMeasures.None, measures.Unsided);
    }

    [Fact]
    public void Both_sides_at_once_count_every_measure_for_each_side_and_the_seconds_once()
    {
        var measures = DoseOf.Measures("2 x 3 x press 5 s at 40%, both sides");
        Assert.Equal(measures.First, measures.Second);
        Assert.Equal(30, measures.First.ContractionSeconds.Value);
        Assert.Equal(30, measures.Seconds.Value);
    }

    [Theory]
    [InlineData("2 x hold 30 s")]
    [InlineData("2 x hold 30 s, on left")]
    public void Without_two_sides_the_measures_belong_to_no_side_in_particular(string line)
    {
        var measures = DoseOf.Measures(line);
        Assert.Equal(60, measures.Unsided.StretchSeconds.Value);
        Assert.Equal(WorkMeasures.None, measures.First + measures.Second);
    }
}
