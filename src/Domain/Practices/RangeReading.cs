namespace Gradus.Domain;

/// <summary>One measured range, from <c>readings.csv</c>.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
/// <param name="Value">In the motion's unit.</param>
/// <param name="Instrument">Readings of different instruments are never compared.</param>
public sealed record RangeReading(
    DateOnly Date,
    Motion Motion,
    Side? Side,
    RangeMode Mode,
    decimal Value,
    string Instrument,
    Location At
);

public enum RangeMode
{
    /// <summary>The client moved it.</summary>
    Active,

    /// <summary>Somebody or something else moved it.</summary>
    Passive,
}
