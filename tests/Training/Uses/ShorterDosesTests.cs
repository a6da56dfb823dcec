using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

public sealed class ShorterDosesTests
{
    [Theory]
    [InlineData(
        "3 x hold 60 s, rest 20 s",
        "2-3 x hold 30-60 s, rest 20 s",
        "2 x hold 60 s, rest 20 s; 3 x hold 30 s, rest 20 s; 2 x hold 30 s, rest 20 s"
    )]
    [InlineData("2 x hold 60 s, rest 20 s", "1-2 x hold 60 s, rest 20 s", "1 x hold 60 s")]
    [InlineData(
        "2 x (press 12 s at 50% then hold 25 s)",
        "2-3 x (press 10-15 s at 40-60% then hold 20-30 s)",
        "2 x (press 10 s at 50% then hold 20 s)"
    )]
    [InlineData("1 x 4 x raise 8 s, pause 4 s", "1 x 3-4 x raise 5-8 s, pause 4 s", "1 x 3 x raise 5 s, pause 4 s")]
    [InlineData("1 x press 30 s at 20 to 80% in 3 steps", "1 x press 20-40 s at 20 to 80% in 4 steps", "")]
    [InlineData("2 x hold 30 s", "2-3 x hold 30-60 s, rest 20 s", "")]
    [InlineData("1 x hold 20 s", "2-3 x hold 30-60 s, rest 20 s", "")]
    [InlineData("2 x hold 60 s", "2 x press 10-60 s", "")]
    [InlineData("2 x hold 60 s", "2 x hold 10-60 breaths", "")]
    [InlineData("3 x hold 60 s", "1-3 x (hold 30-60 s then press 5 s)", "")]
    [InlineData("9 x move 40 reps", "2-3 x move 8-12 reps, rest 45 s", "3 x move 8 reps; 2 x move 8 reps")]
    [InlineData("3 x move 40 reps", "2-3 x move 8-12 reps, rest 45 s", "3 x move 8 reps; 2 x move 8 reps")]
    [InlineData(
        "2 x (5 x (press 6 s at 50% then hold 20 s))",
        "2 x (3-5 x (press 6 s at 50% then hold 20 s))",
        "2 x (3 x (press 6 s at 50% then hold 20 s))"
    )]
    public void Shorter_doses_come_with_the_least_change_first(string done, string allowed, string shorter) =>
        Assert.Equal(
            shorter,
            string.Join("; ", ShorterDoses.Of(DoseOf.Line(done).Settled(), DoseOf.Line(allowed)).Select(d => d.ToString()))
        );
}
