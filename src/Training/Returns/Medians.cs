namespace Gradus.Trainings;

/// <summary>The middle of some numbers.</summary>
internal static class Medians
{
    /// <param name="values">At least one.</param>
    public static decimal Of(IEnumerable<decimal> values)
    {
        decimal[] sorted = [.. values.Order()];
        var middle = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
