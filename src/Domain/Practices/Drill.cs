namespace Gradus.Domain;

/// <summary>An exercise without its words: what the body does in it, on which the times, the loads and the screening
/// rest.</summary>
/// <param name="Loads">What it loads, what its position rests on among it.</param>
/// <param name="Properties">Those that the coach names.</param>
public sealed record Drill(
    ExerciseId Id,
    Motion Trains,
    Stage Stage,
    Position Position,
    Series<string> Equipment,
    Series<LoadedRegion> Loads,
    Series<string> Properties
);
