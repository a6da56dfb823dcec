using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What an exercise leaves out: a condition that everybody is asked, that matters with something it does, and that it
/// does not name.</summary>
public static class Omission
{
    /// <summary>What of the exercise the condition matters with, where the exercise does not name it; otherwise null.</summary>
    public static string? Of(Condition condition, Exercise exercise) =>
        condition.Basis is null || exercise.Contraindications.Any(c => c.Value == condition.Id)
            ? null
            : condition.Basis.MattersFor.FirstOrDefault(what => Has(exercise, what));

    /// <summary>A property, a stage or a position. Work whose effort nobody states is taken to be hard.</summary>
    private static bool Has(Exercise exercise, string what) =>
        exercise.AllProperties.Contains(what, StringComparer.Ordinal)
        || what == Kebab.Of(exercise.Stage.ToString())
        || what == Kebab.Of(exercise.Position.ToString())
        || (what == DoseProperties.HardEffort && exercise.Dose.Dose is { } dose && Hardness.IsVigorous(exercise.Drill, dose));
}
