using Gradus.Domain;
using Gradus.Figures;

namespace Gradus.Tests.Figures.Solving;

public sealed class PoseSolverTests
{
    [Fact]
    public void A_joint_that_nobody_named_is_not_taken_beyond_a_persons_range() =>
        Assert.Contains(Solved("prone, hip flexion 90, knee flexion 90").Unmet, u =>
            u.Sentence.StartsWith("it takes hip abduction ", StringComparison.Ordinal)
        );

    [Theory]
    [InlineData("supine, hip extension 30", "the back does not reach the floor")]
    [InlineData("prone, working hip flexion 60", "the other shoulder is below the floor")]
    [InlineData("standing, trunk upright, knee flexion 0, hands on floor", "the working hand does not reach the floor")]
    public void What_cannot_be_is_said(string line, string sentence) => Assert.Equal(sentence, Solved(line).Unmet[0].Sentence);

    [Fact]
    public void What_rests_at_the_start_and_the_end_stays_at_its_place()
    {
        var start = Solved("half-kneeling, trunk upright, hands on wall");
        var read = PoseReader.End(["front ankle dorsiflexion 25", "front knee moves"], start.Pose).Pose;
        Assert.NotNull(read);
        var end = PoseSolver.Solve(read, start);
        // A wish, and no law: a foot gives way by up to 2 % of the height before a joint is strained.
        foreach (var side in Enum.GetValues<BodySide>())
            Assert.InRange((end.Body.LegOf(side).Ball - start.Body.LegOf(side).Ball).Length, 0, 0.02);
        Assert.Equal(25, end.Angles[new SidedAngle(JointAngle.AnkleDorsiflexion, BodySide.Working)], 1e-9);
        Assert.Equal(start.Walls.Ahead, end.Walls.Ahead, 0.005);
    }

    [Fact]
    public void The_same_pose_is_worked_out_to_the_same_numbers()
    {
        var (one, two) = (Solved("split-stance, weights in hands"), Solved("split-stance, weights in hands"));
        Assert.All(JointAngles.All, angle => Assert.Equal(one.Angles[angle], two.Angles[angle]));
    }

    private static Posed Solved(string line)
    {
        var read = PoseReader.Start([.. PoseReader.Items(line).Select(i => i.Text)], SideCue.FootInFront);
        Assert.Empty(read.Faults);
        return PoseSolver.Solve(Assert.IsType<Pose>(read.Pose));
    }
}
