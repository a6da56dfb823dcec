using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>How an exercise and a condition stand to each other, whoever does it.</summary>
public enum ConditionEffect
{
    None,
    NotWith,
    ClearFirst,

    /// <summary>A yes for one side forbids it there, though it does not name the condition.</summary>
    Loads,
}

public static class ConditionEffects
{
    public static ConditionEffect Of(Exercise exercise, Condition condition) =>
        exercise.NotWith.Any(c => c.Value == condition.Id) ? ConditionEffect.NotWith
        : exercise.ClearFirst.Any(c => c.Value == condition.Id) || IsAskedFirst(exercise, condition) ? ConditionEffect.ClearFirst
        : Screening.MayLoad(condition, exercise) ? ConditionEffect.Loads
        : ConditionEffect.None;

    /// <summary>Whether what the exercise does at the high end of its dose matters with the condition.</summary>
    private static bool IsAskedFirst(Exercise exercise, Condition condition) =>
        exercise.Dose.Dose is { } dose && WorkProperties.MattersWith(condition, exercise.Drill, [dose]) is not null;
}
