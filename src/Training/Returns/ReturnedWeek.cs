using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>One week of the programme that the log covers: what was planned and what was done.</summary>
/// <param name="Planned">How many sessions; null where the log does not say of which edition it tells. Those before play are
/// never planned.</param>
/// <param name="Counted">The sessions that fill a place of the plan, each place once.</param>
/// <param name="Extra">How many were done beyond it.</param>
/// <param name="BeforePlay">How many went by the days of play.</param>
public sealed record ReturnedWeek(int Number, int? Planned, Series<LogEntry> Counted, int Extra, int BeforePlay)
{
    public int Done => Counted.Count;

    /// <summary>Whether fewer than half of those planned were done.</summary>
    public bool IsBelowHalf => Planned is { } planned && 2 * Done < planned;

    /// <summary>Those that were ended before their last step.</summary>
    public IEnumerable<LogEntry> EndedEarly => Counted.Where(e => e.Outcome is LogOutcome.EndedEarly);

    /// <summary>The weeks that end before the last day of which the log tells. No log is not "not done": of others nothing is
    /// said.</summary>
    public static IEnumerable<ReturnedWeek> Of(Client client, Training training, CountedLog log) =>
        from week in training.Weeks
        where log.Until > client.Programme.LastDayOf(week.Number)
        select Of(training, week, [.. log.Done.Where(e => client.Programme.WeekOf(e.Day) == week.Number)]);

    private static ReturnedWeek Of(Training training, TrainedWeek week, LogEntry[] done)
    {
        var counted = new List<LogEntry>();
        var (extra, beforePlay) = (0, 0);
        foreach (var of in done.GroupBy(e => WholeOf(training, e)))
        {
            var planned = week.Sessions.FirstOrDefault(s => s.Session == of.Key);
            if (IsBeforePlay(training, of.Key))
            {
                beforePlay += of.Count();
                continue;
            }

            // Two of one number on a day are both kept, and count once: the one of which more was done.
            var places = of.GroupBy(e => e.Day)
                .Select(day => day.MaxBy(Share) ?? day.First())
                .Take(planned?.Times ?? 0)
                .ToArray();
            counted.AddRange(places);
            extra += of.Count() - places.Length;
        }

        return new(
            week.Number,
            done.Any(e => e.Edition is null) ? null : week.Sessions.Sum(s => s.Times ?? 0),
            counted.OrderBy(e => e.Day).ToSeries(),
            extra,
            beforePlay
        );
    }

    /// <summary>The number of the session of the programme that it is, or stands in for.</summary>
    internal static int WholeOf(Training training, LogEntry entry) =>
        training.Sessions[entry.Session - 1].InsteadOf ?? entry.Session;

    private static bool IsBeforePlay(Training training, int session) =>
        training.Sessions[session - 1].Days is SessionDays.BeforePlay;

    /// <summary>Of its pieces of work; one where nobody counted them.</summary>
    private static decimal Share(LogEntry entry) =>
        entry is { StepsDone: { } steps, StepsPlanned: > 0 and { } of } ? (decimal)steps / of : 1;
}

/// <summary>The longest time without a session.</summary>
/// <param name="Days">From one session to the next.</param>
/// <param name="Week">The week that the page offered after it.</param>
public sealed record TrainingGap(DateOnly From, DateOnly Until, int Days, int Week)
{
    /// <summary>Null where fewer than two sessions were done; of several equal ones the first.</summary>
    public static TrainingGap? Longest(CountedLog log)
    {
        var done = log.Done.ToArray();
        return done.Zip(done.Skip(1))
            .Select(p => new TrainingGap(
                p.First.Day,
                p.Second.Day,
                p.Second.Day.DayNumber - p.First.Day.DayNumber,
                p.Second.Week
            ))
            .MaxBy(g => g.Days);
    }
}
