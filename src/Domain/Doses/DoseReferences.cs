namespace Gradus.Domain;

/// <summary>A published figure that a dose is shown beside: information, never an error.</summary>
/// <param name="Words">What it says, as a sentence without its full stop.</param>
/// <param name="Source">Where it was published.</param>
/// <param name="Mark">How far it is confirmed: seen, second-hand, memory, computed.</param>
/// <param name="Least">The number itself, or the lower of two, in seconds.</param>
/// <param name="Most">The higher of two; null where there is one.</param>
public sealed record DoseReference(string Words, string Source, string Mark, int Least, int? Most = null)
{
    /// <summary>For somebody who is told what the marks mean.</summary>
    public string Marked => $"{Words} ({Source}; {Mark})";

    public string Cited => $"{Words} ({Source})";
}

/// <summary>The figures that stand on <c>reference-values.md</c> under Stretching and Contractions.</summary>
public static class DoseReferences
{
    public static readonly DoseReference StretchInASession = new(
        "Guidelines ask for 60 s of stretch in total for an exercise",
        "Garber CE et al. 2011, Med Sci Sports Exerc 43(7):1334-59",
        "second-hand",
        60
    );

    public static readonly DoseReference HoldOfAdults = new(
        "Guidelines hold 10 to 30 s for most adults",
        "ACSM, Guidelines for Exercise Testing and Prescription, 11th ed.",
        "seen",
        10,
        30
    );

    public static readonly DoseReference HoldOver65 = new(
        "Guidelines hold 30 to 60 s for older adults",
        "ACSM, Guidelines for Exercise Testing and Prescription, 11th ed.",
        "seen",
        30,
        60
    );

    public static readonly DoseReference StretchInAWeek = new(
        "Gains were found from 5 min a week for a muscle group",
        "Thomas E et al. 2018, Int J Sports Med 39:243-54",
        "seen",
        300
    );

    public static readonly DoseReference StretchEnough = new(
        "No further average gain was found beyond 10 min a week, or 4 min a session",
        "Ingram LA et al. 2025, Sports Med, doi 10.1007/s40279-024-02143-9",
        "second-hand",
        600
    );

    public static readonly DoseReference HardContraction = new(
        "Tendon structure and function changed with contractions of at least 70 % of the hardest",
        "Oranchuk DJ et al. 2019, Scand J Med Sci Sports 29:484-503",
        "seen",
        70
    );
}
