namespace Gradus.Domain;

/// <summary>What a client noted of one session, or of a day on which the pages were opened and none was done. Blank is never 0
/// and never no: what was not said is null.</summary>
/// <param name="Start">When the session began, by the device's own clock; null in logs that do not say it.</param>
/// <param name="Session">From 1, as in the edition.</param>
/// <param name="Week">From 1, the week that the page offered.</param>
/// <param name="Kind">Which alternate session it was; null for a session of the programme's own.</param>
/// <param name="Course">The key of the programme and its client, 16 hexadecimal digits; null in logs that do not say it.</param>
/// <param name="Edition">The edition of the pages as they name it; null where nobody knows.</param>
/// <param name="StepsDone">Pieces of work that were done.</param>
/// <param name="StepsPlanned">Pieces of work that the session had.</param>
/// <param name="Minutes">From start to end, pauses of more than 5 min taken out.</param>
/// <param name="Effort">0 to 10.</param>
/// <param name="Before">Pain before it.</param>
/// <param name="During">The worst pain while it was done.</param>
/// <param name="Morning">Pain on the morning after.</param>
/// <param name="Worse">Whether it was worse than usual on the morning after.</param>
/// <param name="Alarm">The sign that cannot wait for which it was stopped, or not begun.</param>
/// <param name="Exercises">A line for each exercise and side, in the order of the session; empty where only the session was
/// noted.</param>
/// <param name="Note">In the client's own words; read by nobody but the coach.</param>
public sealed record LogEntry(
    DateOnly Day,
    TimeOnly? Start,
    int Session,
    int Week,
    AlternateKind? Kind,
    string? Course,
    string? Edition,
    LogOutcome Outcome,
    int? StepsDone,
    int? StepsPlanned,
    decimal? Minutes,
    int? Effort,
    LoggedPain? Before,
    LoggedPain? During,
    LoggedPain? Morning,
    bool? Worse,
    RedFlag? Alarm,
    Series<LoggedExercise> Exercises,
    string Note,
    Location At
)
{
    /// <summary>Whether both tell of the same session: two of one number on a day differ in when they began.</summary>
    public bool IsSameAs(LogEntry other) => Identity == other.Identity;

    internal (DateOnly, TimeOnly?, int, string?, bool) Identity => (Day, Start, Session, Edition, Outcome is LogOutcome.NotToday);
}

/// <summary>What came of a session.</summary>
public abstract record LogOutcome
{
    private LogOutcome() { }

    public sealed record Done : LogOutcome;

    /// <summary>Ended before its last step, or with next to nothing done.</summary>
    /// <param name="For">Null where nobody said why.</param>
    public sealed record EndedEarly(StopReason? For) : LogOutcome;

    /// <summary>Not begun.</summary>
    public sealed record NotToday(NotTodayReason? For) : LogOutcome;
}

/// <summary>Why an exercise or a session was stopped.</summary>
public enum StopReason
{
    Sharp,
    Dull,
    Numb,
    GivingWay,

    /// <summary>Something snapped or tore.</summary>
    Snap,

    /// <summary>A joint or a calf is hot, swollen or tender.</summary>
    Swollen,

    /// <summary>The leg or arm does not bear weight.</summary>
    NoWeight,
    Tired,
    Time,
}

public enum NotTodayReason
{
    Ill,
    Pain,

    /// <summary>A new medicine or diagnosis, or a fall.</summary>
    Health,
    Time,
    Other,
}

/// <summary>A sign that cannot wait.</summary>
public enum RedFlag
{
    Chest,
    Breath,
    Faint,
    Weakness,
    Speech,
    Sight,
    Headache,
    Saddle,

    /// <summary>A word that is not known here: as bad as any of them, until somebody has asked.</summary>
    Other,
}

/// <param name="Level">0 to 10; null where only the place was said.</param>
/// <param name="Where">Null where nobody said where, or the place is not known here.</param>
/// <param name="Side">Null where the region has no sides, both hurt, or nobody said which.</param>
public sealed record LoggedPain(int? Level, Region? Where, Side? Side);

/// <summary>One exercise of a session on one side, as it was done.</summary>
/// <param name="Side">Null where both sides work together, or the log does not say.</param>
/// <param name="Sets">Whole sets done.</param>
/// <param name="Repetitions">Of a set.</param>
/// <param name="Load">As the client wrote it.</param>
/// <param name="Pain">Where it hurt when it was stopped.</param>
/// <param name="IsStopped">Whether it was ended early.</param>
/// <param name="For">Null where nobody said why.</param>
/// <param name="Measured">What a self-test gave, in the unit of its measure; empty where nothing was measured.</param>
public sealed record LoggedExercise(
    ExerciseId Exercise,
    Side? Side,
    int? Sets,
    int? Repetitions,
    string Load,
    LoggedPain? Pain,
    bool IsStopped,
    StopReason? For,
    Series<decimal> Measured
);
