namespace Gradus.Domain;

/// <summary>How a motion is measured, and what is published about it.</summary>
/// <param name="Of">The motion that it is one of several ways to measure; null where the motion itself is measured, or cannot
/// be.</param>
/// <param name="How">How it is measured; null where nobody has written it down.</param>
/// <param name="Span">What a reading of it can be at all.</param>
/// <param name="Errors">Published errors of measuring it. Where there is none, none is borrowed.</param>
/// <param name="References">Published values, each of its own set; sets are never mixed, and a mean is never a limit for a
/// person.</param>
public sealed record Measure(
    Motion Motion,
    string? Of,
    string? How,
    PlausibleSpan Span,
    Series<MeasuringError> Errors,
    Series<ReferenceValue> References
)
{
    /// <summary>The name of the motion that exercises train.</summary>
    public string Trained => Of ?? Motion.Name;
}

/// <summary>From the least to the most that a reading can be, both included, in the motion's unit. Wide enough for everybody: it
/// catches slips of the pen, and judges nobody. Common practice, no source.</summary>
public sealed record PlausibleSpan(decimal Least, decimal Most)
{
    /// <summary>Where a motion says nothing.</summary>
    public static PlausibleSpan Of(MotionUnit unit) => unit == MotionUnit.Centimetres ? new(-100, 250) : new(-90, 200);

    public bool Holds(decimal value) => value >= Least && value <= Most;
}

/// <param name="Set">The name of the set: AAOS, AMA, 38 CFR 4.71a.</param>
/// <param name="Mark">How far the value is confirmed: seen, second-hand, memory, computed.</param>
public sealed record ReferenceValue(decimal Value, string Set, string Source, string Mark);
