namespace Gradus.Tests.Auditing;

/// <summary>What the rules on weeks say and do not say, at their edges; the edges are those of their pages. Bram has one use on
/// Saturdays, for two weeks from 2026-12-07.</summary>
public sealed class WeekRulesTests
{
    private const string Bram = "clients/bram/programme.md\n";
    private const string Tess = "clients/tess/programme.md\n";
    private const string Line = "- by-week: { 1: 3 x hold 30 s }\n+ ";
    private const string Press = "- 1: 2 x press 10 s at 50%\n+ ";

    [Theory]
    [InlineData("[Sat]", "[Sat]", 0)]
    [InlineData("[Fri, Sat]", "[Sat]", 1)]
    [InlineData("daily", "[Sat]", 1)]
    [InlineData("every 2 days", "[Sat, Mon]", 1)]
    [InlineData("every 2 days", "[Mon, Tue, Wed, Thu, Fri, Sat, Sun]", 0)]
    [InlineData("every 7 days", "[Sat]", 0)]
    [InlineData("every 8 days", "[Sat]", 1)]
    [InlineData("2 a week, a day between", "[Sat, Mon]", 0)]
    [InlineData("2 a week, a day between", "[Mon, Tue]", 1)]
    [InlineData("2 a week, a day between", "[Sat, Sun]", 1)]
    [InlineData("2 a week, a day between", "[Sun, Mon]", 1)]
    [InlineData("3 a week, a day between", "[Mon, Tue, Wed, Thu, Fri, Sat, Sun]", 0)]
    [InlineData("4 a week, a day between", "[Mon, Tue, Wed, Thu, Fri, Sat, Sun]", 1)]
    [InlineData("2 a week", "[Mon, Tue]", 0)]
    [InlineData("3 a week", "[Mon, Tue]", 1)]
    public void A_session_comes_on_days_that_the_client_has(string days, string has, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "day-not-available",
                    $"{Bram}- days: [Sat]\n+ days: {days}",
                    $"clients/bram/client.yaml\n- days: [Sat]\n+ days: {has}"
                )
                .Length
        );

    /// <summary>Two sessions of 149 and 151 seconds, a hold on each side with ten seconds to change and five to begin.</summary>
    [Theory]
    [InlineData("5", "Sat", 0)]
    [InlineData("4", "Sat", 1)]
    [InlineData("4", "Sun", 0)]
    public void Two_sessions_of_one_day_take_what_the_client_has(string minutes, string day, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "day-over-time",
                    $"clients/bram/client.yaml\n- minutes: 15\n+ minutes: {minutes}",
                    $"{Bram}{Line}by-week: {{ 1: 1 x hold 67 s }}",
                    $"{Bram}- sessions:\n+ sessions:\n+   - name: Again\n+     days: [{day}]\n+     do:\n"
                        + "+       - use: wall-calf-stretch\n+         by-week: { 1: 1 x hold 68 s }"
                )
                .Length
        );

    /// <summary>This practice keeps two days from one hard contraction to the next; the same day is one.</summary>
    [Theory]
    [InlineData("[Mon, Tue]", 1)]
    [InlineData("[Mon, Wed]", 0)]
    [InlineData("[Mon, Thu]", 0)]
    [InlineData("[Sun, Mon]", 1)]
    public void Hard_work_keeps_its_distance(string days, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says("days-too-close", $"{Tess}- days: [Mon, Thu]\n+ days: {days}", $"{Tess}{Press}1: 2 x press 10 s at 80%")
                .Length
        );

    [Fact]
    public void Twice_on_one_day_is_no_second_day() =>
        Assert.Empty(
            OneRule.Says(
                "days-too-close",
                $"{Tess}{Press}1: 2 x press 10 s at 80%",
                $"{Tess}- - use: wall-calf-stretch\n+ - use: calf-press\n+   side: rear leg\n"
                    + "+   by-week: { 1: 2 x press 10 s at 80% }\n+ - use: wall-calf-stretch"
            )
        );

    /// <summary>More than twice as long within four weeks.</summary>
    [Theory]
    [InlineData("1: 1 x hold 30 s, 2: 1 x hold 68 s", 1)]
    [InlineData("1: 1 x hold 30 s, 2: 1 x hold 67 s", 0)]
    [InlineData("1: 1 x hold 30 s, 3: 1 x hold 60 s, 4: 1 x hold 90 s", 1)]
    [InlineData("1: 1 x hold 30 s, 2: 1 x hold 60 s, 5: 1 x hold 120 s", 0)]
    public void A_session_that_doubles_does_so_in_four_weeks(string lines, int found) =>
        Assert.Equal(
            found,
            OneRule.Says("session-grows-fast", $"{Bram}- weeks: 2\n+ weeks: 5", $"{Bram}{Line}by-week: {{ {lines} }}").Length
        );

    /// <summary>A lighter week has at most 85 per cent of the last full one.</summary>
    [Theory]
    [InlineData("100", "85", "")]
    [InlineData("35", "30", "warning")]
    [InlineData("100", "99", "warning")]
    [InlineData("100", "100", "error")]
    [InlineData("100", "60", "")]
    public void A_lighter_week_is_lighter(string full, string light, string level) =>
        Assert.Equal(
            level,
            string.Join(
                ", ",
                OneRule
                    .Says(
                        "lighter-not-lighter",
                        $"{Bram}- weeks: 2\n+ weeks: 3\n+ lighter: [2]",
                        $"{Bram}{Line}by-week: {{ 1: 2 x hold {full} s, 2: 2 x hold {light} s, 3: 2 x hold {full} s }}"
                    )
                    .Select(f => f.Level.ToString().ToLowerInvariant())
            )
        );

    /// <summary>The first week of control counts, however often it comes again.</summary>
    [Theory]
    [InlineData("", "from-week: 2", 1)]
    [InlineData("", "", 0)]
    [InlineData("from-week: 2", "", 0)]
    public void What_controls_a_range_waits_for_what_gains_it(string control, string gain, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "control-before-gain",
                    "exercises/calf-press.md\n- stage: strengthen\n+ stage: control",
                    $"{Tess}- - use: calf-press\n+ - use: calf-press\n+   {(control == "" ? "from-week: 1" : control)}",
                    $"{Tess}- - use: wall-calf-stretch\n+ - use: calf-press\n+   side: rear leg\n+   from-week: 2\n"
                        + $"+ - use: wall-calf-stretch\n+   {(gain == "" ? "from-week: 1" : gain)}"
                )
                .Length
        );

    /// <summary>A line from before the first week holds from there, unless another takes its place by then.</summary>
    [Theory]
    [InlineData("from-week: 3", "1: 3 x hold 30 s", 0)]
    [InlineData("from-week: 3", "1: 3 x hold 30 s, 2: 3 x hold 31 s", 1)]
    [InlineData("from-week: 3", "1: 3 x hold 30 s, 3: 3 x hold 31 s", 1)]
    [InlineData("from-week: 3", "1: 3 x hold 30 s, 4: 3 x hold 31 s", 0)]
    [InlineData("from-week: 3", "3: 3 x hold 30 s, 4: 3 x hold 31 s", 0)]
    [InlineData("until-week: 3", "1: 3 x hold 30 s, 3: 3 x hold 31 s", 0)]
    [InlineData("until-week: 2", "1: 3 x hold 30 s, 3: 3 x hold 31 s", 1)]
    public void A_line_holds_in_some_week(string weeks, string lines, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says("line-out-of-use", $"{Bram}- weeks: 2\n+ weeks: 4", $"{Bram}{Line}{weeks}\n+ by-week: {{ {lines} }}")
                .Length
        );

    [Theory]
    [InlineData("3 x press 10 s at 50%", "")]
    [InlineData("3 x press 10 s at 60%", "more sets, more effort")]
    [InlineData("2 x press 12 s at 60%", "longer times, more effort")]
    [InlineData("3 x 2 x press 10 s at 50%", "more sets, more times")]
    [InlineData("2 x press 9 s at 60%", "")]
    public void Two_things_that_become_harder_at_once_are_named(string second, string harder) =>
        Assert.Equal(
            harder,
            string.Join(
                "; ",
                OneRule
                    .Says("two-things-at-once", $"{Tess}{Press}1: 2 x press 10 s at 50%\n+ 2: {second}")
                    .Select(f => f.Sentence.Split("at once: ")[1].TrimEnd('.'))
            )
        );

    /// <summary>Two pieces that grow alike are one thing.</summary>
    [Fact]
    public void Each_thing_is_named_once() =>
        Assert.Equal(
            "more sets, longer times",
            Assert
                .Single(
                    OneRule.Says(
                        "two-things-at-once",
                        "exercises/calf-press.md\n- dose: 2-3 x press 10-20 s at 40-60%, rest 30 s, each side\n"
                            + "+ dose: 2-3 x (press 10-20 s at 40-60% then hold 10-30 s), rest 30 s, each side",
                        $"{Tess}{Press}1: 2 x (press 10 s at 50% then hold 20 s)\n+ 2: 3 x (press 12 s at 50% then hold 25 s)"
                    )
                )
                .Sentence.Split("at once: ")[1]
                .TrimEnd('.')
        );

    /// <summary>One thing after the other is how it should be.</summary>
    [Fact]
    public void What_became_harder_before_is_not_counted_again() =>
        Assert.Empty(
            OneRule.Says(
                "two-things-at-once",
                $"{Tess}- weeks: 2\n+ weeks: 3",
                $"{Tess}{Press}1: 2 x press 10 s at 50%\n+ 2: 3 x press 10 s at 50%\n+ 3: 3 x press 12 s at 50%"
            )
        );

    [Theory]
    [InlineData("2 x move 8 reps at effort 5, load a dumbbell", "")]
    [InlineData("2 x move 8 reps at effort 5, load two dumbbells", "more of each, another load")]
    [InlineData("2 x move 6 reps at effort 5, load two dumbbells", "")]
    public void Another_load_is_one_of_them(string second, string harder) =>
        Assert.Equal(
            harder,
            string.Join(
                "; ",
                OneRule
                    .Says(
                        "two-things-at-once",
                        "exercises/calf-press.md\n- dose: 2-3 x press 10-20 s at 40-60%, rest 30 s, each side\n"
                            + "+ dose: 2-3 x move 6-10 reps at effort 5, rest 30 s, each side\n"
                            + "- 1. Press the ball of the foot into the floor for {press}.\n+ 1. Rise.",
                        $"{Tess}{Press}1: 2 x move 6 reps at effort 5, load a dumbbell\n+ 2: {second}"
                    )
                    .Select(f => f.Sentence.Split("at once: ")[1].TrimEnd('.'))
            )
        );

    /// <summary>A third exercise beside the two: harder than each other all round is told once, at the first by name; and what is
    /// easier than itself by 'easier' alone is told of those two, and not again of a third.</summary>
    [Theory]
    [InlineData("harder: calf-press", "harder: wall-stand", "harder: wall-calf-stretch", "warning exercises/calf-press.md")]
    [InlineData(
        "easier: calf-press",
        "easier: wall-calf-stretch",
        "easier: wall-calf-stretch\nharder: wall-calf-stretch",
        "error exercises/calf-press.md; error exercises/wall-calf-stretch.md"
    )]
    public void A_circle_is_told_once(string stretch, string press, string stand, string told)
    {
        var third = LittlePractice
            .Files.Single(f => f.Key == "exercises/wall-calf-stretch.md")
            .Value.Replace("Wall calf stretch", "Wall stand", StringComparison.Ordinal)
            .Replace("harder: calf-press", stand, StringComparison.Ordinal);
        var found = OneRule.Says(
            "easier-in-a-circle",
            "exercises/wall-stand.md\n" + string.Join('\n', third.TrimEnd().Split('\n').Select(l => $"+ {l}")),
            $"exercises/wall-calf-stretch.md\n- harder: calf-press\n+ {stretch}",
            $"exercises/calf-press.md\n- easier: wall-calf-stretch\n+ {press}"
        );
        Assert.Equal(told, string.Join("; ", found.Select(f => $"{f.Level.ToString().ToLowerInvariant()} {f.At.File}")));
    }

    /// <summary>Of a use that cannot be planned nobody knows how long it goes on.</summary>
    [Theory]
    [InlineData("side: rear leg", 1)]
    [InlineData("side: parry arm", 0)]
    public void A_week_without_training_is_told_where_all_can_be_planned(string side, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "week-without-training",
                    $"{Tess}- - use: wall-calf-stretch\n- side: rear leg\n"
                        + $"+ - use: wall-calf-stretch\n+   {side}\n+   until-week: 1",
                    $"{Tess}- - use: calf-press\n+ - use: calf-press\n+   until-week: 1",
                    $"{Tess}- 1: 2 x hold 30 s\n- 2: 2 x hold 45 s\n+ 1: 2 x hold 30 s"
                )
                .Length
        );
}
