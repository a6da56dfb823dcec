namespace Gradus.Domain;

/// <summary>What exercises may have in common: one of these is enough.</summary>
/// <param name="Properties">As an exercise's header writes them (<see cref="WorkProperty.Written"/>).</param>
/// <param name="Loads">Regions, on whichever side.</param>
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
        Properties.Any(exercise.Properties.Contains)
        || Stages.Contains(exercise.Stage)
        || Positions.Contains(exercise.Position)
        || Loads.Any(region => exercise.Loads.Any(load => load.Region == region));
}
