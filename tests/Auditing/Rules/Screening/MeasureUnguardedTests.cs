namespace Gradus.Tests.Auditing;

/// <summary>Who has a hurt ankle does not measure it alone: MeasureUnguarded.md.</summary>
public sealed class MeasureUnguardedTests
{
    [Theory]
    [InlineData("[ankle-injury, recent-surgery]", "")]
    [InlineData("[recent-surgery, ankle-injury]", "")]
    [InlineData("[recent-surgery, hernia]", "error measure-unguarded")]
    public void One_condition_of_the_ankle_is_enough(string notWith, string found) =>
        new PlantedSourceFault(
            notWith,
            found,
            $"exercises/calf-press.md\n- not-with: [ankle-injury]\n+ not-with: {notWith}\n+ measure: knee to wall"
        ).MustBeFound();
}
