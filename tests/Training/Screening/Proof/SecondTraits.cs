namespace Gradus.Tests.Trainings;

/// <summary>Which conditions an exercise has to do with, a second time: those it names, and those that name what it
/// is.</summary>
internal static class SecondTraits
{
    private static readonly string[] Spine = ["neck", "upper-back", "lower-back"];

    public static bool NotWith(MadeLibrary library, MadeDone done, string condition, ProofSlip slip) =>
        done.Exercise.NotWith.Contains(condition) || Of(library, done, condition, slip).Any(t => t.IsNotWith);

    public static bool ClearFirst(MadeLibrary library, MadeDone done, string condition, ProofSlip slip) =>
        done.Exercise.ClearFirst.Contains(condition)
        || (!NotWith(library, done, condition, slip) && Of(library, done, condition, slip).Any(t => !t.IsNotWith));

    public static IEnumerable<MadeTrait> Of(MadeLibrary library, MadeDone done, string condition, ProofSlip slip) =>
        slip == ProofSlip.TraitsForgotten ? [] : library.Traits.Where(t => t.Condition == condition && Fits(t, done, slip));

    private static bool Fits(MadeTrait trait, MadeDone done, ProofSlip slip)
    {
        var (exercise, loaded) = (done.Exercise, new SecondLoads(done, slip));
        return trait.Key switch
        {
            "stages" => exercise.Stage == trait.Value,
            "positions" => trait.Value.Split(", ").Contains(exercise.Position),
            "loads" when slip == ProofSlip.TraitLoadsOnlyWhereWritten => (exercise.Loads ?? []).Any(l => l.EndsWith(trait.Value)),
            "loads" => loaded.Says(trait.Value) || loaded.Moves(trait.Value),
            _ => exercise.Properties.Contains(trait.Value)
                || (
                    slip != ProofSlip.TraitPropertiesOnlyWhereWritten
                    && trait.Value switch
                    {
                        "weight-on-hands" => exercise.Position is "hands-and-knees" or "hanging",
                        "trunk-end-range" => Spine.Contains(exercise.Part) && SecondWork.IsEndRange(exercise, slip),
                        _ => false,
                    }
                ),
        };
    }
}
