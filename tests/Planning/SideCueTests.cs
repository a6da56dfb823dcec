using Gradus.Planning;

namespace Gradus.Tests.Planning;

/// <summary>Where a side named by the sport and the place of the foot could be taken for each other, the client reads the
/// place.</summary>
public sealed class SideCueTests
{
    [Theory]
    [InlineData("foot in front", "hold 30 s, on rear leg", "LEFT foot in front (your rear leg in Épée)")]
    [InlineData("foot in front", "hold 30 s, on front leg", "RIGHT foot in front (your front leg in Épée)")]
    [InlineData("foot behind", "hold 30 s, on rear leg", "LEFT foot behind (your rear leg in Épée)")]
    [InlineData("knee down", "hold 30 s, on right", "RIGHT knee down")]
    public void One_side_is_told_by_where_it_stands(string cue, string dose, string said)
    {
        var use = Use(cue, dose);
        Assert.Equal(said, use.Sides);
        Assert.DoesNotContain(use.Rows, r => r.What == "Side");
    }

    [Theory]
    [InlineData("hold 30 s, each side", "each leg, left leg first")]
    [InlineData("hold 30 s, both sides", "both legs together")]
    public void Two_sides_are_told_as_ever(string dose, string said) => Assert.Equal(said, Use("foot in front", dose).Sides);

    /// <summary>A step names its side as before: it is short, and the one before it was in the same place.</summary>
    [Fact]
    public void Steps_name_the_leg() =>
        Assert.All(Plan("foot in front", "hold 30 s, on rear leg").Only().Steps, step =>
            Assert.EndsWith(", left leg", step.Words, StringComparison.Ordinal)
        );

    [Fact]
    public void In_German_it_has_its_ending()
    {
        var use = Domain
            .Club.Empty.Edit("practice.md", "language: en", "language: de")
            .With("sports/epee.yaml", "name: Degenfechten\nstance: Welche Hand?\nroles: { hinteres Bein: left }\n")
            .Exercise("sway", "hold 30 s, on hinteres Bein", "cue: foot in front")
            .Member("ansel", ["- use: sway"])
            .Edit("clients/ansel/client.yaml", "language: en", "language: de")
            .Plan("ansel")
            .Sessions[0]
            .Uses[0];
        Assert.Equal("LINKER Fuß vorn (hinteres Bein beim Sport Degenfechten)", use.Sides);
    }

    private static PlannedUse Use(string cue, string dose) => Plan(cue, dose).Sessions[0].Uses[0];

    private static Plan Plan(string cue, string dose) =>
        Domain.Club.Empty.Exercise("sway", dose, $"cue: {cue}").Member("ansel", ["- use: sway"]).Plan("ansel");
}
