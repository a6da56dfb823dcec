using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class HoldCountsAsStretch : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises
        where exercise.Dose.Dose is { } dose && DoseProperties.HoldsForWork(exercise.Stage, dose)
        select this.Found(
            Level.Warning,
            null,
            exercise.Dose.At,
            $"'{exercise.Title}' is there to {Kebab.Of(exercise.Stage.ToString())}, and its dose only holds. A hold is relaxed, "
                + "and counts as stretching.",
            "Where muscles work, write raise (a part of the body is kept up) or press (against something) in its place, with how "
                + "hard, as 'raise 20 s at effort 5'; where they do not, its stage is gain or prepare.",
            exercise.Dose.Line.Length
        );
}
