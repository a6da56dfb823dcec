using Gradus.Domain;

namespace Gradus.Tests.Domain;

public sealed class DoseInheritanceTests
{
    [Theory]
    [InlineData("2 x hold 30 s", "2-3 x hold 30-60 s, rest 20 s, each side", "2 x hold 30 s, rest 20 s, each side")]
    [InlineData("3 x hold 45 s, rest 30 s", "2-3 x hold 30-60 s, rest 20 s, each side", "3 x hold 45 s, rest 30 s, each side")]
    [InlineData("1 x hold 45 s", "2-3 x hold 30-60 s, rest 20 s, each side", "1 x hold 45 s, each side")]
    [InlineData(
        "2 x hold 30 s, on left",
        "2 x hold 30 s, rest 5 s, switch 20 s, each side, plus 1 x on left",
        "2 x hold 30 s, rest 5 s, on left"
    )]
    [InlineData(
        "2 x hold 30 s, alternate sides",
        "2 x hold 30 s, switch 20 s, each side, plus 1 x on left",
        "2 x hold 30 s, switch 20 s, alternate sides"
    )]
    [InlineData("2 x hold 30 s", "2 x hold 30 s, each side, plus 1 x on left", "2 x hold 30 s, each side, plus 1 x on left")]
    [InlineData(
        "2 x move 8 reps",
        "2 x move 6-8 reps, tempo 3-1-1-0, load 8 kg, leave 2",
        "2 x move 8 reps, tempo 3-1-1-0, load 8 kg, leave 2"
    )]
    [InlineData(
        "2 x move 8 reps, tempo 2-0-2-0, load 10 kg, leave 0",
        "2 x move 8 reps, tempo 3-1-1-0, load 8 kg, leave 2",
        "2 x move 8 reps, tempo 2-0-2-0, load 10 kg, leave 0"
    )]
    [InlineData("2 x move 30 s", "2 x move 6-8 reps, tempo 3-1-1-0, load 8 kg, leave 2", "2 x move 30 s, load 8 kg")]
    [InlineData("2 x raise 8 s", "2 x 2-3 x raise 8 s, pause 2 s", "2 x raise 8 s")]
    [InlineData("2-4 x hold 30 s", "2 x hold 30 s, rest 20 s", "2-4 x hold 30 s, rest 20 s")]
    public void A_line_takes_the_terms_it_does_not_name_from_the_exercise(string line, string exercise, string expected) =>
        Assert.Equal(expected, DoseInheritance.Complete(DoseOf.Line(line), DoseOf.Line(exercise)).ToString());

    [Theory]
    [InlineData(
        "2 x hold 30 s, rest 20 s, switch 15 s, each side, plus 1 x on left",
        "on rear leg",
        "2 x hold 30 s, rest 20 s, on rear leg"
    )]
    [InlineData("1 x hold 30 s, rest 20 s, each side, plus 1 x on left", "on rear leg", "1 x hold 30 s, on rear leg")]
    [InlineData("2 x hold 30 s, switch 15 s, alternate sides", "each side", "2 x hold 30 s, each side")]
    [InlineData("2 x hold 30 s, on left", "both sides", "2 x hold 30 s, both sides")]
    [InlineData("2-3 x hold 30 s", "on left", "2-3 x hold 30 s, on left")]
    public void Another_side_drops_plus_and_switch(string line, string side, string expected)
    {
        var term = DoseOf.Line($"hold 1 s, {side}").Terms.Side;
        Assert.NotNull(term);
        Assert.Equal(expected, DoseInheritance.WithSide(DoseOf.Line(line), term).ToString());
    }

    [Fact]
    public void An_inherited_rest_may_make_a_dose_too_long_and_that_can_be_asked()
    {
        var complete = DoseInheritance.Complete(DoseOf.Line("20 x hold 5 min"), DoseOf.Line("2 x hold 5 min, rest 15 min"));
        Assert.True(DoseBounds.IsTooLong(complete, DoseOf.Usual));
        Assert.False(DoseBounds.IsTooLong(DoseOf.Line("20 x hold 5 min"), DoseOf.Usual));
    }
}
