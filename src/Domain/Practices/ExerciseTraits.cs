namespace Gradus.Domain;

/// <summary>What exercises may have in common: one of these is enough.</summary>
/// <param name="Properties">As an exercise's header writes them (<see cref="WorkProperty.Written"/>); whoever is on hands and
/// knees has weight on the hands, written or not.</param>
/// <param name="Loads">Regions, on whichever side, by what the exercise says or rests on, or because it trains them.</param>
/// <param name="At">Where it is written.</param>
public sealed record ExerciseTraits(
    Series<string> Properties,
    Series<Stage> Stages,
    Series<Position> Positions,
    Series<Region> Loads,
    Location At
)
{
    public bool Fit(Exercise exercise) =>
        WorkProperty.Of(exercise.Drill, exercise.Dose.Dose).Any(Properties.Contains)
        || Stages.Contains(exercise.Stage)
        || Positions.Contains(exercise.Position)
        || Loads.Any(exercise.MayLoad);
}
