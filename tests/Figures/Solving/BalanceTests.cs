using Gradus.Figures;

namespace Gradus.Tests.Figures.Solving;

/// <summary>The middle of the mass: shares of Winter, Biomechanics and Motor Control of Human Movement, table 4.1; from
/// memory.</summary>
public sealed class BalanceTests
{
    [Fact]
    public void The_shares_of_all_parts_make_one() =>
        Assert.Equal(1, 0.497 + 0.081 + (2 * (0.028 + 0.016 + 0.006 + 0.100 + 0.0465 + 0.0145)), 1e-12);

    /// <summary>Somewhat above the hips, in most adults at 0.55 to 0.57 of the height; common practice, from memory.</summary>
    [Fact]
    public void Of_somebody_upright_it_lies_a_little_above_the_hips() =>
        Assert.InRange(Balance.Middle(new(new(0, 0, Proportions.HipHeight), Frame.Upright, new())).Z, 0.53, 0.60);

    [Theory]
    [InlineData("standing", true)]
    [InlineData("standing, trunk leaning ahead 60, hip flexion 60, knee flexion 0, ankle dorsiflexion 20", false)]
    [InlineData("standing, hands on wall, trunk leaning ahead 20", true)]
    public void Whoever_leans_too_far_falls_unless_a_hand_holds(string line, bool isBalanced)
    {
        var pose = PoseReader.Start([.. PoseReader.Items(line).Select(i => i.Text)], null).Pose;
        Assert.NotNull(pose);
        Assert.Equal(isBalanced, PoseSolver.Solve(pose).IsBalanced);
    }
}
