using System.Globalization;

namespace Gradus.Domain;

/// <summary>A whole number, or a range of them with both ends included: <c>3</c> or <c>2-3</c>.</summary>
public sealed record Count
{
    public Count(int low, int high)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(low);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(low, high);
        Low = low;
        High = high;
    }

    public Count(int value)
        : this(value, value) { }

    public int Low { get; }

    public int High { get; }

    public bool IsSingle => Low == High;

    /// <summary>Whether every number of <paramref name="other"/> lies between the ends of this one, ends included.</summary>
    public bool Holds(Count other) => Low <= other.Low && other.High <= High;

    public override string ToString() =>
        IsSingle ? Low.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{Low}-{High}");
}
