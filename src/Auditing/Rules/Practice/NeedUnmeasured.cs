using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class NeedUnmeasured : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from needed in NeededSide.Of(client, uses, practice.Motions, today)
        where needed.Reading is null
        group needed by needed.Name into unmeasured
        let first = unmeasured.First()
        let exercise = first.Use.Exercise
        select new Finding(
            RuleId.Of(GetType()),
            Level.Note,
            client.Id,
            first.Use.At,
            $"'{exercise.Title}' needs {first.InUnit(first.Range.AtLeast)} of {first.Motion.Name}, but {client.Name}'s "
                + $"{first.Name} was never measured.",
            "Measure it before the exercise is done, and write it in readings.csv.",
            exercise.Id.Text.Length
        );
}
