namespace Gradus.Domain;

/// <summary>What one client trains: sessions over weeks.</summary>
/// <param name="Start">The first day; where each week lies is said by <see cref="WeekCalendar"/>.</param>
/// <param name="Lighter">Weeks with fewer sets.</param>
/// <param name="Alternates">Sessions that the client may choose on the day.</param>
/// <param name="MoveOn">What must be true before the client goes on from a stage to the next.</param>
/// <param name="Letter">What the client reads first.</param>
/// <param name="LighterAt">Where the lighter weeks are named; the file where there is none.</param>
public sealed record Programme(
    string Title,
    DateOnly Start,
    int Weeks,
    Series<int> Lighter,
    Series<ProgrammeSession> Sessions,
    Series<ProgrammeSession> Alternates,
    Series<StageCheck> MoveOn,
    Prose Letter,
    Location LighterAt,
    Location At
)
{
    /// <summary>When the ranges are measured again; null where nobody has said it.</summary>
    public Retest? Retest { get; init; }

    /// <summary>The shared programme that it comes from; null where it is the client's own.</summary>
    public SharedFrom? From { get; init; }

    /// <summary>When nothing is done, in the order of the days, none overlapping another; each comes after the first day, and
    /// before the last.</summary>
    public Series<Pause> Pauses { get; init; } = [];

    /// <summary>Every session there is a page for, in the order of their numbers: the coach's own, those that the client may
    /// choose instead, and the short version of each whose uses are marked to be kept.</summary>
    public Series<ProgrammeSession> AllSessions =>
        Sessions.Concat(Alternates).Concat(Sessions.Select(s => s.Shortened).OfType<ProgrammeSession>()).ToSeries();

    /// <summary>The last day of the last week.</summary>
    public DateOnly End => LastDayOf(Weeks);

    /// <summary>The weeks from which something else holds in a use, in rising order. A line that is named for a lighter week is
    /// that week's alone, and none of them.</summary>
    public IEnumerable<int> EntriesOf(ProgrammeUse use) =>
        use.ByWeek.Select(l => l.Week).Where(w => !Lighter.Contains(w)).Concat(use.Versions.Select(v => v.Week)).Order();

    /// <summary>Where the weeks lie.</summary>
    public WeekCalendar Calendar => new(Start, Pauses);

    public DateOnly FirstDayOf(int week) => Calendar.FirstDayOf(week);

    /// <summary>The week, from 1, that has that day; more than there are for a day behind the last.</summary>
    /// <param name="day">Not before the first day.</param>
    public int WeekOf(DateOnly day) => Calendar.WeekOf(day);

    public DateOnly LastDayOf(int week) => Calendar.LastDayOf(week);
}

/// <summary>When ranges are measured again: a day, or a week of the programme.</summary>
/// <param name="From">The first day.</param>
/// <param name="Until">The last day.</param>
public sealed record Retest(DateOnly From, DateOnly Until);

public sealed record StageCheck(Stage Stage, Series<string> Conditions);

/// <param name="Do">Every use in order, those inside rounds too.</param>
/// <param name="InsteadOf">The name of the session that the client may do this one instead of; null for a session of its
/// own.</param>
/// <param name="Kind">Why there is an alternative; null for a session of its own.</param>
public sealed record ProgrammeSession(
    string Name,
    SessionDays Days,
    Series<ProgrammeUse> Do,
    Mention<string>? InsteadOf,
    AlternateKind? Kind,
    Location At
)
{
    /// <summary>Whether it is nothing but the kept uses of another session.</summary>
    public bool IsShortened { get; private init; }

    /// <summary>What of another session it is; null where it is written by itself.</summary>
    public TakenSession? Taken { get; init; }

    /// <summary>What is left of it on a day with little time; null where no use is marked to be kept, or every one is.</summary>
    public ProgrammeSession? Shortened =>
        Do.Any(u => u.KeepWhenShort) && !Do.All(u => u.KeepWhenShort)
            ? this with
            {
                Do = Do.Where(u => u.KeepWhenShort).ToSeries(),
                InsteadOf = new(Name, At),
                Kind = AlternateKind.Short,
                IsShortened = true,
            }
            : null;
}

/// <summary>Uses of another session, whose doses, sides and weeks they have, with a share of the sets.</summary>
/// <param name="Of">The name of that session.</param>
/// <param name="Share">Per cent of the sets and of the rounds, 1 to 100; at least one of each is left.</param>
public sealed record TakenSession(string Of, int Share)
{
    /// <summary>The same use, with fewer rounds where it is done in rounds.</summary>
    public ProgrammeUse From(ProgrammeUse use) =>
        use.Rounds is { } rounds ? use with { Rounds = rounds with { Times = LighterDose.Fewer(rounds.Times, Share) } } : use;

    /// <summary>A set that one side has more falls away, as in a lighter week.</summary>
    public SettledDose From(SettledDose dose) => Share == 100 ? dose : LighterDose.FewerSets(dose, Share);
}

public enum AlternateKind
{
    Short,
    Travel,
    Flare,
}

/// <summary>Uses done by turns, one set of each use a round.</summary>
/// <param name="Times">1 to 100.</param>
/// <param name="Rest">Between rounds.</param>
/// <param name="Change">Between the uses of a round.</param>
public sealed record Rounds(int Times, Seconds? Rest, Seconds? Change, Location At);

/// <summary>From a week on, until another week is named, the easier or the harder version instead.</summary>
public sealed record WeekVersion(int Week, ExerciseVersion Version, Location At);

public enum ExerciseVersion
{
    Easier,
    Harder,
}

/// <summary>One exercise in a session, as the coach wrote it.</summary>
/// <param name="Side">Replaces the side term of the exercise's dose; null keeps it.</param>
/// <param name="Versions">Weeks from which another version of the exercise is done.</param>
/// <param name="Rounds">The rounds it belongs to; the same for all of their uses. Null where it is done by itself.</param>
/// <param name="ByWeek">In the order of the weeks; empty where the dose grows evenly.</param>
public sealed record ProgrammeUse(
    Mention<ExerciseId> Exercise,
    Mention<SideTerm>? Side,
    Series<WeekLine> ByWeek,
    int? FromWeek,
    int? UntilWeek,
    Series<WeekVersion> Versions,
    Rounds? Rounds,
    Series<string> MoveOn,
    bool KeepWhenShort
)
{
    /// <summary>What a difference calls it: its exercise, where it has no name of its own.</summary>
    public string Name
    {
        get => field ?? Exercise.Value.Text;
        init;
    }
}

/// <summary>What holds in a use from which week on; each in the order of the weeks.</summary>
public sealed record UseWeeks(Series<WeekLine> Lines, Series<WeekVersion> Versions)
{
    public static readonly UseWeeks None = new([], []);
}

/// <summary>The dose from one week on, until another week is named.</summary>
public sealed record WeekLine(int Week, WrittenDose Dose);

/// <summary>When a session is done.</summary>
public abstract record SessionDays
{
    private SessionDays() { }

    public sealed record On(Series<DayOfWeek> Weekdays) : SessionDays;

    public sealed record EveryDays(int Days) : SessionDays;

    /// <summary>So many times a week, on days that the client chooses.</summary>
    /// <param name="DayBetween">Whether at least a day stands between two of them.</param>
    public sealed record TimesAWeek(int Times, bool DayBetween) : SessionDays;

    public sealed record BeforePlay : SessionDays;
}
