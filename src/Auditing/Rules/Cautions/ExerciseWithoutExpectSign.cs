using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ExerciseWithoutExpectSign : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises
        where !SignKinds.Has(practice, exercise, CautionKind.Expect)
        select this.Found(
            Level.Error,
            null,
            exercise.At,
            $"'{exercise.Title}' does not say what it is normal to feel.",
            "Add to its 'signs' at least one caution whose kind is expect."
        );
}
