using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>What follows from a dose for what may harm. A hold is relaxed; where it is all that an exercise for force, control or
/// a load has, it is held by muscles, whatever it is called (common practice, no source).</summary>
public sealed class DosePropertiesTests
{
    [Theory]
    [InlineData(Stage.Strengthen, "2 x hold 11 s", true)]
    [InlineData(Stage.Control, "2 x hold 11 s", true)]
    [InlineData(Stage.Load, "2 x hold 11 s", true)]
    [InlineData(Stage.Strengthen, "2 x hold 2 breaths", true)]
    [InlineData(Stage.Strengthen, "2 x (hold 11 s then breathe 1 breaths)", true)]
    [InlineData(Stage.Gain, "2 x hold 60 s", false)]
    [InlineData(Stage.Prepare, "2 x hold 60 s", false)]
    [InlineData(Stage.Strengthen, "2 x hold 10 s", false)]
    [InlineData(Stage.Strengthen, "2 x hold 1 breaths", false)]
    [InlineData(Stage.Strengthen, "2 x (press 10 s at 40% then hold 60 s)", false)]
    [InlineData(Stage.Strengthen, "2 x breathe 60 s", false)]
    [InlineData(Stage.Gain, "2 x press 11 s at 40%", true)]
    public void A_hold_where_work_is_meant_counts_as_a_contraction(Stage stage, string dose, bool isLong) =>
        Assert.Equal(isLong, DoseProperties.Of(stage, DoseOf.Line(dose)).Contains(DoseProperties.LongContraction));
}
