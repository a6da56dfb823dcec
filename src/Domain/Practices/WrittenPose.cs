using System.Globalization;

namespace Gradus.Domain;

/// <summary>How an exercise looks, in the words of <c>pose.md</c>, item by item.</summary>
/// <param name="Start">At least the base.</param>
/// <param name="End">What is other at the end; empty where nothing moves.</param>
public sealed record WrittenPose(Series<string> Start, Series<string> End)
{
    /// <summary>Less than this, in degrees, is how a joint hangs; common practice, no source.</summary>
    private const int Least = 20;

    /// <summary>Whether an item says so many degrees of that movement, of whichever side.</summary>
    /// <param name="motion">Its name, as "knee flexion".</param>
    public bool GoesInto(string motion) => Start.Concat(End).Any(item => DegreesOf(motion, item) >= Least);

    /// <summary>"front knee flexion 90" is 90 degrees of knee flexion; 0 where the item is of something else.</summary>
    private static int DegreesOf(string motion, string item) =>
        item.IndexOf(motion + " ", StringComparison.OrdinalIgnoreCase) is >= 0 and var at
        && item[(at + motion.Length)..].Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var said, ..]
        && int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var degrees)
            ? degrees
            : 0;

    /// <summary>Where it is felt, one of the places that a figure knows; null where nobody said.</summary>
    public string? Feel { get; init; }
}
