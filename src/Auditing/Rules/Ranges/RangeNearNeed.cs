using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RangeNearNeed : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from needed in NeededSide.Of(practice, client, training, today)
        let reading = needed.Reading
        where reading is not null && !needed.IsBelow && !needed.IsUnmeasured
        let half = HalfWidth(practice, needed.Motion, reading)
        where reading.Value - half < needed.Range.AtLeast
        group (needed, reading) by (needed.Name, needed.Range.AtLeast, reading.Mode) into near
        let first = near.First()
        let exercise = practice.Of(first.needed.Use.Exercise.Id)
        select this.Found(
            Level.Warning,
            client.Id,
            first.needed.Use.At,
            $"'{exercise.Title}' needs {first.needed.InUnit(first.needed.Range.AtLeast)} of {first.needed.Motion.Name}, and "
                + $"{client.Name}'s {first.needed.Name} was {first.needed.InUnit(first.reading.Value)} on "
                + $"{first.reading.Date.Iso()}: borderline, within the error of measuring.",
            "See it done before it is sent, or choose an exercise that needs less.",
            exercise.Id.Text.Length
        );

    /// <summary>Nothing where there is no error for such a reading: then the reading is taken as it stands.</summary>
    private static decimal HalfWidth(Practice practice, Motion motion, RangeReading reading) =>
        ErrorInUse
            .For(
                practice.MeasureOf(motion.Name),
                SeriesKey.Of(reading),
                [new(reading.Date, reading.Value, reading.Trials, reading.By)],
                practice.OwnErrors
            )
            ?.HalfWidth(1)
        ?? 0;
}
