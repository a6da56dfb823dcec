using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>Whether a caution would be added, for a client of the right age.</summary>
public sealed class AttachmentReachTests
{
    private static readonly Practice Practice = Gradus.Tests.Reading.LittlePractice.Golden.Read();
    private static readonly Exercise Sway = Practice.Of(new ExerciseId("calf-sway"));

    [Theory]
    [InlineData(Stage.Gain, null, true)]
    [InlineData(Stage.Gain, AgeBand.Under18, true)]
    [InlineData(Stage.Strengthen, null, false)]
    public void It_fits_whatever_the_age(Stage stage, AgeBand? age, bool reaches) =>
        Assert.Equal(reaches, Of(stage, age).Reaches(Sway, Practice.Clients));

    [Fact]
    public void Before_there_is_a_client_it_would() => Assert.True(Of(Stage.Strengthen, null).Reaches(Sway, []));

    /// <summary>It needs a wall and a step; every key must fit.</summary>
    [Theory]
    [InlineData("wall", Stage.Gain, true)]
    [InlineData("step", Stage.Gain, true)]
    [InlineData("Wall", Stage.Gain, false)]
    [InlineData("walls", Stage.Gain, false)]
    [InlineData("wall", Stage.Strengthen, false)]
    public void Equipment_fits_in_the_very_words_alone(string thing, Stage stage, bool reaches) =>
        Assert.Equal(
            reaches,
            (Of(stage, null) with { Equipment = new(thing, Location.Whole("cautions/snap.md")) }).Reaches(Sway, Practice.Clients)
        );

    private static Attachment Of(Stage stage, AgeBand? age) => new(stage, null, null, null, null, age);
}
