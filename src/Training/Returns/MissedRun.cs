using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Planned sessions one behind the other that no session of the log fills.</summary>
/// <param name="From">The day of the first.</param>
/// <param name="Until">The day of the last.</param>
public sealed record MissedRun(int Sessions, DateOnly From, DateOnly Until)
{
    /// <summary>From so many on the page offers an earlier week, by its own rule.</summary>
    private const int SaidFrom = 3;

    /// <summary>The last such run in the weeks that the log covers; null where there is none. A session whose day the client
    /// chooses is missed when its week is over.</summary>
    public static MissedRun? Last(Client client, Training training, CountedLog log)
    {
        var (runs, run) = (new List<MissedRun>(), new List<DateOnly>());
        var places = training
            .Weeks.Where(w => log.Until > client.Programme.LastDayOf(w.Number))
            .SelectMany(w => PlacesOf(client, training, log, w))
            .OrderBy(p => p.Day);
        foreach (var (day, isDone) in places.Append((DateOnly.MaxValue, true)))
        {
            if (!isDone)
            {
                run.Add(day);
                continue;
            }

            if (run.Count >= SaidFrom)
                runs.Add(new(run.Count, run[0], run[^1]));
            run.Clear();
        }

        return runs.LastOrDefault();
    }

    /// <summary>Of a session on fixed days those that were done on their day fill it first, the others the earliest that is
    /// left.</summary>
    private static IEnumerable<(DateOnly Day, bool IsDone)> PlacesOf(
        Client client,
        Training training,
        CountedLog log,
        TrainedWeek week
    )
    {
        foreach (var session in week.Sessions.Where(s => s.Times is not null))
        {
            var done = log
                .Done.Where(e =>
                    client.Programme.WeekOf(e.Day) == week.Number && ReturnedWeek.WholeOf(training, e) == session.Session
                )
                .Select(e => e.Day)
                .Distinct()
                .ToArray();
            if (session.Dates.Count == 0)
            {
                var times = session.Times ?? 0;
                foreach (var i in Enumerable.Range(0, times))
                    yield return i < done.Length ? (done[i], true) : (client.Programme.LastDayOf(week.Number), false);
                continue;
            }

            var others = done.Count(d => !session.Dates.Contains(d));
            foreach (var date in session.Dates)
                yield return (date, done.Contains(date) || others-- > 0);
        }
    }
}
