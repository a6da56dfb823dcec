using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Auditing;

/// <summary>When a dose asks more of what hurt: MoreAfterPain.md. The limits are the project's own (common practice, no
/// source).</summary>
public sealed class HarderDoseTests
{
    [Theory]
    [InlineData("3 x move 8 reps", "3 x move 8 reps", "")]
    [InlineData("3 x move 8 reps", "3 x move 9 reps", "more of each")]
    [InlineData("3 x move 8 reps", "4 x move 8 reps", "more sets")]
    [InlineData("3 x move 8 reps", "2 x move 12 reps", "more of each")] // as much work, and more at a time
    [InlineData("3 x move 8 reps", "2 x move 11 reps", "")] // less work
    [InlineData("3 x move 8 reps", "2 x move 8 reps", "")]
    [InlineData("3 x move 8 reps, tempo 2-0-2-0", "3 x move 8 reps, tempo 3-0-3-0", "a slower tempo")]
    [InlineData("3 x hold 30 s", "3 x hold 35 s", "longer times")]
    [InlineData("3 x 2 x raise 5 s at effort 4", "3 x 3 x raise 5 s at effort 4", "more times")]
    [InlineData("3 x press 10 s at 40%", "3 x press 10 s at 45%", "more effort")]
    [InlineData("3 x press 10 s at 40%", "1 x press 5 s at 45%", "more effort")] // less work, and harder
    [InlineData("3 x move 8 reps, load 4 kg", "3 x move 8 reps, load 5 kg", "another load")]
    [InlineData("3 x move 8 reps, load 4 kg", "3 x move 8 reps, load 3.5 kg", "")]
    [InlineData("3 x move 8 reps, load 4 kg", "3 x move 8 reps, load 3 bags", "another load")]
    [InlineData("3 x move 8 reps, load a green band", "3 x move 8 reps, load a red band", "another load")]
    [InlineData("3 x move 8 reps", "3 x move 8 reps, load a red band", "another load")]
    [InlineData("3 x move 8 reps, load a red band", "3 x move 8 reps", "")]
    [InlineData("2 x hold 30 s, each side", "2 x hold 30 s, each side, plus 1 x on left", "more sets on one side")]
    [InlineData("2 x hold 30 s", "2 x press 30 s at 20%", "more work")] // of another kind
    public void It_asks_more_where_something_is_harder_and_no_less_is_done(string was, string now, string more) =>
        Assert.Equal(more, string.Join(", ", HarderDose.More(Read(was), Read(now), DoseSettings.Default)));

    private static SettledDose Read(string line) =>
        Assert.IsType<DoseLineResult.Understood>(DoseLine.Read(line, DoseSettings.Default)).Dose.Settled();
}
