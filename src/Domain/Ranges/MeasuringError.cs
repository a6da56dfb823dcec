namespace Gradus.Domain;

/// <summary>A published smallest change that is more than the error of measuring, and for what exactly it was found.</summary>
/// <param name="Value">In the motion's unit, as published.</param>
/// <param name="Mode">Null where active and passive are not told apart, as in a lunge.</param>
/// <param name="Raters">Null where it serves one rater and two.</param>
/// <param name="Trials">Of how many tries the study took the mean; 1 where it took one, or nobody says how many.</param>
/// <param name="Note">What else was found: who was measured, on which days.</param>
/// <param name="Mark">How far the value is confirmed: seen, second-hand, memory, computed.</param>
public sealed record MeasuringError(
    decimal Value,
    ErrorLevel Level,
    RangeMode? Mode,
    InstrumentClass Instrument,
    RaterRelation? Raters,
    int Trials,
    ErrorService Serves,
    string Note,
    string Source,
    string Mark
)
{
    /// <summary>MDC95 = 1.191490 · MDC90 (Weir JP 2005, J Strength Cond Res 19(1):231-40).</summary>
    public const decimal From90To95 = 1.191490m;

    /// <summary>The same at 95 per cent. Whose level nobody states is used as it stands.</summary>
    public decimal At95 => Level == ErrorLevel.Ninety ? From90To95 * Value : Value;

    /// <summary>The practice's own word for a motion of its own: nothing is known but the number.</summary>
    public static MeasuringError OfPractice(decimal value, string source) =>
        new(value, ErrorLevel.NotStated, null, InstrumentClass.Any, null, 1, ErrorService.BetweenDays, source, source, source);

    /// <summary>Whether it was found for readings like these.</summary>
    public bool Agrees(RangeMode mode, InstrumentClass? instrument, RaterRelation raters) =>
        (Mode is null || Mode == mode)
        && (Instrument == InstrumentClass.Any || Instrument == instrument)
        && (Raters is null || Raters == raters);
}

public enum ErrorLevel
{
    NinetyFive,
    Ninety,

    /// <summary>The source does not say.</summary>
    NotStated,
}

/// <summary>What a published error may be used for.</summary>
public enum ErrorService
{
    /// <summary>Readings of different days.</summary>
    BetweenDays,

    /// <summary>The change, between days, of the difference of the two sides.</summary>
    ChangeOfSides,

    /// <summary>Nothing is judged by it: found within one session, by another method, with other people, or of other joints
    /// too.</summary>
    OnlyShown,
}

/// <summary>How those who took two readings are related.</summary>
public enum RaterRelation
{
    /// <summary>Both were taken by one, who is named at both.</summary>
    One,

    /// <summary>By two, or nobody knows by whom.</summary>
    Two,
}
