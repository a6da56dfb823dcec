using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>Which properties ask for a caution, and in what words a coach reads of them: PropertyWithoutCaution.md.</summary>
public sealed class PropertyWithoutCautionTests
{
    [Theory]
    [InlineData("head-low", "puts the head low")]
    [InlineData("weight-on-hands", "puts weight on the hands")]
    [InlineData("trunk-end-range", "bends or turns the trunk to its end")]
    [InlineData("balance", "asks for balance")]
    [InlineData("jumping", "asks for jumping")]
    public void Each_is_said_in_words(string property, string words) =>
        Assert.Equal(
            [$"'Wall calf stretch' {words} ({property}), and no caution is there for that."],
            Found(property).Select(f => f.Sentence)
        );

    [Fact]
    public void One_that_is_written_twice_is_told_once() => Assert.Single(Found("balance, balance"));

    /// <summary>They say how an exercise is done: practice-format.md.</summary>
    [Theory]
    [InlineData("mid-range")]
    [InlineData("sits-on-heels")]
    public void What_only_says_how_something_is_done_asks_for_none(string property) => Assert.Empty(Found(property));

    private static Finding[] Found(string properties) =>
        [
            .. Trial
                .Of([
                    Edit.Of(
                        "exercises/wall-calf-stretch.md",
                        ["- stage: gain", "+ stage: gain", $"+ properties: [{properties}]"]
                    ),
                ])
                .Where(f => f.Rule.Text == "property-without-caution"),
        ];
}
