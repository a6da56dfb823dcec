using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What the rules on ranges say and do not say, at their edges; the edges are those of their pages. Today is
/// 2026-12-07.</summary>
public sealed class RangeRulesTests
{
    private const string Head = "date,motion,side,mode,value,unit,instrument";
    private const string Ankle = "2026-11-20,lying ankle dorsiflexion,left,passive,9,deg,inclinometer";
    private const string Shoulder = "2026-11-20,shoulder flexion,left,active,140,deg,inclinometer";
    private const string Strengthens = "exercises/wall-calf-stretch.md\n- stage: gain\n+ stage: strengthen";
    private const string Unmeasured =
        "motions.yaml\n+ - { id: ankle-steadiness, name: ankle steadiness, unit: none, paired: yes, how: Stand on one leg. }\n\n"
        + "exercises/wall-calf-stretch.md\n- trains: ankle dorsiflexion\n+ trains: ankle steadiness";

    private const string Short = "2026-11-20,lunge ankle dorsiflexion,left,active,33,deg,inclinometer,om,3";

    /// <summary>The sport asks for 45 degrees in the lunge, and Tess has 33: short by more than the error.</summary>
    private const string Asked =
        "sports/epee.yaml\n- name: Épée fencing\n+ name: Épée fencing\n+ demands:\n"
        + "+   - { position: lunge, motion: lunge ankle dorsiflexion, side: left, mode: active, at-least: 45, because: Reach. }";

    [Theory]
    [InlineData("2026-12-07", 0)]
    [InlineData("2026-12-08", 1)]
    public void A_reading_of_today_is_of_no_day_to_come(string day, int found) =>
        Assert.Equal(
            found,
            OneRule.Says("reading-in-future", Readings(Ankle.Replace("2026-11-20", day, StringComparison.Ordinal))).Length
        );

    /// <summary>Of two that are far apart, the one that was written last is shown.</summary>
    [Theory]
    [InlineData("9", "29", "clients/tess/readings.csv:3:1")]
    [InlineData("29", "9", "clients/tess/readings.csv:3:1")]
    [InlineData("9", "19", "")] // ten degrees are not more than ten
    public void The_later_of_two_that_are_far_apart_is_shown(string first, string second, string at) =>
        Assert.Equal(
            at,
            string.Join(", ", OneRule.Says("readings-far-apart", Readings(Read(first), Read(second))).Select(f => $"{f.At}"))
        );

    /// <summary>After training a joint goes further; such a reading is shown and never judged (practice-format.md).</summary>
    [Theory]
    [InlineData("rest", 1)]
    [InlineData("training", 0)]
    public void What_was_read_after_training_is_not_held_against_another(string after, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says("readings-far-apart", Readings($"{Head},after", $"{Ankle},", $"{Read("29")},{after}", $"{Shoulder},"))
                .Length
        );

    [Theory]
    [InlineData("3", "", 0)]
    [InlineData("4", "", 2)]
    [InlineData("4", Strengthens, 0)] // what strengthens gains nothing that could be measured again
    public void Four_weeks_of_gaining_want_a_day_to_measure_again(string weeks, string more, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "retest-missing",
                    $"clients/bram/programme.md\n- weeks: 2\n+ weeks: {weeks}",
                    $"clients/tess/programme.md\n- weeks: 2\n+ weeks: {weeks}",
                    more
                )
                .Length
        );

    [Theory]
    [InlineData("gain", 0)] // beside a press that strengthens it
    [InlineData("strengthen", 1)]
    public void What_the_sport_asks_for_and_is_short_is_gained_or_told(string stage, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "demand-without-work",
                    Asked,
                    Readings($"{Head},by,trials", Short),
                    $"exercises/wall-calf-stretch.md\n- stage: gain\n+ stage: {stage}"
                )
                .Length
        );

    /// <summary>No position asks for the ankle: what gains it is told, what strengthens it is not; and what nobody can measure,
    /// no demand could ask for.</summary>
    [Theory]
    [InlineData("", 2)]
    [InlineData(Strengthens, 0)]
    [InlineData(Unmeasured, 0)]
    public void What_is_gained_and_never_asked_for_is_told(string more, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "work-without-demand",
                    "sports/epee.yaml\n- name: Épée fencing\n+ name: Épée fencing\n+ demands:\n"
                        + "+   - { position: full reach, motion: thoracic rotation, at-least: 40, because: It is reach. }",
                    more
                )
                .Length
        );

    /// <summary>What becomes strong and was never measured is told, where it can be measured at all.</summary>
    [Theory]
    [InlineData("ankle dorsiflexion", 0)]
    [InlineData("knee flexion", 1)]
    [InlineData("ankle steadiness", 0)]
    public void What_is_made_strong_without_a_reading_is_told(string trains, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "strengthen-unmeasured",
                    Unmeasured.Split("\n\n")[0],
                    $"exercises/calf-press.md\n- trains: ankle dorsiflexion\n+ trains: {trains}"
                )
                .Length
        );

    /// <summary>A joint that cannot take the position is hurt by the body's own weight on it.</summary>
    [Theory]
    [InlineData("standing", "", Level.Note)]
    [InlineData("standing", "weight-on-hands", Level.Warning)]
    [InlineData("hands-and-knees", "", Level.Warning)]
    [InlineData("kneeling", "", Level.Warning)]
    [InlineData("half-kneeling", "", Level.Warning)]
    public void A_need_that_nobody_measured_is_a_warning_where_weight_rests_on_hands_or_knees(
        string position,
        string property,
        Level level
    ) =>
        Assert.Equal(
            level,
            Assert
                .Single(
                    OneRule.Says(
                        "need-unmeasured",
                        $"exercises/calf-press.md\n- position: split-stance\n+ position: {position}\n+ properties: [{property}]\n"
                            + "+ needs: { knee flexion: 90 }"
                    )
                )
                .Level
        );

    /// <summary>"It is said once for each motion and side, at the first exercise that needs it": NeedUnmeasured.md.</summary>
    [Fact]
    public void A_need_of_two_exercises_is_said_at_the_first() =>
        Assert.Equal(
            ["clients/tess/programme.md:9:14"],
            OneRule
                .Says(
                    "need-unmeasured",
                    "exercises/calf-press.md\n- loads: [ankle]\n+ loads: [ankle]\n+ needs: { knee flexion: 90 }",
                    "exercises/wall-calf-stretch.md\n- loads: [ankle]\n+ loads: [ankle]\n+ needs: { knee flexion: 90 }"
                )
                .Where(f => f.Client?.Text == "tess")
                .Select(f => $"{f.At}")
        );

    /// <summary>The error for a tape is 1.9 cm (Powden 2015, Man Ther 20:524-32: in motions.yaml). A loss from one day to the
    /// next is hidden by the mean of the two; the loss since the beginning comes before the one since the reading
    /// before.</summary>
    [Theory]
    [InlineData("3 cm less than on 2026-10-20", "2026-10-20 10, 2026-11-20 7")]
    [InlineData("", "2026-10-20 10, 2026-11-20 9")]
    [InlineData("3 cm less than on 2026-11-19", "2026-11-19 10, 2026-11-20 7")]
    [InlineData("5 cm less than on 2026-08-20", "2026-08-20 12, 2026-10-20 10, 2026-11-20 7")]
    public void A_loss_beyond_the_error_is_told_with_the_day_before_it(string less, string readings)
    {
        var read = readings.Split(", ");
        var found = OneRule.Says(
            "range-lost",
            Readings([
                $"{Head},by,trials",
                .. read.Select(r => $"{r.Split(' ')[0]},knee to wall,left,active,{r.Split(' ')[1]},cm,tape,om,1"),
            ]),
            read.Length < 3 ? "" : "clients/tess/programme.md\n- start: 2026-12-07\n- weeks: 2\n+ start: 2026-09-07\n+ weeks: 14"
        );
        Assert.Equal(less, string.Join(", ", found.Select(f => Between(f.Sentence, "dorsiflexion", "wall is ", ", beyond"))));
    }

    private static string Between(string text, string either, string from, string until)
    {
        Assert.DoesNotContain(either, text, StringComparison.Ordinal);
        return text.Split(from)[1].Split(until)[0];
    }

    private static string Read(string degrees) => Ankle.Replace(",9,", $",{degrees},", StringComparison.Ordinal);

    /// <summary>These lines instead of the two that Tess has.</summary>
    private static string Readings(params string[] lines) =>
        $"clients/tess/readings.csv\n- {Head}\n- {Ankle}\n- {Shoulder}\n+ "
        + string.Join("\n+ ", lines[0].StartsWith("date", StringComparison.Ordinal) ? lines : [Head, .. lines]);
}
