namespace Gradus.Domain;

/// <summary>Several tellings of the same sessions, put together.</summary>
public static class LogBook
{
    /// <summary>Each session once, in the order of the days; those of one day in the order in which they were first told. What
    /// was told last counts, and what was left blank then stays as it was told before: a line that says nothing of an alarm takes
    /// none back.</summary>
    public static Series<LogEntry> Joined(IEnumerable<LogEntry> told)
    {
        var places = new Dictionary<object, int>();
        var joined = new List<LogEntry>();
        foreach (var entry in told)
        {
            if (places.TryAdd(entry.Identity, joined.Count))
                joined.Add(entry);
            else
                joined[places[entry.Identity]] = joined[places[entry.Identity]].With(entry);
        }

        return joined.OrderBy(e => e.Day).ToSeries();
    }

    /// <summary>Equal for those that tell of the same session.</summary>
    public static object KeyOf(LogEntry entry) => entry.Identity;

    /// <summary>Whether nothing is said by the other that is not said here; what is left blank there is not said.</summary>
    public static bool Tells(this LogEntry entry, LogEntry other) => entry.With(other) == entry;

    /// <summary>The same session with what the other says of it; what the other does not say stays as it is.</summary>
    public static LogEntry With(this LogEntry entry, LogEntry other) =>
        entry with
        {
            Kind = other.Kind ?? entry.Kind,
            Course = other.Course ?? entry.Course,
            Outcome = With(entry.Outcome, other.Outcome),
            StepsDone = other.StepsDone ?? entry.StepsDone,
            StepsPlanned = other.StepsPlanned ?? entry.StepsPlanned,
            Minutes = other.Minutes ?? entry.Minutes,
            Effort = other.Effort ?? entry.Effort,
            Before = With(entry.Before, other.Before),
            During = With(entry.During, other.During),
            Morning = With(entry.Morning, other.Morning),
            Worse = other.Worse ?? entry.Worse,
            Alarm = other.Alarm ?? entry.Alarm,
            Exercises = With(entry.Exercises, other.Exercises),
            Note = other.Note.Length > 0 ? other.Note : entry.Note,
        };

    private static LogOutcome With(LogOutcome outcome, LogOutcome other) =>
        (outcome, other) switch
        {
            (LogOutcome.EndedEarly { For: { } why }, LogOutcome.EndedEarly { For: null }) => new LogOutcome.EndedEarly(why),
            (LogOutcome.NotToday { For: { } why }, LogOutcome.NotToday { For: null }) => new LogOutcome.NotToday(why),
            _ => other,
        };

    /// <summary>A number without a place belongs to the place that was told with the same number.</summary>
    private static LoggedPain? With(LoggedPain? pain, LoggedPain? other) =>
        pain is null || other is null ? other ?? pain
        : other.Where is null && (other.Level is null || other.Level == pain.Level) ? pain
        : other.Level is null && other.Where == pain.Where && other.Side == pain.Side ? pain
        : other;

    /// <summary>The n-th line of an exercise and side is the n-th again; a line that says no side may stand for that of a
    /// side.</summary>
    private static Series<LoggedExercise> With(Series<LoggedExercise> lines, Series<LoggedExercise> others)
    {
        var all = lines.ToList();
        var open = Enumerable.Range(0, all.Count).ToList();
        foreach (var other in others)
        {
            var same = open.FindIndex(i => all[i].Exercise == other.Exercise && all[i].Side == other.Side);
            if (same < 0 && other.Side is null && all.Any(l => IsSaid(l, other)))
                continue;
            if (same < 0)
            {
                all.Add(other);
                continue;
            }

            all[open[same]] = With(all[open[same]], other);
            open.RemoveAt(same);
        }

        return all.ToSeries();
    }

    private static bool IsSaid(LoggedExercise line, LoggedExercise other) =>
        line.Exercise == other.Exercise && With(line, other) == line;

    private static LoggedExercise With(LoggedExercise line, LoggedExercise other) =>
        line with
        {
            Sets = other.Sets ?? line.Sets,
            Repetitions = other.Repetitions ?? line.Repetitions,
            Load = other.Load.Length > 0 ? other.Load : line.Load,
            Pain = With(line.Pain, other.Pain),
            IsStopped = other.IsStopped || line.IsStopped,
            For = other.For ?? line.For,
            Measured = other.Measured.Count > 0 ? other.Measured : line.Measured,
        };
}
