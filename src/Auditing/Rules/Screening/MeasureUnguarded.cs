using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class MeasureUnguarded : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises
        let measure = exercise.Measure
        where measure is not null
        where !exercise.NotWith.Any(c => practice.Find(c.Value) is { } condition && condition.Where.Name == HomeTest.Joint)
        select this.Found(
            Level.Error,
            null,
            measure.At,
            $"'{exercise.Title}' is measured alone, and nobody with a hurt {HomeTest.Joint} leaves it out.",
            $"Add to its 'not-with' a condition of the {HomeTest.Joint}, such as an injury of the last weeks."
        );
}
