using System.Globalization;

namespace Gradus.Domain;

/// <summary>How much more something is than before, as an exact fraction.</summary>
/// <param name="Now">Not negative.</param>
/// <param name="Before">Above 0.</param>
public readonly record struct Growth(long Now, long Before) : IComparable<Growth>
{
    /// <summary>In whole per cent of before, half away from zero: 27 for 1.268, -50 for a half.</summary>
    public int MorePercent => (int)Math.Round(100m * (Now - Before) / Before, MidpointRounding.AwayFromZero);

    /// <summary>Its natural logarithm.</summary>
    public double Log => Math.Log((double)Now / Before);

    public static bool operator >(Growth left, Growth right) => left.CompareTo(right) > 0;

    public static bool operator <(Growth left, Growth right) => left.CompareTo(right) < 0;

    public static bool operator >=(Growth left, Growth right) => left.CompareTo(right) >= 0;

    public static bool operator <=(Growth left, Growth right) => left.CompareTo(right) <= 0;

    /// <summary>Whether it is at most so many per cent more.</summary>
    public bool IsWithin(int percent) => (Int128)100 * Now <= (Int128)(100 + percent) * Before;

    /// <summary>Whether it is at most so many per cent of before.</summary>
    public bool IsAtMost(int percent) => (Int128)100 * Now <= (Int128)percent * Before;

    public int CompareTo(Growth other) => ((Int128)Now * other.Before).CompareTo((Int128)other.Now * Before);

    /// <summary>Equal where they are the same fraction.</summary>
    public bool Equals(Growth other) => CompareTo(other) == 0;

    public override int GetHashCode() => ((double)Now / Before).GetHashCode();

    public override string ToString() => ((decimal)Now / Before).ToString("0.00", CultureInfo.InvariantCulture);
}
