using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What work does to a trunk. A push or a hold in a place where range is gained, or its end controlled, is done at the
/// end (contract and relax: Sharman MJ et al. 2006, Sports Med 36:929-39, from memory); one that strengthens or prepares need not
/// be.</summary>
public sealed class WorkPropertiesTests
{
    [Theory]
    [InlineData(Stage.Gain, "2 x press 5 s at 40%, each side", true)]
    [InlineData(Stage.Control, "2 x press 5 s at 40%, each side", true)]
    [InlineData(Stage.Prepare, "2 x press 5 s at 40%, each side", false)]
    [InlineData(Stage.Strengthen, "2 x press 5 s at 40%, each side", false)]
    [InlineData(Stage.Load, "2 x press 5 s at 40%, each side", false)]
    [InlineData(Stage.Strengthen, "2 x hold 30 s, each side", true)]
    [InlineData(Stage.Strengthen, "2 x raise 5 s, each side", true)]
    [InlineData(Stage.Prepare, "2 x move 6 reps, each side", true)]
    [InlineData(Stage.Gain, "2 x breathe 5 breaths, each side", false)]
    public void The_trunk_comes_to_its_end_by_what_is_done_and_where(Stage stage, string dose, bool bends)
    {
        var (drill, does) = Of(dose);
        Assert.Equal(bends, WorkProperty.BendsTheTrunk(drill with { Stage = stage }, does));
    }

    [Theory]
    [InlineData("thoracic rotation", "", true)]
    [InlineData("shoulder flexion", "", false)]
    [InlineData("shoulder flexion", "properties: [trunk-end-range]", true)]
    [InlineData("thoracic rotation", "properties: [mid-range]", false)]
    public void Another_joint_s_end_is_not_the_trunk_s(string trains, string more, bool bends)
    {
        var (drill, does) = Of("2 x hold 30 s, each side", trains, more);
        Assert.Equal(bends, WorkProperty.BendsTheTrunk(drill, does));
    }

    [Theory]
    [InlineData(Stage.Gain, "2 x move 6 reps, each side", false)]
    [InlineData(Stage.Load, "2 x move 6 reps, each side", true)]
    [InlineData(Stage.Gain, "2 x move 6 reps at effort 5, each side, load a dumbbell", true)]
    [InlineData(Stage.Gain, "2 x carry 20 m, each side, load a dumbbell", true)]
    public void A_weight_or_more_than_a_joint_is_loaded(Stage stage, string dose, bool isLoaded)
    {
        var (drill, does) = Of(dose);
        Assert.Equal(isLoaded, WorkProperties.IsLoaded(drill with { Stage = stage }, does));
    }

    private static (Drill Drill, Dose Dose) Of(string dose, string trains = "thoracic rotation", string more = "")
    {
        var exercise = Assert.Single(Club.Empty.Exercise("turn", dose, more, "sitting", trains).Read().Exercises);
        return (exercise.Drill, exercise.Dose.Dose ?? throw new InvalidOperationException("The dose cannot be read."));
    }
}
