namespace Gradus.Tests.Trainings;

public sealed class UseSidesTests
{
    [Theory]
    [InlineData("rear leg", "right", "left leg, your rear leg")]
    [InlineData("rear leg", "left", "right leg, your rear leg")]
    [InlineData("front leg", "left", "left leg, your front leg")]
    [InlineData("FRONT  leg", "right", "right leg, your front leg")]
    [InlineData("left", "right", "left leg")]
    [InlineData("left", "left", "left leg")]
    [InlineData("right", "left", "right leg")]
    [InlineData("each side", "left", "each leg, left leg first")]
    [InlineData("per side", "right", "each leg, left leg first")]
    [InlineData("alternate sides", "right", "legs in turn, left leg first")]
    [InlineData("both sides", "right", "both legs together")]
    public void A_programme_names_the_side_as_the_sport_does(string side, string stance, string said)
    {
        var plan = Club
            .Empty.Exercise("sway", "2 x hold 30 s, rest 20 s, each side")
            .Member("ansel", [$"- use: sway\n  side: {side}"], stance: stance)
            .Plan("ansel");
        Assert.Equal(said, plan.Sessions[0].Uses[0].Sides);
    }

    [Fact]
    public void Each_side_begins_with_the_left()
    {
        var plan = Club
            .Empty.Exercise("sway", "2 x hold 30 s, rest 20 s, each side")
            .Member("ansel", ["- use: sway"])
            .Plan("ansel");
        Assert.Equal(
            ["GetReady L 5", "Hold L 30", "Rest L 20", "Hold L 30", "Switch R 10", "Hold R 30", "Rest R 20", "Hold R 30"],
            plan.Only().Steps()
        );
    }

    [Theory]
    [InlineData("right", "L", "R")]
    [InlineData("left", "R", "L")]
    public void The_side_that_plus_names_comes_first_and_has_more_sets(string stance, string first, string second)
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, rest 20 s, each side, plus 1 x on rear leg")
            .Member("ansel", ["- use: sway"], stance: stance)
            .Plan("ansel");
        Assert.Equal(
            [
                $"GetReady {first} 5",
                $"Hold {first} 30",
                $"Rest {first} 20",
                $"Hold {first} 30",
                $"Switch {second} 10",
                $"Hold {second} 30",
            ],
            plan.Only().Steps()
        );
    }

    /// <summary>dose-line.md, What a week asks: a programme's side replaces the side term and drops plus and switch.</summary>
    [Fact]
    public void A_side_of_the_programme_drops_plus_and_switch()
    {
        var plan = Club
            .Empty.Exercise("sway", "2 x hold 30 s, rest 20 s, each side, plus 1 x on rear leg, switch 15 s")
            .Member("ansel", ["- use: sway\n  side: front leg"])
            .Plan("ansel");
        Assert.Equal(["1: 2 x hold 30 s, rest 20 s, on right"], plan.Sessions[0].Uses[0].Doses());
        Assert.Equal(["GetReady R 5", "Hold R 30", "Rest R 20", "Hold R 30"], plan.Only().Steps());
    }

    [Fact]
    public void Both_sides_at_once_and_no_side_name_none()
    {
        var plan = Club
            .Empty.Exercise("sway", "hold 30 s, both sides")
            .Exercise("nod", "hold 20 s", trains: "cervical flexion")
            .Member("ansel", ["- use: sway\n- use: nod"])
            .Plan("ansel");
        Assert.Equal(["GetReady - 5", "Hold - 30", "Transition - 10", "GetReady - 5", "Hold - 20"], plan.Only().Steps());
        Assert.Equal("", plan.Sessions[0].Uses[1].Sides);
    }

    [Fact]
    public void A_step_names_its_exercise_and_its_own_side_only()
    {
        var steps = Club
            .Empty.Exercise("sway", "hold 30 s, each side")
            .Exercise("reach", "hold 20 s, on left", trains: "shoulder flexion")
            .Member("ansel", ["- use: sway\n- use: reach"])
            .Plan("ansel")
            .Only()
            .Steps;
        Assert.Equal(
            [
                "A get ready, left leg",
                "A hold, left leg",
                "A change sides, right leg",
                "A hold, right leg",
                "B next, left arm",
                "B get ready, left arm",
                "B hold, left arm",
            ],
            steps.Select(s => s.Words)
        );
    }
}
