using Gradus.Auditing;

namespace Gradus.Tests.Auditing;

/// <summary>Counted as the words are said in any English dictionary. tests/Browser holds thousands of words against another
/// counter.</summary>
public sealed class SyllablesTests
{
    [Theory]
    [InlineData(
        1,
        "the calf knee hold lunge press breathe eyes fire bend stretched tied worked shoes goes does once please toes "
            + "hours judged piste"
    )]
    [InlineData(
        2,
        "ankle ankles metre going trying being doing muscle table safely careful someone sideways evening every quiet "
            + "rested ended changes presses wednesday handled client spasm prism"
    )]
    [InlineData(
        3,
        "area idea easier studying everything physical usual piano period video museum continue carefully another exercise"
    )]
    [InlineData(4, "dorsiflexion experience repetition everybody material variety algorithm")]
    [InlineData(5, "physiotherapy examination university individual")]
    public void A_word_has_its_syllables(int syllables, string words) =>
        Assert.All(words.Split(' '), word => Assert.Equal((word, syllables), (word, Syllables.Of(word))));

    [Theory]
    [InlineData("flèche", 1)]
    [InlineData("épée", 2)]
    [InlineData("Épée", 2)]
    [InlineData("30", 1)]
    [InlineData("{hold}", 1)]
    [InlineData("pst", 1)]
    [InlineData("", 1)]
    [InlineData("don't", 1)]
    [InlineData("fencers'", 2)]
    public void Accents_signs_and_figures_are_no_trouble(string word, int syllables) =>
        Assert.Equal(syllables, Syllables.Of(word));
}
