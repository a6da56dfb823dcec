using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ExerciseWithoutContraindication : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises
        where exercise.NotWith.Count == 0
        select this.Found(
            Level.Error,
            null,
            exercise.At,
            $"'{exercise.Title}' does not say who must leave it out.",
            "Add to its 'not-with' at least one condition."
        );
}
