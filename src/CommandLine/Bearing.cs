using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>How an exercise and a condition stand to each other, whoever does it.</summary>
public enum Bearing
{
    None,
    NotWith,
    ClearFirst,

    /// <summary>A yes for one side forbids it there, though it does not name the condition.</summary>
    Loads,
}

public static class Bearings
{
    public static Bearing Of(Exercise exercise, Condition condition) =>
        exercise.NotWith.Any(c => c.Value == condition.Id) ? Bearing.NotWith
        : exercise.ClearFirst.Any(c => c.Value == condition.Id) ? Bearing.ClearFirst
        : Screening.MayLoad(condition, exercise) ? Bearing.Loads
        : Bearing.None;
}
