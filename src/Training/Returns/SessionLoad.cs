using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What one session cost: effort × minutes (Foster 1998, Med Sci Sports Exerc 30:1164-8; abstract seen).</summary>
/// <param name="Load">Null where the effort, or the time of the plan too, is not known; an effort of 0 gives 0.</param>
/// <param name="Minutes">Null where neither the log nor the plan says any.</param>
/// <param name="IsPlannedTime">Whether the minutes are the plan's, because the log says none.</param>
public sealed record SessionLoad(LogEntry Entry, decimal? Load, decimal? Minutes, bool IsPlannedTime)
{
    public static IEnumerable<SessionLoad> Of(Training training, CountedLog log) =>
        log.Done.Select(entry =>
        {
            var minutes = entry.Minutes ?? MinutesOf(training, entry);
            return new SessionLoad(entry, entry.Effort * minutes, minutes, entry.Minutes is null && minutes is not null);
        });

    /// <summary>The plan's minutes for that session in the week that the page offered.</summary>
    private static decimal? MinutesOf(Training training, LogEntry entry) =>
        training.Sessions[entry.Session - 1].Weeks.FirstOrDefault(w => w.Weeks.Contains(entry.Week)) is { } timed
            ? timed.Total.Value / 60m
            : null;
}

/// <summary>Why nothing is said of how alike the days of a week are.</summary>
public enum NoMonotony
{
    /// <summary>The log does not cover the week, so a day without an entry need not be one without training.</summary>
    NotCovered,

    /// <summary>A session has no load, so the week has at least what is counted.</summary>
    AtLeast,

    /// <summary>Fewer than four days with a session: with n equal sessions monotony is √(6n/(7(7 − n))), whatever was done
    /// (computed), so it would only count days.</summary>
    FewDays,

    /// <summary>Every day has the same load.</summary>
    EveryDayAlike,
}

/// <summary>The load of one week of the programme.</summary>
/// <param name="Sessions">Those done in it.</param>
/// <param name="Days">Seven, from the first day of the week; a day without a session has 0.</param>
/// <param name="Monotony">Null where nothing may be said, for the reason in <paramref name="Why"/>.</param>
/// <param name="Strain">The week's load × monotony.</param>
/// <param name="Why">Null where there are figures.</param>
public sealed record LoadedWeek(
    int Number,
    Series<SessionLoad> Sessions,
    Series<decimal> Days,
    decimal? Monotony,
    decimal? Strain,
    NoMonotony? Why
)
{
    private const int FewestDays = 4;

    public decimal Total => Days.Sum();

    /// <summary>Whether it may have been more.</summary>
    public bool IsAtLeast => Why is NoMonotony.AtLeast or NoMonotony.NotCovered;

    /// <summary>Each week in which a session was done, or that the log covers. Monotony is of seven days on end: what was done in
    /// a pause, or in what it cuts off, is in none.</summary>
    public static IEnumerable<LoadedWeek> Of(Client client, Training training, CountedLog log, Series<SessionLoad> sessions) =>
        from week in training.Weeks
        let last = client.Programme.LastDayOf(week.Number)
        let own = sessions.Where(s => week.FirstDay <= s.Entry.Day && s.Entry.Day <= last).ToArray()
        let isCovered = log.Until > last
        where isCovered || own.Length > 0
        select Of(week, own, isCovered);

    private static LoadedWeek Of(TrainedWeek week, SessionLoad[] own, bool isCovered)
    {
        var days = Enumerable
            .Range(0, 7)
            .Select(day => own.Where(s => s.Entry.Day == week.FirstDay.AddDays(day)).Sum(s => s.Load ?? 0))
            .ToSeries();
        var all = own.ToSeries();
        var trained = own.Select(s => s.Entry.Day).Distinct().Count();
        return own.Any(s => s.Load is null) ? new(week.Number, all, days, null, null, NoMonotony.AtLeast)
            : !isCovered ? new(week.Number, all, days, null, null, NoMonotony.NotCovered)
            : trained < FewestDays ? new(week.Number, all, days, null, null, NoMonotony.FewDays)
            : MonotonyOf(days) is { } monotony ? new(week.Number, all, days, monotony, days.Sum() * monotony, null)
            : new(week.Number, all, days, null, null, NoMonotony.EveryDayAlike);
    }

    /// <summary>The mean of the days by their standard deviation with n − 1, which the text does not say and common use has; null
    /// where every day is alike. To five decimals.</summary>
    public static decimal? MonotonyOf(Series<decimal> days)
    {
        var mean = days.Sum() / days.Count;
        var deviation = Roots.Of(days.Sum(d => (d - mean) * (d - mean)) / (days.Count - 1));
        return deviation == 0 ? null : mean / deviation;
    }
}
