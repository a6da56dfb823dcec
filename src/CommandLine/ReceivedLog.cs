using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What came of one log that was received.</summary>
/// <param name="More">Sessions that were known, and of which it says more.</param>
/// <param name="Urgent">What cannot wait, in sentences; of a log that was not taken too.</param>
/// <param name="Written">What was written freely and has no word in it that cannot wait: the coach alone can tell.</param>
/// <param name="Measured">What was measured alone, with the line for readings.csv.</param>
/// <param name="NotCounted">What is kept, and why it does not count.</param>
internal sealed record ReceivedLog(
    OwnedLog Owned,
    int New,
    int More,
    int Known,
    Series<string> Urgent,
    Series<string> Written,
    Series<string> NotCounted,
    Series<string> Measured
)
{
    /// <summary>Days that are named, before it says how many more there are.</summary>
    private const int MostDays = 5;

    /// <summary>Whether all that was sent was read and taken.</summary>
    public bool IsWhole => Owned.Refusals.Count == 0 && Owned.Reading.IsWhole;

    /// <param name="addition">Null where nothing of it is taken.</param>
    public static ReceivedLog Of(OwnedLog owned, LogAddition? addition, DateOnly today)
    {
        var added = owned.Taken.Select(entry => (entry, To: addition?.Add(entry) ?? Addition.Known)).ToArray();
        var fresh = added.Where(a => a.To != Addition.Known).Select(a => a.entry).ToArray();
        var left = owned.Reading.Entries.Except(owned.Taken);
        var who = owned.Owner?.Id.Text ?? owned.Name;
        return new(
            owned,
            added.Count(a => a.To == Addition.New),
            added.Count(a => a.To == Addition.More),
            added.Count(a => a.To == Addition.Known),
            fresh
                .SelectMany(entry => Said(who, entry, owned.Done))
                .Concat(left.SelectMany(entry => Said($"{owned.Name} (not taken)", entry, owned.Done)))
                .Concat(
                    owned
                        .Reading.Remarks.Where(r => r.CannotWait)
                        .Select(r => $"{(owned.Owner is null ? "" : $"{who}, ")}{owned.Name}, {r}.")
                )
                .Distinct()
                .ToSeries(),
            fresh
                .Where(entry => entry.Note.Length > 0 && UrgentSign.InNote(entry, owned.Done) is null)
                .Select(entry => $"{entry.Day.Iso()}: \"{entry.Note.Trim()}\"")
                .ToSeries(),
            owned.Owner is { } owner ? NotCountedOf(fresh, owner, owned.Done, today).ToSeries() : [],
            fresh.SelectMany(SelfTests.In).ToSeries()
        );
    }

    private static IEnumerable<string> Said(string who, LogEntry entry, IEnumerable<ExerciseId> done) =>
        UrgentSign
            .In(entry, done)
            .Select(sign => FormattableString.Invariant($"{who}, {entry.Day.Iso()}, session {entry.Session}: {sign}."));

    private static IEnumerable<string> NotCountedOf(
        IReadOnlyCollection<LogEntry> entries,
        Client client,
        IReadOnlySet<ExerciseId> done,
        DateOnly today
    )
    {
        var programme = client.Programme;
        var outside =
            from entry in entries
            let why = entry.Day > today ? "still to come, so the clock of the device may be set wrong"
            : entry.Day < programme.Start
                ? $"before the programme begins on {programme.Start.Iso()}: it is of another, or the clock of the device is set "
                    + "wrong"
            : entry.Day > programme.End ? $"after the programme ended on {programme.End.Iso()}"
            : entry.Session > programme.AllSessions.Count ? "of a session that the programme does not have"
            : null
            where why is not null
            group entry by why into same
            select $"{ReceivingPractice.Counted(same.Count(), "session", "sessions")} {same.Key} ({Days(same)})";
        var others =
            from entry in entries
            from exercise in entry.Exercises
            where !done.Contains(exercise.Exercise)
            group entry by exercise.Exercise.Text into same
            orderby same.Key
            select $"'{same.Key}' is not in the programme ({Days(same)})";
        return outside.Concat(others);
    }

    private static string Days(IEnumerable<LogEntry> entries)
    {
        var days = entries.Select(e => e.Day.Iso()).Distinct().ToArray();
        return string.Join(", ", days.Take(MostDays)) + (days.Length > MostDays ? ", …" : "");
    }
}
