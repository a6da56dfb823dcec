namespace Gradus.Domain;

/// <summary>What a client who measures alone has for an error, until the practice has its own: the scatter of three days or
/// more within a week, before the programme begins. It is provisional, and said so. Nobody has published an error of
/// that.</summary>
/// <param name="Days">How many it comes from.</param>
/// <param name="Square">Of the smallest change that counts, in square centimetres.</param>
public sealed record HomeError(int Days, decimal Square)
{
    public const int DaysNeeded = 3;

    /// <summary>(1.96 · √2)², from a standard error of measurement to the smallest change at 95 per cent (Weir 2005, J Strength
    /// Cond Res 19:231-40).</summary>
    private const decimal Detectable = 7.6832m;

    /// <summary>Three days say little of the scatter of many; common practice, no source.</summary>
    private const decimal Allowance = 1.7m;

    /// <summary>In centimetres: the largest figure of clinics, 1.9 (Powden 2015, Man Ther, 10.1016/j.math.2015.01.004), rounded
    /// up; common practice, no source.</summary>
    private const decimal Least = 2.0m;

    /// <param name="baseline">The last occasion before the programme.</param>
    /// <returns>Null where it is no length measured at home, or there are too few days.</returns>
    public static HomeError? Of(SeriesKey key, Occasion? baseline, DateOnly start)
    {
        if (key.Motion.Unit != MotionUnit.Centimetres || !Instruments.IsAtHome(key.Instrument) || baseline is null)
            return null;
        decimal[] values = [.. baseline.Days.Where(d => d.Date <= start).Select(d => d.Value)];
        if (values.Length < DaysNeeded)
            return null;
        var mean = values.Sum() / values.Length;
        var variance = values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1);
        return new(values.Length, Math.Max(Detectable * Allowance * Allowance * variance, Least * Least));
    }
}
