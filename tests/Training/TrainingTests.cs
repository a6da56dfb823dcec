using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

public sealed class TrainingTests
{
    private static readonly LittlePractice Summer = Club
        .Empty.Exercise("sway", "2-3 x hold 30-60 s, rest 20 s, each side")
        .Member("ansel", ["- use: sway"], 4, lighter: "[3]");

    [Fact]
    public void Two_readings_of_the_same_practice_give_equal_trainings_with_one_hash()
    {
        var (one, other) = (Of(Summer), Of(Summer));
        Assert.Equal(one, other);
        Assert.Equal(one.Hash(), other.Hash());
        Assert.Matches("^[0-9a-f]{64}$", one.Hash());
    }

    [Fact]
    public void Where_something_is_written_counts_in_neither()
    {
        var moved = Summer.Edit("clients/ansel/programme.md", "sessions:", "# a remark\n# and one more\nsessions:");
        Assert.NotEqual(Of(Summer).Uses[0].At, Of(moved).Uses[0].At);
        Assert.Equal(Of(Summer), Of(moved));
        Assert.Equal(Of(Summer).Hash(), Of(moved).Hash());
    }

    [Fact]
    public void No_word_of_a_language_counts()
    {
        var other = Summer.Edit("exercises/sway.md", "title: The sway", "title: Das Wiegen");
        Assert.Equal(Of(Summer), Of(other));
        Assert.Equal(Of(Summer).Hash(), Of(other).Hash());
    }

    [Theory]
    [InlineData("exercises/sway.md", "2-3 x hold 30-60 s", "2-3 x hold 30-61 s")]
    [InlineData("exercises/sway.md", "rest 20 s", "rest 21 s")]
    [InlineData("exercises/sway.md", "each side", "alternate sides")]
    [InlineData("clients/ansel/client.yaml", "stance: right", "stance: left")]
    [InlineData("clients/ansel/programme.md", "days: [Mon]", "days: [Tue]")]
    [InlineData("clients/ansel/programme.md", "lighter: [3]", "lighter: [2]")]
    [InlineData("clients/ansel/programme.md", "- use: sway", "- use: sway\n        side: left")]
    [InlineData("clients/ansel/programme.md", "- use: sway", "- use: sway\n        until-week: 3")]
    public void What_is_asked_counts(string file, string before, string after)
    {
        var other = Summer.Edit(file, before, after);
        Assert.NotEqual(Of(Summer), Of(other));
        Assert.NotEqual(Of(Summer).Hash(), Of(other).Hash());
    }

    [Fact]
    public void A_side_that_nobody_has_is_a_refusal_and_nothing_is_made_of_it()
    {
        var training = Of(Summer.Edit("clients/ansel/programme.md", "- use: sway", "- use: sway\n        side: bow arm"));
        Assert.Equal(
            [new Refusal.SideUnresolved(new("sway"), 1, SideName.Of("bow arm"))],
            training.Refusals.OfType<Refusal.SideUnresolved>()
        );
        Assert.Empty(training.Uses.Single().Weeks);
        Assert.Empty(training.Sessions.Single().Weeks);
    }

    [Fact]
    public void Nothing_can_be_planned_from_a_refusal()
    {
        var practice = Summer.Edit("clients/ansel/programme.md", "- use: sway", "- use: sway\n        side: bow arm").Read();
        Assert.Throws<ArgumentException>(() => Planned.For(practice, practice.Clients.Single()));
    }

    private static Training Of(LittlePractice practice)
    {
        var read = practice.Read();
        return Training.Of(read, read.Clients.Single());
    }
}
