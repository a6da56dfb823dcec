namespace Gradus.Domain;

/// <summary>How a motion is measured, and what is published about it.</summary>
/// <param name="How">How it is measured; null where nobody has written it down.</param>
/// <param name="Errors">Published errors of measuring it. Where there is none, none is borrowed.</param>
/// <param name="References">Published values, each of its own set; sets are never mixed, and a mean is never a limit for a
/// person.</param>
public sealed record Measure(Motion Motion, string? How, Series<MeasuringError> Errors, Series<ReferenceValue> References);

/// <param name="Value">The smallest change that is more than the error of measuring (MDC95 unless <paramref name="Of"/> says
/// otherwise), in the motion's unit.</param>
/// <param name="Of">What exactly was found: between raters, one rater, which instrument.</param>
/// <param name="Mark">How far the value is confirmed: seen, second-hand, memory, computed.</param>
public sealed record MeasuringError(decimal Value, string Of, string Source, string Mark);

/// <param name="Set">The name of the set: AAOS, AMA, 38 CFR 4.71a.</param>
/// <param name="Mark">How far the value is confirmed: seen, second-hand, memory, computed.</param>
public sealed record ReferenceValue(decimal Value, string Set, string Source, string Mark);
