using Gradus.Domain;

namespace Gradus.Tests.Trainings;

/// <summary>dose-line.md, Arithmetic: session time is dose time, get ready (5 s) once per use, and between two uses a transition:
/// 10 s where position and equipment stay, 45 s between floor and standing, any other change 30 s.</summary>
public sealed class SessionTimeTests
{
    [Theory]
    [InlineData("standing", "", "standing", "", 10)]
    [InlineData("standing", "equipment: [wall, step]", "standing", "equipment: [step, wall]", 10)]
    [InlineData("standing", "equipment: [wall]", "standing", "", 30)]
    [InlineData("standing", "", "split-stance", "", 30)]
    [InlineData("squat", "", "hanging", "", 30)]
    [InlineData("supine", "", "prone", "", 30)]
    [InlineData("half-kneeling", "", "side-lying", "equipment: [mat]", 30)]
    [InlineData("sitting", "", "standing", "", 30)]
    [InlineData("sitting", "", "floor-sitting", "", 30)]
    [InlineData("supine", "", "standing", "", 45)]
    [InlineData("standing", "", "hands-and-knees", "", 45)]
    [InlineData("squat", "equipment: [mat]", "kneeling", "equipment: [mat]", 45)]
    [InlineData("hanging", "", "floor-sitting", "", 45)]
    public void A_transition_depends_on_position_and_equipment(
        string from,
        string fromMore,
        string to,
        string toMore,
        int seconds
    )
    {
        var weeks = Club
            .Empty.Exercise("a", "hold 10 s, on left", fromMore, from)
            .Exercise("b", "hold 20 s, on right", toMore, to)
            .Member("ansel", ["- use: a\n- use: b"])
            .Plan("ansel")
            .Only();
        Assert.Equal(["GetReady L 5", "Hold L 10", $"Transition R {seconds}", "GetReady R 5", "Hold R 20"], weeks.Steps());
        Assert.Equal(new ExerciseId("b"), weeks.Steps[2].Exercise);
        Assert.Equal(5 + 10 + seconds + 5 + 20, weeks.Total.Value);
    }

    /// <summary>By hand. sway: 2 · (3·30 + 2·20) + 10 = 270. brace: 2·(10 + 10 + 20) + 1·15 = 95. carry: 40 m at 1 m a second =
    /// 40. Get ready 3·5. Standing to floor 45, floor to standing 45. 270 + 95 + 40 + 15 + 90 = 510.</summary>
    [Fact]
    public void A_session_is_the_sum_of_its_doses_get_readies_and_transitions()
    {
        var plan = Club
            .Empty.Exercise("sway", "3 x hold 30 s, rest 20 s, each side")
            .Exercise(
                "brace",
                "2 x (press 10 s at 40% then pull 10 s at 40% then hold 20 s), rest 15 s, on rear leg",
                position: "half-kneeling"
            )
            .Exercise("walk", "carry 40 m, load 8 kg, on left")
            .Member("ansel", ["- use: sway\n- use: brace\n- use: walk"])
            .Plan("ansel");
        Assert.Equal([270, 95, 40], plan.Sessions[0].Uses.Select(u => Assert.Single(u.Doses).Seconds.Value));
        Assert.Equal(510, plan.Only().Total.Value);
        Assert.True(plan.Only().About);
    }

    /// <summary>By hand. alternate: 3·(2·8 + 10) + 2·max(15, 10) = 108. breathe: 6·10 = 60. reps: 2·10·6 + 30 = 150, tempo
    /// 3-0-3-0. Get ready 3·5, transitions 10 + 10. 108 + 60 + 150 + 15 + 20 = 353.</summary>
    [Fact]
    public void Sides_in_turn_breaths_and_tempo_are_counted_to_the_second()
    {
        var plan = Club
            .Empty.Exercise("turn", "3 x hold 8 s, rest 15 s, alternate sides")
            .Exercise("breath", "breathe 6 breaths, both sides")
            .Exercise("dip", "2 x move 10 reps, rest 30 s, tempo 3-0-3-0, on front leg")
            .Member("ansel", ["- use: turn\n- use: breath\n- use: dip"])
            .Plan("ansel");
        Assert.Equal([108, 60, 150], plan.Sessions[0].Uses.Select(u => Assert.Single(u.Doses).Seconds.Value));
        Assert.Equal(353, plan.Only().Total.Value);
    }

    [Fact]
    public void Get_ready_comes_once_per_use_and_not_once_per_set_or_side()
    {
        var weeks = Club
            .Empty.Exercise("sway", "4 x hold 10 s, rest 5 s, each side")
            .Member("ansel", ["- use: sway\n- use: sway"])
            .Plan("ansel")
            .Only();
        Assert.Equal(2, weeks.Steps.Count(s => s.Kind == StepKind.GetReady));
        Assert.Equal(1, weeks.Steps.Count(s => s.Kind == StepKind.Transition));
    }

    [Fact]
    public void The_times_of_the_practice_take_the_place_of_the_usual_ones()
    {
        var practice = Club
            .Empty.Settings(
                "{ get-ready: 8 s, transition: 12 s, transition-change: 33 s, transition-standing: 50 s, switch: 14 s, "
                    + "breath: 6 s }"
            )
            .Exercise("a", "breathe 2 breaths, each side")
            .Exercise("b", "hold 10 s, on left")
            .Exercise("c", "hold 10 s, on left", position: "sitting")
            .Exercise("d", "hold 10 s, on left", position: "prone")
            .Member("ansel", ["- use: a\n- use: b\n- use: d\n- use: c"]);
        Assert.Equal(
            [
                "GetReady L 8",
                "Breathe L 12",
                "Switch R 14",
                "Breathe R 12",
                "Transition L 12",
                "GetReady L 8",
                "Hold L 10",
                "Transition L 50",
                "GetReady L 8",
                "Hold L 10",
                "Transition L 33",
                "GetReady L 8",
                "Hold L 10",
            ],
            practice.Plan("ansel").Only().Steps()
        );
    }

    [Fact]
    public void What_takes_no_time_is_no_step()
    {
        var practice = Club
            .Empty.Settings("{ get-ready: 0 s, transition: 0 s, switch: 0 s }")
            .Exercise("a", "2 x hold 10 s, each side")
            .Member("ansel", ["- use: a\n- use: a"]);
        Assert.Equal(
            [
                .. Enumerable.Repeat("Hold L 10", 2),
                .. Enumerable.Repeat("Hold R 10", 2),
                .. Enumerable.Repeat("Hold L 10", 2),
                .. Enumerable.Repeat("Hold R 10", 2),
            ],
            practice.Plan("ansel").Only().Steps()
        );
    }
}
