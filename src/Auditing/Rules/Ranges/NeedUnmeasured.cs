using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class NeedUnmeasured : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from needed in NeededSide.Of(practice, client, training, today)
        where needed.IsUnmeasured
        group needed by needed.Name into unmeasured
        let first = unmeasured.First()
        let exercise = practice.Of(first.Use.Exercise.Id)
        select this.Found(
            RestsOnHandsOrKnees(exercise) ? Level.Warning : Level.Note,
            client.Id,
            first.Use.At,
            $"'{exercise.Title}' needs {first.InUnit(first.Range.AtLeast)} of {ModeOf(first)}{first.Motion.Name}, but "
                + $"{client.Name}'s {first.Name} was "
                + (
                    first.Reading is { } old
                        ? $"last measured on {old.Date.Iso()}, more than {NeededSide.ReadingsLast} days ago."
                        : $"never measured{(first.Range.Mode is null ? "" : " that way")}."
                ),
            $"Measure it before the exercise is done, and write it in readings.csv.{practice.HowToMeasure(first.Motion)}",
            exercise.Id.Text.Length
        );

    /// <summary>A joint that cannot take the position is hurt by the body's own weight on it.</summary>
    private static bool RestsOnHandsOrKnees(Exercise exercise) =>
        exercise.Position is Position.HandsAndKnees or Position.Kneeling or Position.HalfKneeling
        || exercise.Properties.Contains(WorkProperty.WeightOnHands);

    private static string ModeOf(NeededSide needed) =>
        needed.Range.Mode is { } mode ? mode.ToString().ToLowerInvariant() + " " : "";
}
