namespace Gradus.Tests.Auditing;

/// <summary>When a caution for a piece of equipment goes for no exercise: EquipmentInNoExercise.md. Both exercises of the little
/// practice need a wall.</summary>
public sealed class EquipmentInNoExerciseTests
{
    private const string Caution =
        "cautions/snap.md\n+ ---\n+ title: A snap\n+ kind: stop\n+ attaches-to: { TO }\n+ ---\n+ Stop.";

    private const string Band = "exercises/wall-calf-stretch.md\n- equipment: [wall]\n+ equipment: [wall, a red band]";

    [Theory]
    [InlineData("equipment: wall", 0)]
    [InlineData("equipment: a red band", 0)]
    [InlineData("equipment: A red band", 1)] // the very words
    [InlineData("equipment: band", 1)]
    [InlineData("stage: gain", 0)]
    public void A_word_that_no_exercise_has_is_told(string to, int told) =>
        Assert.Equal(told, OneRule.Says("equipment-in-no-exercise", Attaching(to), Band).Length);

    [Fact]
    public void A_word_that_is_near_is_proposed() =>
        Assert.Equal(
            "Did you mean 'a red band'?",
            Assert.Single(OneRule.Says("equipment-in-no-exercise", Attaching("equipment: a red bnad"), Band)).Help
        );

    private static string Attaching(string to) => Caution.Replace("TO", to, StringComparison.Ordinal);
}
