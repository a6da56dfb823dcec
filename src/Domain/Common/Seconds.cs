using System.Globalization;

namespace Gradus.Domain;

/// <summary>A span of time in whole seconds, never negative.</summary>
public readonly record struct Seconds : IComparable<Seconds>
{
    public static readonly Seconds Zero;

    public Seconds(int value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        Value = value;
    }

    public int Value { get; }

    public int CompareTo(Seconds other) => Value.CompareTo(other.Value);

    /// <summary>The ISO 8601 duration of the page contract: whole seconds, never minutes or hours, as <c>PT45S</c>.</summary>
    public string ToIsoDuration() => string.Create(CultureInfo.InvariantCulture, $"PT{Value}S");

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value} s");

    public static Seconds operator +(Seconds left, Seconds right) => new(left.Value + right.Value);

    public static Seconds Add(Seconds left, Seconds right) => left + right;

    public static bool operator <(Seconds left, Seconds right) => left.Value < right.Value;

    public static bool operator >(Seconds left, Seconds right) => left.Value > right.Value;

    public static bool operator <=(Seconds left, Seconds right) => left.Value <= right.Value;

    public static bool operator >=(Seconds left, Seconds right) => left.Value >= right.Value;
}
