using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ExerciseWithoutStopSign : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises
        where !SignKinds.Has(practice, exercise, CautionKind.Stop)
        select this.Found(
            Level.Error,
            null,
            exercise.At,
            $"'{exercise.Title}' names no sign to stop for.",
            "Add to its 'signs' at least one caution whose kind is stop."
        );
}
