using System.Globalization;

namespace Gradus.Domain;

/// <summary>A way in whole metres, never negative.</summary>
public readonly record struct Metres
{
    public Metres(int value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        Value = value;
    }

    public int Value { get; }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value} m");
}
