namespace Gradus.Domain;

/// <summary>What kind of instrument an error was found for.</summary>
public enum InstrumentClass
{
    Goniometer,

    /// <summary>A phone that tells its slope counts as one.</summary>
    Inclinometer,

    Tape,

    /// <summary>The practice's own figure for its own motion, whatever it measures with.</summary>
    Any,

    /// <summary>The source does not say, so no reading agrees with it.</summary>
    NotStated,
}

/// <summary>From the words of a reading to the kind of instrument.</summary>
public static class Instruments
{
    /// <summary>Null where the words name none, or the client measured alone: no published error was found for that.</summary>
    public static InstrumentClass? ClassOf(string instrument) =>
        IsAtHome(instrument) ? null
        : Names(instrument, "goniometer") ? InstrumentClass.Goniometer
        : Names(instrument, "inclinometer") || Names(instrument, "phone") ? InstrumentClass.Inclinometer
        : Names(instrument, "tape") ? InstrumentClass.Tape
        : null;

    /// <summary>Whether the client measured alone.</summary>
    public static bool IsAtHome(string instrument) => Names(instrument, "at home");

    private static bool Names(string instrument, string word) => instrument.Contains(word, StringComparison.OrdinalIgnoreCase);
}
