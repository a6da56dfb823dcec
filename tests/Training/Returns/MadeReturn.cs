using Gradus.Domain;

namespace Gradus.Tests.Trainings;

/// <summary>What one made client did on one day, as the second implementation sees it.</summary>
/// <param name="Day">From the first day of the programme, from 0.</param>
/// <param name="Session">1 on Monday and Thursday, 2 twice a week, 3 before play, 4 short instead of 1.</param>
/// <param name="Steps">Of 10 pieces of work; null where nobody counted.</param>
/// <param name="IsBegun">No for a day on which the pages were opened and nothing was begun.</param>
/// <param name="IsEarly">Whether it was ended before its last step.</param>
/// <param name="Sets">Of the press on each side; null where it is not said.</param>
internal sealed record MadeSessionDone(
    int Day,
    int Session,
    bool IsBegun,
    bool IsEarly,
    int? Steps,
    int? Effort,
    int? Minutes,
    int? Sets,
    int? During,
    int? Morning,
    bool IsOfOtherCourse,
    bool IsOfNoEdition
)
{
    public string Written(int index) =>
        FormattableString.Invariant($"+{Day} session {Session} week {Math.Clamp((Day / 7) + 1, 1, MadeReturn.Weeks)}")
        + FormattableString.Invariant($"; start {8 + (index % 12):00}:00")
        + (!IsBegun ? "; not today time" : "")
        + (IsBegun && IsEarly ? "; stopped" : "")
        + (Steps is { } steps ? FormattableString.Invariant($"; steps {steps} of 10") : "")
        + (Effort is { } effort ? FormattableString.Invariant($"; effort {effort}") : "")
        + (Minutes is { } minutes ? FormattableString.Invariant($"; minutes {minutes}") : "")
        + (
            IsBegun && Session != 3
                ? FormattableString.Invariant($"; sets push left {Said(Sets)}; sets push right {Said(Sets)}")
                : ""
        )
        + (During is { } during ? FormattableString.Invariant($"; during {during} left knee") : "")
        + (Morning is { } morning ? FormattableString.Invariant($"; morning {morning} left knee") : "")
        + (IsOfOtherCourse ? "; course 0123456789abcdef" : "")
        + (IsOfNoEdition ? "; unknown" : "");

    private static string Said(int? sets) => sets is { } number ? FormattableString.Invariant($"{number}") : "?";
}

/// <summary>One client of a made year, with a habit of their own.</summary>
/// <param name="Today">Days from the first of the programme.</param>
internal sealed record MadeReturn(int Number, int Today, MadeSessionDone[] Told)
{
    public const int Weeks = 52;

    /// <summary>Two sets of a press of 10 s at half effort on each side, and two holds.</summary>
    public const int PlannedSets = 2;

    public static readonly LittlePractice Practice = Club
        .Empty.Exercise("sway", "2 x hold 30 s, each side", position: "supine", trains: "hip flexion")
        .Exercise("push", "2 x press 10 s at 50%, rest 20 s, each side", position: "supine", trains: "knee flexion")
        .Member(
            "ada",
            ["- use: push\n  keep-when-short: yes\n  move-on: [pain at most 2, two sessions running]\n- use: sway"],
            52
        )
        .Edit("clients/ada/programme.md", "    days: [Mon]\n", "    days: [Mon, Thu]\n")
        .Edit(
            "clients/ada/programme.md",
            "- use: sway\n",
            "- use: sway\n  - name: Twice\n    days: 2 a week\n    do:\n      - use: push\n"
                + "  - name: Before\n    days: before play\n"
                + "    do:\n      - use: sway\n"
        );

    /// <summary>A session every third day, each of that effort and nothing else amiss.</summary>
    public static MadeReturn Of(params int[] efforts) =>
        new(
            -1,
            30,
            [.. efforts.Select((e, i) => new MadeSessionDone(3 * i, 1, true, false, 10, e, 10, PlannedSets, 0, 0, false, false))]
        );

    public static MadeReturn Habit(int number)
    {
        var chance = new Chance((ulong)(number + 1));
        var told = new List<MadeSessionDone>();
        var few = number % 5 == 0;
        var (willing, weeks) = (few ? 2 : 1 + chance.Below(10), few ? 3 : 2 + chance.Below(Weeks + 1));
        var (effort, blanks) = (chance.Below(10), chance.Below(3) == 0);
        for (var week = 0; week < weeks; week++)
        {
            willing = !few && chance.Below(6) == 0 ? chance.Below(11) : willing;
            foreach (var (day, session) in new[] { (0, 1), (3, 1), (1, 2), (5, 2), (2, 3), (6, 1) })
            {
                var all = session == 3 || day == 6 ? 30 : 10;
                if (chance.Below(all) < willing)
                    told.Add(Done(chance, (7 * week) + day + chance.Below(2), session, effort, blanks));
                if (chance.Below(40) == 0)
                    told.Add(Done(chance, (7 * week) + day, session, effort, blanks));
            }
        }

        return new(number, (7 * weeks) - chance.Below(10), [.. told.OrderBy(t => t.Day)]);
    }

    public Series<LogEntry> Log() => Told.Index().Select(t => ToldLog.Entry(t.Item.Written(t.Index))).ToSeries();

    private static MadeSessionDone Done(Chance chance, int day, int session, int effort, bool blanks)
    {
        var (early, begun) = (chance.Below(9) == 0, chance.Below(14) > 0);
        var during = chance.Below(6);
        return new(
            day,
            session == 1 && chance.Below(4) == 0 ? 4 : session,
            begun,
            begun && early,
            early && begun ? chance.Below(11) : 10,
            !begun || (blanks && chance.Below(8) == 0) ? null : Math.Min(10, effort + chance.Below(3)),
            begun && chance.Below(9) > 0 ? 5 * (1 + chance.Below(6)) : null,
            blanks && chance.Below(5) == 0
                ? null
                : PlannedSets - (chance.Below(9) == 0 ? 1 : 0) + (chance.Below(30) == 0 ? 1 : 0),
            !begun || (blanks && chance.Below(6) == 0) ? null : during,
            !begun || (blanks && chance.Below(6) == 0) ? null : Math.Max(0, during - chance.Below(3)),
            chance.Below(60) == 0,
            blanks && chance.Below(60) == 0
        );
    }
}
