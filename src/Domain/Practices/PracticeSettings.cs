namespace Gradus.Domain;

/// <summary>What a practice decides once for all its programmes.</summary>
/// <param name="GetReady">Before each use.</param>
/// <param name="Transition">Between two uses where position and equipment stay.</param>
/// <param name="TransitionStanding">Between the floor and standing.</param>
/// <param name="TransitionChange">Any other change of position or equipment.</param>
/// <param name="LighterShare">Per cent of the sets that a lighter week keeps.</param>
public sealed record PracticeSettings(
    DoseSettings Dose,
    Seconds GetReady,
    Seconds Transition,
    Seconds TransitionChange,
    Seconds TransitionStanding,
    int LighterShare)
{
    public static readonly PracticeSettings Default = new(DoseSettings.Default, new(5), new(10), new(30), new(45), 60);
}
