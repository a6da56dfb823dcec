namespace Gradus.Domain;

/// <summary>One measured range, from <c>readings.csv</c>.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
/// <param name="Value">In the motion's unit; below nothing where the joint does not come as far as its zero.</param>
/// <param name="Instrument">Readings of different instruments are never compared.</param>
public sealed record RangeReading(
    DateOnly Date,
    Motion Motion,
    Side? Side,
    RangeMode Mode,
    decimal Value,
    string Instrument,
    Location At
)
{
    /// <summary>Who measured, in letters that the coach knows; null where nobody wrote it down. Never on a page.</summary>
    public string? By { get; init; }

    /// <summary>Of how many tries the value is the mean; at least 1.</summary>
    public int Trials { get; init; } = 1;

    /// <summary>Whether it was taken within the hour after training or stretching, which raises a range for a while: such a
    /// reading is shown and never judged.</summary>
    public bool IsAfterTraining { get; init; }
}

public enum RangeMode
{
    /// <summary>The client moved it.</summary>
    Active,

    /// <summary>Somebody or something else moved it.</summary>
    Passive,
}
