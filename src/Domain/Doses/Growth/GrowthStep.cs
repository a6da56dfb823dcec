namespace Gradus.Domain;

/// <summary>How much of its unit an amount grows by at once.</summary>
public static class GrowthStep
{
    /// <summary>1 repetition or breath, 5 m, 5 s; 1 s in a range of 10 s or less, and k s for a ramp of k steps.</summary>
    public static int Of(DoseAction action) =>
        action.Effort is Effort.Ramp ramp
            ? ramp.Steps
            : action.Amount.Unit switch
            {
                AmountUnit.Reps or AmountUnit.Breaths => 1,
                AmountUnit.Metres => 5,
                AmountUnit.Seconds => action.Amount.Number.High - action.Amount.Number.Low <= 10 ? 1 : 5,
            };
}
