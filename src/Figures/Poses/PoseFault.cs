using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>What is wrong in a pose, for the coach who wrote it.</summary>
/// <param name="Item">Which of the items there, from 0.</param>
/// <param name="Column">Where in the item, from 0.</param>
/// <param name="Length">How many characters are meant, at least 1.</param>
/// <param name="Message">What is wrong, one sentence.</param>
/// <param name="Help">The one thing to do about it.</param>
public sealed record PoseFault(int Item, int Column, int Length, string Message, string Help)
{
    /// <summary>Whether it stands in the end of a movement; otherwise in its start.</summary>
    public bool AtEnd { get; init; }
}

/// <summary>A pose as far as it was understood.</summary>
/// <param name="Pose">Null where its base could not be understood.</param>
/// <param name="Faults">Empty where all of it was.</param>
public sealed record ReadPose(Pose? Pose, Series<PoseFault> Faults);
