using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What only several entries of one place tell together: pain that rises, that comes back above the ease-off, and that
/// lasts. As of the last entry that counts.</summary>
public static class PainTrend
{
    /// <summary>Points of the median (Farrar 2001, Pain 94:149-58, seen: for less pain; for more: common practice, no
    /// source).</summary>
    private const int Rise = 2;

    private const int WeeksBack = 2;
    private const int ValuesNeeded = 2;
    private const int Window = 14;
    private const int EntriesNeeded = 6;
    private const int EasesNeeded = 2;

    /// <summary>Three windows one behind the other: six weeks (common practice, no source).</summary>
    private const int WindowsToClinician = 3;

    /// <param name="log">Those that count.</param>
    public static IEnumerable<ReturnedPain> Of(Programme programme, Series<LogEntry> log, DayRules rules)
    {
        if (log.LastOrDefault() is not { } last)
            yield break;
        foreach (var place in PlacesOf(log))
        {
            if (RiseAt(programme, log, place, last) is { } median)
                yield return new(PainKind.Rising, place, LatestAt(log, place), median, [], PainStep.First);
            var eases = EasesAt(log, place, last.Day, rules).ToArray();
            if (eases.Length >= EasesNeeded)
                yield return new(PainKind.AboveEase, place, eases[^1], eases.Max(e => HighestAt(e, place)), [], PainStep.First);
            var lasting = Enumerable
                .Range(0, WindowsToClinician)
                .TakeWhile(i => Lasts(log, place, last.Day.AddDays(-Window * i)))
                .Count();
            if (lasting > 0)
                yield return new(
                    PainKind.Lasting,
                    place,
                    LatestAt(log, place),
                    log.Select(e => HighestAt(e, place)).Max(),
                    [],
                    lasting == WindowsToClinician ? PainStep.Clinician : PainStep.First
                );
        }
    }

    /// <summary>Of each place that some entry names, a side that was never said left out where one was.</summary>
    private static PainPlace[] PlacesOf(Series<LogEntry> log)
    {
        var all = log.SelectMany(e => EntryPains.PlacesOf(e)).Distinct().ToArray();
        return [.. all.Where(p => p.Side is not null || !all.Any(o => o != p && o.Meets(p)))];
    }

    /// <summary>The median of the mornings of the last week, where it is at least two points above that of two weeks before, each
    /// of two values or more; one-point changes are never called worse.</summary>
    private static int? RiseAt(Programme programme, Series<LogEntry> log, PainPlace place, LogEntry last)
    {
        var week = programme.WeekOf(last.Day);
        var (now, before) = (MorningsIn(week), MorningsIn(week - WeeksBack));
        return now.Length >= ValuesNeeded && before.Length >= ValuesNeeded && Medians.Of(now) - Medians.Of(before) >= Rise
            ? (int)Math.Round(Medians.Of(now), MidpointRounding.AwayFromZero)
            : null;

        decimal[] MorningsIn(int number) =>
            [
                .. log.Where(e => programme.WeekOf(e.Day) == number)
                    .Select(e => EntryPains.LevelAt(e, e.Morning, place))
                    .OfType<int>()
                    .Select(level => (decimal)level),
            ];
    }

    /// <summary>The sessions above the ease-off in the window that ends on that day, without those of which an entry tells by
    /// itself.</summary>
    private static IEnumerable<LogEntry> EasesAt(Series<LogEntry> log, PainPlace place, DateOnly until, DayRules rules) =>
        log.Where(e => e.Day <= until && e.Day > until.AddDays(-Window))
            .Where(e => HighestAt(e, place) > rules.EaseOffAbove && EntryPains.Of(e, rules).All(p => !p.Place.Meets(place)));

    /// <param name="until">The last day of the window.</param>
    private static bool Lasts(Series<LogEntry> log, PainPlace place, DateOnly until)
    {
        var asked = log.Where(e => e.Day <= until && e.Day > until.AddDays(-Window) && SaysPain(e)).ToArray();
        return asked.Length >= EntriesNeeded && 3 * asked.Count(e => HighestAt(e, place) > 0) >= 2 * asked.Length;
    }

    /// <summary>Whether anything was answered about pain: blank is never no.</summary>
    internal static bool SaysPain(LogEntry entry) => entry.Pains().Any(p => p.Level is not null);

    internal static int? HighestAt(LogEntry entry, PainPlace place) =>
        new[]
        {
            EntryPains.LevelAt(entry, entry.Before, place),
            EntryPains.DuringAt(entry, place),
            EntryPains.LevelAt(entry, entry.Morning, place),
        }.Max();

    private static LogEntry LatestAt(Series<LogEntry> log, PainPlace place) => log.Last(e => HighestAt(e, place) is not null);
}

/// <summary>How it was, where nothing is wrong: "pain 0-2, not worse on the morning after in 5 of 6 sessions; one not
/// said".</summary>
/// <param name="Lowest">Of the worst of each session that said one; null where none did.</param>
/// <param name="Quiet">Sessions with nothing wrong, of which something was said of the morning after: no pain, or that it was not
/// worse. The pages ask for a level only where it was.</param>
/// <param name="NotSaid">Sessions without a word on the morning after.</param>
public sealed record QuietPain(int? Lowest, int? Highest, int Quiet, int NotSaid, int Sessions)
{
    /// <param name="wrong">What was found in single entries.</param>
    public static QuietPain Of(CountedLog log, Series<ReturnedPain> wrong)
    {
        var done = log.Done.ToArray();
        var quiet = done.Where(e => wrong.All(w => w.Entry != e)).ToArray();
        var worst = quiet.Select(e => e.Pains().Max(p => p.Level)).OfType<int>().ToArray();
        return new(
            worst.Length == 0 ? null : worst.Min(),
            worst.Length == 0 ? null : worst.Max(),
            quiet.Count(IsMorningSaid),
            done.Count(e => !IsMorningSaid(e)),
            done.Length
        );
    }

    private static bool IsMorningSaid(LogEntry entry) => entry.Morning?.Level is not null || entry.Worse is not null;
}
