using Gradus.Domain;

namespace Gradus.Tests.Reading;

public sealed class SportReaderTests
{
    private const string Path = "sports/epee.yaml";

    private static readonly Sport Sport = Assert.Single(LittlePractice.Golden.Read().Sports);

    [Fact]
    public void The_sport_is_bound()
    {
        Assert.Equal(new SportId("epee"), Sport.Id);
        Assert.Equal("Épée", Sport.Name);
        Assert.Equal("Which hand holds your weapon?", Sport.StanceQuestion);
        Assert.Equal(Location.Whole(Path), Sport.At);
    }

    [Fact]
    public void Roles_are_bound_in_the_order_they_are_written() =>
        Assert.Equal(
            [
                new("weapon arm", "weapon arm", Side.Right, Limb.Arm),
                new("free arm", "free arm", Side.Left, Limb.Arm),
                new("front leg", "front leg", Side.Right, Limb.Leg),
                new("rear leg", "rear leg", Side.Left, Limb.Leg),
            ],
            Sport.Roles
        );

    [Fact]
    public void Demands_are_bound_and_the_side_may_be_left_out() =>
        Assert.Equal(
            [
                new(
                    "recovery",
                    "lying ankle dorsiflexion",
                    "rear leg",
                    RangeMode.Passive,
                    12.5m,
                    "The heel stays down while you come back on guard.",
                    new(Path, 9, 5)
                ),
                new("salute", "thoracic rotation", null, null, 30m, "The chest turns to the opponent.", new(Path, 15, 5)),
            ],
            Sport.Demands
        );

    [Fact]
    public void A_role_is_read_in_small_letters_with_single_spaces()
    {
        var sport = LittlePractice.Golden.Edit(Path, "weapon arm: right", "\"Weapon  Arm\": right").Read().Sports[0];
        Assert.Equal("weapon arm", sport.Roles[0].Name);
    }

    [Theory]
    [InlineData("backhand leg: right", Limb.Leg)]
    [InlineData("racket hand: right", Limb.Arm)]
    [InlineData("lead: right arm", Limb.Arm)]
    [InlineData("trail: right leg", Limb.Leg)]
    public void A_role_says_of_which_limb_it_is(string role, Limb limb) =>
        Assert.Equal(limb, LittlePractice.Golden.Edit(Path, "weapon arm: right", role).Read().Sports[0].Roles[0].Limb);
}
