namespace Gradus.Domain;

/// <summary>How a dose changes over the weeks of use where no line names a week.</summary>
public static class DoseGrowth
{
    /// <summary>The dose of one week: each number grows on its own, low + round-half-up((high − low)·(week − first)/(last −
    /// first)); one week gives the low end; the seconds of a ramp of k steps are k·grow(low/k, high/k). Terms that have nothing
    /// to act on fall away.</summary>
    /// <param name="first">The first week of use.</param>
    /// <param name="last">The last week of use, included.</param>
    /// <exception cref="ArgumentOutOfRangeException">The week is not from first to last.</exception>
    public static Dose At(Dose envelope, int week, int first, int last)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(week, first);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(week, last);
        return envelope.At(range => Grown(range, (long)week - first, (long)last - first));
    }

    /// <summary>The dose of a lighter week: the sets times the share, half up, at least 1. The sets of <c>plus</c> stay, and
    /// terms that have nothing to act on fall away.</summary>
    /// <param name="share">In per cent, 1 to 100.</param>
    public static SettledDose Lighter(SettledDose settled, int share)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(share, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(share, 100);
        var sets = Math.Max(1, (int)HalfUp(settled.Sets * share, 100));
        return settled.With(dose => dose with { Sets = new(sets) });
    }

    private static int Grown(Count range, long gone, long whole) =>
        whole == 0 ? range.Low : range.Low + (int)HalfUp((range.High - range.Low) * gone, whole);

    /// <summary>The quotient of two numbers that are not negative, rounded to the nearest whole number, a half upwards.</summary>
    private static long HalfUp(long number, long by) => ((2 * number) + by) / (2 * by);
}
