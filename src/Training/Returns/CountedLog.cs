using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Why an entry is shown and not counted.</summary>
public enum NotCounted
{
    /// <summary>Of another programme, or of somebody else.</summary>
    OtherCourse,

    OutsideProgramme,

    /// <summary>Of a day that is still to come.</summary>
    Future,

    /// <summary>The programme has no session of that number.</summary>
    NoSuchSession,
}

/// <summary>The entries of a log that tell of this programme, and the others.</summary>
/// <param name="Entries">Those that count, in the order of their days.</param>
/// <param name="Others">Those that do not, with the reason.</param>
/// <param name="Until">The last day of which the log tells anything, whether it is one of the programme or later; null where it
/// tells nothing of it.</param>
public sealed record CountedLog(Series<LogEntry> Entries, Series<(LogEntry Entry, NotCounted Why)> Others, DateOnly? Until)
{
    public static CountedLog Of(Client client, Training training, DateOnly today)
    {
        var course = CourseKey.Of(client);
        var lines = LogBook.Joined(client.Log);
        var told = lines.Select(e => (Entry: e, Why: WhyNot(e))).ToArray();
        return new(
            told.Where(t => t.Why is null).Select(t => t.Entry).ToSeries(),
            (from t in told where t.Why is not null select (t.Entry, t.Why ?? default)).ToSeries(),
            lines
                .Where(e => IsOwn(e) && e.Day >= client.Programme.Start && e.Day <= today)
                .Select(e => (DateOnly?)e.Day)
                .DefaultIfEmpty(null)
                .Max()
        );

        bool IsOwn(LogEntry entry) => entry.Course is null || entry.Course == course;

        NotCounted? WhyNot(LogEntry entry) =>
            !IsOwn(entry) ? NotCounted.OtherCourse
            : entry.Day > today ? NotCounted.Future
            : entry.Day < client.Programme.Start || entry.Day > client.Programme.End ? NotCounted.OutsideProgramme
            : entry.Session < 1 || entry.Session > training.Sessions.Count ? NotCounted.NoSuchSession
            : null;
    }

    /// <summary>Those in which some work was done.</summary>
    public IEnumerable<LogEntry> Done => Entries.Where(e => e.IsDone());
}

/// <summary>Whether a session was done.</summary>
internal static class DoneEntries
{
    /// <summary>Whether at least one piece of work was. Where nobody counted them, a session that was begun was done.</summary>
    public static bool IsDone(this LogEntry entry) =>
        entry.Outcome is not LogOutcome.NotToday
        && (
            entry.StepsDone is { } steps
                ? steps >= 1
                : entry.Exercises.Count == 0 || entry.Exercises.Any(e => e.Sets is null or > 0)
        );
}
