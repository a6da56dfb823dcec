using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RangeBelowNeed : IStoppingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from needed in NeededSide.Of(practice, client, training, today)
        let reading = needed.Reading
        where needed.IsBelow
        let exercise = practice.Of(needed.Use.Exercise.Id)
        let day = reading.Date.Iso()
        select this.Found(
            Level.Error,
            client.Id,
            needed.Use.At,
            $"'{exercise.Title}' needs {needed.InUnit(needed.Range.AtLeast)} of {needed.Motion.Name}, but "
                + $"{client.Name}'s {needed.Name} was {needed.InUnit(reading.Value)} on {day}.",
            "Choose an exercise that needs less, until a new reading in readings.csv shows the range.",
            exercise.Id.Text.Length
        );
}
