using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>An exercise of the programme, with what it asks of this client.</summary>
/// <param name="Cautions">Those it carries for this client, worst first.</param>
/// <param name="NotWith">Conditions that forbid it.</param>
/// <param name="ClearFirst">Conditions that forbid it until a clearance is in force, those of <paramref name="NotWith"/>
/// left out.</param>
/// <param name="Easier">Its easier version, in this programme or not.</param>
/// <param name="Harder">Its harder version.</param>
public sealed record TrainedExercise(
    Drill Drill,
    Series<CautionId> Cautions,
    Series<ConditionId> NotWith,
    Series<ConditionId> ClearFirst,
    ExerciseId? Easier,
    ExerciseId? Harder
)
{
    public ExerciseId Id => Drill.Id;

    public static TrainedExercise Of(Practice practice, Client client, Exercise exercise) =>
        new(
            exercise.Drill,
            practice.CautionsOf(exercise, client),
            exercise.NotWith.Select(c => c.Value).ToSeries(),
            exercise.ClearFirst.Select(c => c.Value).Where(c => exercise.NotWith.All(n => n.Value != c)).ToSeries(),
            exercise.Easier?.Value,
            exercise.Harder?.Value
        );
}
