namespace Gradus.Tests.Trainings;

/// <summary>Too young, too old to land without a word, and ranges that a position takes.</summary>
internal static class ClinicAges
{
    private const string Hold = "2 x hold 20 s, each side";
    private const string Jump = "2 x move 6 reps, each side";
    private const string NeedsWrist = "needs: { wrist extension passive: 80 }";

    public static readonly ClinicCase[] All =
    [
        new("Twelve is too young, whoever agreed", "pain-now: 0", Hold, "error client-too-young") { Born = "2014-06-01" },
        new("Who may still be twelve is", "pain-now: 0", Hold, "error client-too-young") { Born = "2014" },
        new("Thirteen is not", "pain-now: 0", Hold, "nothing") { Born = "2013" },
        new("Thirteen on the first day is not", "pain-now: 0", Hold, "nothing") { Born = "2014-01-04" },
        new(
            "Sixteen does not press with 80 %",
            "pain-now: 0",
            "2 x press 8 s at 80%, each side",
            "error effort-above-youth-limit"
        )
        {
            Born = "2010-06-01",
        },
        new("Sixty-six lands by leave only", "pain-now: 0", Jump, "not cleared sixty-five-or-older")
        {
            Born = "1960-06-01",
            Position = "standing",
            More = "properties: [jumping]",
        },
        new("Sixty-six lands with it", "pain-now: 0", Jump, "nothing")
        {
            Born = "1960-06-01",
            Position = "standing",
            More = "properties: [jumping]",
            Cleared = "sixty-five-or-older 2026-11-10 2027-11-09",
        },
        new("Who may be sixty-five is, for a landing", "pain-now: 0", Jump, "not cleared sixty-five-or-older")
        {
            Born = "1962",
            Position = "standing",
            More = "properties: [jumping]",
        },
        new("Who becomes sixty-five in the week is", "pain-now: 0", Jump, "not cleared sixty-five-or-older")
        {
            Born = "1962-01-08",
            Position = "standing",
            More = "properties: [jumping]",
        },
        new("Sixty-four lands", "pain-now: 0", Jump, "nothing")
        {
            Born = "1962-06-01",
            Position = "standing",
            More = "properties: [jumping]",
        },
        new("Sixty-six stretches", "pain-now: 0", Hold, "nothing") { Born = "1960-06-01" },
        Wrist(
            "A wrist that bends back 70 does not take 80",
            "error range-below-need",
            "2026-11-20,wrist extension,left,passive,70"
        ),
        Wrist("A wrist that bends back 85 does", "nothing", "2026-11-20,wrist extension,left,passive,85"),
        Wrist(
            "Bent by itself to 85 says nothing about the weight on it",
            "warning need-unmeasured",
            "2026-11-20,wrist extension,left,active,85"
        ),
        Wrist("What was 85 in spring is measured again", "warning need-unmeasured", "2026-05-01,wrist extension,left,passive,85"),
        Wrist("What was 70 in spring blocks until it is", "error range-below-need", "2026-05-01,wrist extension,left,passive,70"),
        Wrist("Nobody measured the wrist that bears", "warning need-unmeasured"),
        Wrist(
            "A need of neither way is judged by the smaller",
            "error range-below-need",
            "2026-11-20,wrist extension,left,passive,85",
            "2026-11-20,wrist extension,left,active,75"
        ) with
        {
            More = "needs: { wrist extension: 80 }",
        },
        Wrist("Lying down the coach may see it at a glance", "nothing") with
        {
            Position = "supine",
            Trains = "wrist extension",
        },
    ];

    private static ClinicCase Wrist(string why, string comes, params string[] readings) =>
        new(why, "pain-now: 0", "2 x move 6 reps, each side", comes)
        {
            Position = "hands-and-knees",
            Trains = "wrist extension",
            Side = "left",
            More = NeedsWrist,
            Readings = readings,
        };
}
