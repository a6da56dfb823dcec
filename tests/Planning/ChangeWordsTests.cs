namespace Gradus.Tests.Planning;

/// <summary>What the client reads of a week beside its dose.</summary>
public sealed class ChangeWordsTests
{
    [Theory]
    [InlineData("2 x hold 30 s", "3 x hold 30 s", "1 more set")]
    [InlineData("2 x hold 30 s", "2 x hold 45 s", "+15 s a hold")]
    [InlineData("2 x hold 2 min", "2 x hold 30 s", "−1 min 30 s a hold")]
    [InlineData("3 x hold 45 s, rest 20 s", "2 x hold 60 s, rest 30 s", "1 set fewer, +15 s a hold, +10 s of rest")]
    [InlineData("2 x press 10 s at 40%", "2 x press 10 s at 60%", "now at 60 per cent of the hardest you could do")]
    [InlineData(
        "2 x press 20 s at 20 to 60% in 4 steps",
        "2 x press 20 s at 20 to 80% in 4 steps",
        "now from 20 to 80 per cent of the hardest you could do, in 4 equal steps"
    )]
    [InlineData("2 x 3 x raise 5 s, pause 4 s", "2 x 4 x raise 5 s, pause 4 s", "once more")]
    [InlineData("2 x move 8 reps", "2 x move 10 reps, load 4 kg", "2 more repetitions, with 4 kg")]
    [InlineData(
        "2 x carry 20 m at effort 5",
        "2 x carry 30 m at effort 6",
        "10 metres more, now at an effort that feels like 6 out of 10"
    )]
    [InlineData("breathe 6 breaths", "breathe 8 breaths", "2 more breaths")]
    [InlineData("2 x hold 30 s", "2 x press 30 s at 40%", "the work itself is another one")]
    [InlineData("2 x (press 5 s at 40% then hold 20 s)", "2 x (press 5 s at 40% then hold 30 s)", "+10 s a hold")]
    [InlineData("2 x hold 30 s, on left", "2 x hold 30 s, on right", "now on right leg")]
    [InlineData("2 x hold 30 s, each side, switch 5 s", "2 x hold 30 s, each side, switch 8 s", "+3 s to change sides")]
    [InlineData("2 x move 8 reps, leave 2", "2 x move 8 reps, leave 1", "stop with 1 left in you")]
    public void Every_change_is_said(string before, string now, string said) =>
        Assert.Equal(
            ["Starting point", said],
            Changes($"by-week: {{ 1: \"{before}{Sided(before)}\", 2: \"{now}{Sided(now)}\" }}", 2)
        );

    /// <summary>The way a dose with ranges grows: an outer number rises, and what stands inside it falls back.</summary>
    [Theory]
    [InlineData("2 x 3 x raise 10 s", "2 x 4 x raise 8 s", "once more, a little shorter")]
    [InlineData("2 x hold 60 s", "3 x hold 40 s", "1 more set, a little shorter")]
    [InlineData("1 x hold 60 s", "2 x hold 35 s", "1 more set, but shorter")]
    [InlineData("2 x 4 x raise 8 s", "3 x 3 x raise 8 s", "1 more set, with less in each")]
    [InlineData("2 x move 12 reps", "3 x move 9 reps", "1 more set, with less in each")]
    [InlineData(
        "2 x press 10 s at effort 5",
        "2 x press 9 s at effort 6",
        "now at an effort that feels like 6 out of 10, a little shorter"
    )]
    [InlineData(
        "2 x (2 x (press 6 s then hold 20 s))",
        "2 x (3 x (press 5 s then hold 16 s))",
        "repeat once more, a little shorter"
    )]
    [InlineData("2 x (press 6 s then hold 20 s)", "2 x (press 5 s then hold 25 s)", "\u22121 s a press, +5 s a hold")]
    public void Growth_that_falls_back_is_said_in_few_words(string before, string now, string said) =>
        Assert.Equal(["Starting point", said], Changes($"by-week: {{ 1: \"{before}, on left\", 2: \"{now}, on left\" }}", 2));

    [Fact]
    public void A_lighter_week_says_so_and_the_week_after_is_held_against_the_one_before_it() =>
        Assert.Equal(
            ["Starting point", "+10 s a hold", "Planned easy week: 1 set fewer", "Same as week 2"],
            Changes("by-week: { 1: \"3 x hold 30 s, on left\", 2: \"3 x hold 40 s, on left\" }", 4, "[3]")
        );

    [Fact]
    public void Work_that_goes_on_behind_a_lighter_week_names_the_week_it_is_held_against() =>
        Assert.Equal(
            ["Starting point", "Planned easy week: 1 set fewer", "Since week 1: +10 s a hold"],
            Changes("by-week: { 1: \"3 x hold 30 s, on left\", 3: \"3 x hold 40 s, on left\" }", 3, "[2]")
        );

    [Fact]
    public void One_set_gets_shorter_in_a_lighter_week() =>
        Assert.Equal(
            ["Starting point", "Planned easy week: −12 s a hold"],
            Changes("by-week: { 1: \"hold 30 s, on left\" }", 2, "[2]")
        );

    [Fact]
    public void Where_nothing_can_be_taken_away_a_lighter_week_is_called_the_same() =>
        Assert.Equal(["Starting point", "Same as week 1"], Changes("by-week: { 1: \"move 1 reps, on left\" }", 2, "[2]"));

    [Fact]
    public void Weeks_with_the_same_dose_are_said_once() =>
        Assert.Equal(
            ["Starting point", "1 more set"],
            Changes("by-week: { 1: \"2 x hold 30 s, on left\", 3: \"3 x hold 30 s, on left\" }", 4)
        );

    private static string Sided(string dose) =>
        dose.Contains("side", StringComparison.Ordinal) || dose.Contains(", on ", StringComparison.Ordinal) ? "" : ", on left";

    private static IEnumerable<string> Changes(string byWeek, int weeks, string lighter = "[]") =>
        Club
            .Empty.Exercise("sway", "1-4 x hold 10-90 s")
            .Member("ansel", [$"- use: sway\n  {byWeek}"], weeks, lighter: lighter)
            .Plan("ansel")
            .Sessions[0]
            .Uses[0]
            .Doses.Select(d => d.Change);
}
