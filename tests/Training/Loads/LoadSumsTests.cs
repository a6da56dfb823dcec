using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>A week of two sessions and four exercises of one motion, added up by hand.</summary>
public sealed class LoadSumsTests
{
    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2 x hold 30 s, rest 20 s, each side")
        .Exercise("brace", "3 x press 10 s at 50%, rest 20 s, on right")
        .Exercise("ramp", "press 20 s at 20 to 100% in 5 steps, on left")
        .Exercise("lift", "2 x 4 x raise 5 s, both sides")
        .Exercise("reach", "2 x move 10 reps, alternate sides", trains: "shoulder flexion");

    /// <summary>Monday and Thursday sway and brace; every two days ramp and lift: from Monday 4 January on 4, 3 and 4 days. A
    /// ramp has 20·(0.2 + 1)/2 = 12 effort-seconds; a raise without an effort none. Left, week 1: stretch 2·60; contraction 4·(20
    /// + 40), of it 4·40 without an effort; 4·12 effort-seconds; 4·8 repetitions. Right: contraction 2·30 + 4·40; effort 2·15.
    /// Week 2 has 60 % of the sets: sway 1 (1.2), brace 2 (1.8), lift 1 (1.2), the ramp 2 s a step. Left: 2·30; 3·(20 + 10), of
    /// it 3·20; 3·6; 3·4. Right: 2·20 + 3·20; effort 2·10. Days: 4 and 7 with 4, 6, 8, 10 are five; 11 and 14 with 12, 14, 16
    /// four; 18 and 21 with 18, 20, 22, 24 five.</summary>
    [Fact]
    public void Every_measure_is_the_sum_of_the_sessions_of_its_week()
    {
        var loads = Load(Two("[Mon, Thu]", "every 2 days"));
        Assert.Equal(
            [
                "Left 1: 120 240 160 48 32, 6 on 5",
                "Left 2: 60 90 60 18 12, 5 on 4, lighter",
                "Left 3: 120 240 160 48 32, 6 on 5",
                "Right 1: 120 220 160 30 32, 6 on 5",
                "Right 2: 60 100 60 20 12, 5 on 4, lighter",
                "Right 3: 120 220 160 30 32, 6 on 5",
            ],
            loads.Select(Written)
        );
    }

    /// <summary>Before play comes on top: what is left is Monday and Thursday alone.</summary>
    [Fact]
    public void Sessions_before_play_add_to_nothing_and_are_named()
    {
        var loads = Load(Two("[Mon, Thu]", "before play"));
        Assert.Equal(
            ["Left 1: 120 0 0 0 0, 2 on 2", "Left 2: 60 0 0 0 0, 2 on 2, lighter", "Left 3: 120 0 0 0 0, 2 on 2"],
            loads.Take(3).Select(Written)
        );
        Assert.All(loads, l => Assert.True(l.BeforePlay));
    }

    /// <summary>Days that the client chooses stand for themselves, and no week has more than seven: 5 + 4.</summary>
    [Fact]
    public void No_week_has_more_than_seven_days() =>
        Assert.Equal(
            (9, 7),
            Load(Two("[Mon, Tue, Wed, Thu, Fri]", "4 a week, a day between"))[0] is var l ? (l.Sessions, l.Days) : default
        );

    /// <summary>In three rounds: sway 3·20 of each side, brace 3·10 on the right at 40 % = 12 effort-seconds.</summary>
    [Fact]
    public void Rounds_count_as_sets()
    {
        var loads = Load(
            Library
                .Exercise("sway", "hold 20 s, each side")
                .Exercise("brace", "press 10 s at 40%, on right")
                .Member("ansel", ["- rounds: 3\n  rest: 40 s\n  of: [{ use: sway }, { use: brace }]"])
        );
        Assert.Equal(["Left 1: 60 0 0 0 0, 1 on 1", "Right 1: 60 30 0 12 0, 1 on 1"], loads.Select(Written));
    }

    [Fact]
    public void A_week_in_which_a_motion_is_not_trained_stands_with_nothing()
    {
        var loads = Load(Library.Member("ansel", ["- use: reach\n- use: brace\n  from-week: 2"], 2));
        Assert.Equal(["shoulder flexion", "ankle dorsiflexion"], loads.Select(l => l.Motion.Name).Distinct());
        Assert.Equal(
            [
                "Left 1: 0 0 0 0 20, 1 on 1",
                "Left 2: 0 0 0 0 20, 1 on 1",
                "Right 1: 0 0 0 0 20, 1 on 1",
                "Right 2: 0 0 0 0 20, 1 on 1",
                "Right 1: 0 0 0 0 0, 0 on 0",
                "Right 2: 0 30 0 15 0, 1 on 1",
            ],
            loads.Select(Written)
        );
    }

    /// <summary>A harder version of another motion counts for its own, from its own week on.</summary>
    [Fact]
    public void A_version_counts_for_the_motion_it_trains()
    {
        var loads = Load(
            Library
                .Exercise("brace", "3 x press 10 s at 50%, rest 20 s, on right", "harder: reach")
                .Member("ansel", ["- use: brace\n  by-week: { 1: 2 x press 10 s at 50%, 2: { use: harder } }"], 2)
        );
        Assert.Equal(
            ["ankle dorsiflexion Right 1: 0 20 0 10 0, 1 on 1", "ankle dorsiflexion Right 2: 0 0 0 0 0, 0 on 0"],
            loads.Take(2).Select(l => $"{l.Motion.Name} {Written(l)}")
        );
        Assert.Equal([0, 20, 0, 20], loads.Skip(2).Select(l => l.Work.Reps));
    }

    /// <summary>reference-values.md, Growth: 10 % a week for 8 weeks is × 2.1436 (computed). In whole seconds from 1000
    /// on.</summary>
    [Fact]
    public void Ten_per_cent_more_in_each_of_eight_weeks_is_a_little_more_than_twice_as_much()
    {
        int[] seconds = [1000, 1100, 1210, 1331, 1464, 1611, 1772, 1949, 2144];
        var weeks = Load(
                Library
                    .Exercise("sway", "hold 1000-3000 s, on left")
                    .Member(
                        "ansel",
                        [$"- use: sway\n  by-week: {{ {string.Join(", ", seconds.Select((s, i) => $"{i + 1}: hold {s} s"))} }}"],
                        9
                    )
            )
            .Select(l => (decimal)l.Work.StretchSeconds.Value)
            .ToArray();
        Assert.All(weeks.Zip(weeks.Skip(1)), w => Assert.InRange((w.Second / w.First) - 1, 0.0995m, 0.1005m));
        Assert.InRange(weeks[^1] / weeks[0], 2.1431m, 2.1441m);
    }

    /// <summary>reference-values.md, Stretching: 5 min a week (Thomas E et al. 2018, Int J Sports Med 39:243-54: seen), no
    /// further average gain beyond 10 (Ingram LA et al. 2025, Sports Med, doi 10.1007/s40279-024-02143-9: second-hand).</summary>
    [Theory]
    [InlineData(299, "below 5 min a week")]
    [InlineData(300, "from 5 to 10 min a week")]
    [InlineData(600, "from 5 to 10 min a week")]
    [InlineData(601, "above 10 min a week")]
    [InlineData(0, null)]
    public void A_week_of_stretch_stands_beside_the_published_minutes(int seconds, string? said)
    {
        var load = Load(Library.Member("ansel", ["- use: sway"]))[0];
        Assert.Equal(said, DoseReferenceSentences.Of(load with { Work = load.Work with { StretchSeconds = new(seconds) } }));
    }

    /// <summary>Stretch, contraction, of it without an effort, effort-seconds, repetitions; sessions and days.</summary>
    private static string Written(WeekLoad load) =>
        $"{load.Side} {load.Week}: {load.Work.StretchSeconds.Value} {load.Work.ContractionSeconds.Value} "
        + $"{load.Work.UnratedContractionSeconds.Value} {load.Work.EffortSeconds:0.##} {load.Work.Reps}, "
        + $"{load.Sessions} on {load.Days}{(load.IsLighter ? ", lighter" : "")}";

    private static LittlePractice Two(string first, string second) =>
        Library
            .Member("ansel", ["- use: sway\n- use: brace", "- use: ramp\n- use: lift"], 3, lighter: "[2]")
            .Edit("clients/ansel/programme.md", "Session 1\n    days: [Mon]", $"Session 1\n    days: {first}")
            .Edit("clients/ansel/programme.md", "Session 2\n    days: [Mon]", $"Session 2\n    days: {second}");

    private static Series<WeekLoad> Load(LittlePractice practice)
    {
        var read = practice.Read();
        return Training.Of(read, read.Clients.Single()).Loads;
    }
}
