namespace Gradus.Tests.Planning;

/// <summary>The rarer changes between two weeks, and those that are not said because nothing is other.</summary>
public sealed class ChangeOfTermsTests
{
    [Theory]
    [InlineData("2 x hold 45 s, on left", "2 x hold 30 s, on left", "−15 s a hold")]
    [InlineData("breathe 60 s, on left", "breathe 90 s, on left", "+30 s of breathing")]
    [InlineData("pull 5 s at 40%, on left", "pull 8 s at 40%, on left", "+3 s a pull")]
    [InlineData("press 10 s, on left", "press 5 s, on left", "−5 s a press")]
    [InlineData("raise 5 s, on left", "raise 6 s, on left", "+1 s each raise")]
    [InlineData("move 30 s, on left", "move 45 s, on left", "+15 s of movement")]
    [InlineData("carry 40 m, on left", "carry 30 m, on left", "10 metres less")]
    [InlineData("hold 6 breaths, on left", "hold 5 breaths, on left", "1 breath fewer")]
    [InlineData("move 10 reps, on left", "move 8 reps, on left", "2 repetitions fewer")]
    [InlineData("1 x 4 x raise 5 s, on left", "1 x 3 x raise 5 s, on left", "once less")]
    [InlineData("(2 x (press 5 s then hold 20 s)), on left", "(3 x (press 5 s then hold 20 s)), on left", "repeat once more")]
    [InlineData("(3 x (press 5 s then hold 20 s)), on left", "(1 x (press 5 s then hold 20 s)), on left", "repeat 2 fewer times")]
    [InlineData("(hold 20 s then press 5 s), on left", "(press 5 s then hold 20 s), on left", "the work itself is another one")]
    [InlineData("hold 20 s, on left", "hold 2 breaths, on left", "the work itself is another one")]
    [InlineData("1 x 2 x raise 5 s, pause 4 s, on left", "1 x 2 x raise 5 s, pause 6 s, on left", "+2 s between the times")]
    [InlineData("1 x 2 x raise 5 s, pause 4 s, on left", "1 x 2 x raise 5 s, on left", "−4 s between the times")]
    [InlineData("2 x hold 30 s, rest 30 s, on left", "2 x hold 30 s, rest 20 s, on left", "−10 s of rest")]
    [InlineData("move 8 reps, on left", "move 8 reps, tempo 3-1-2-0, on left", "now 3 s down, 1 s wait, 2 s up, 0 s wait")]
    [InlineData("move 8 reps, tempo 3-1-2-0, on left", "move 8 reps, on left", "at your own pace")]
    [InlineData("move 8 reps, load 4 kg, on left", "move 8 reps, on left", "without the load")]
    [InlineData("move 8 reps, leave 2, on left", "move 8 reps, on left", "no repetition need be left over")]
    [InlineData("press 10 s at 40%, on left", "press 10 s, on left", "no effort is asked for any more")]
    [InlineData(
        "(press 5 s at 40% then press 8 s at 40%), on left",
        "(press 5 s at 60% then press 8 s at 60%), on left",
        "now at 60 per cent of the hardest you could do"
    )]
    [InlineData("hold 30 s, on left", "hold 30 s", "no side is named any more")]
    [InlineData("hold 30 s, each side", "hold 30 s, on right", "now on right leg")]
    [InlineData("hold 30 s, each side", "hold 30 s, alternate sides", "now on legs in turn, left leg first")]
    public void It_is_said(string before, string now, string said) =>
        Assert.Equal(["Starting point", said], Changes($"1: \"{before}\", 2: \"{now}\"", 2));

    /// <summary>With one set there is no rest to change: only what is other in the work is said.</summary>
    [Theory]
    [InlineData("2 x hold 30 s, rest 20 s, on left", "1 x hold 60 s, on left", "1 set fewer, +30 s a hold")]
    [InlineData("1 x hold 60 s, on left", "3 x hold 60 s, rest 20 s, on left", "2 more sets")]
    public void A_rest_that_comes_or_goes_with_the_sets_is_not_said(string before, string now, string said) =>
        Assert.Equal(said, Changes($"1: \"{before}\", 2: \"{now}\"", 2).Last());

    [Fact]
    public void The_same_line_again_is_no_change() =>
        Assert.Equal(
            ["Starting point"],
            Changes("1: \"2 x hold 30 s, on left\", 2: \"2 x hold 30 s, on left\", 3: \"2 x hold 30 s, on left\"", 4)
        );

    [Fact]
    public void Of_two_lighter_weeks_each_is_held_against_the_last_full_one_and_so_is_the_next() =>
        Assert.Equal(
            [
                "Starting point",
                "Planned easy week: 2 sets fewer",
                "Planned easy week: 1 set fewer, −5 s a hold",
                "Since week 1: +10 s a hold",
            ],
            Changes("1: \"4 x hold 30 s, on left\", 3: \"3 x hold 25 s, on left\", 4: \"4 x hold 40 s, on left\"", 4, "[2, 3]")
        );

    /// <summary>Behind weeks with another version the first week is held against the last one of its own.</summary>
    [Fact]
    public void Behind_a_version_the_exercise_is_held_against_its_own_last_week()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30-60 s, on left", "easier: lean")
            .Exercise("lean", "hold 20 s, on left")
            .Member(
                "ansel",
                ["- use: sway\n  by-week: { 1: hold 30 s, 2: { use: easier }, 3: hold 30 s, 4: { use: easier }, 5: hold 40 s }"],
                5
            )
            .Plan("ansel");
        Assert.Equal(
            ["Starting point", "Same as week 1", "Since week 3: +10 s a hold"],
            plan.Sessions[0].Uses[0].Doses.Select(d => d.Change)
        );
        Assert.Equal(["Starting point", "Same as week 2"], plan.Sessions[0].Uses[1].Doses.Select(d => d.Change));
    }

    private static IEnumerable<string> Changes(string byWeek, int weeks, string lighter = "[]") =>
        Club
            .Empty.Exercise("sway", "1-4 x hold 10-90 s")
            .Member("ansel", [$"- use: sway\n  by-week: {{ {byWeek} }}"], weeks, lighter: lighter)
            .Plan("ansel")
            .Sessions[0]
            .Uses[0]
            .Doses.Select(d => d.Change);
}
