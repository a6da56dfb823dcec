using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class NeedUnmeasured : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from needed in NeededSide.Of(practice, client, training, today)
        where needed.Reading is null
        group needed by needed.Name into unmeasured
        let first = unmeasured.First()
        let exercise = practice.Of(first.Use.Exercise.Id)
        select this.Found(
            Level.Note,
            client.Id,
            first.Use.At,
            $"'{exercise.Title}' needs {first.InUnit(first.Range.AtLeast)} of {first.Motion.Name}, but {client.Name}'s "
                + $"{first.Name} was never measured.",
            $"Measure it before the exercise is done, and write it in readings.csv.{practice.HowToMeasure(first.Motion)}",
            exercise.Id.Text.Length
        );
}
