namespace Gradus.Domain;

/// <summary>How an exercise looks, in the words of <c>pose.md</c>, item by item.</summary>
/// <param name="Start">At least the base.</param>
/// <param name="End">What is other at the end; empty where nothing moves.</param>
public sealed record WrittenPose(Series<string> Start, Series<string> End)
{
    /// <summary>Where it is felt, one of the places that a figure knows; null where nobody said.</summary>
    public string? Feel { get; init; }
}
