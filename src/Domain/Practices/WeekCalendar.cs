namespace Gradus.Domain;

/// <summary>Where the weeks of a programme lie. A week is seven days on end; one that a pause touches begins anew on the day
/// after it. So the days of the week that were before the pause belong to no seven days, and nothing is planned on them; what
/// is done on them counts for the week that begins anew.</summary>
/// <param name="Start">The first day of the programme.</param>
/// <param name="Pauses">In the order of their days, none touching another.</param>
public sealed record WeekCalendar(DateOnly Start, Series<Pause> Pauses)
{
    private const int Days = 7;

    /// <summary>The first of the seven days.</summary>
    /// <param name="week">From 1; may lie behind the last.</param>
    public DateOnly FirstDayOf(int week)
    {
        var (first, at) = (Start, 0);
        for (var number = 1; ; number++)
        {
            for (; at < Pauses.Count && Pauses[at].From < first.AddDays(Days); at++)
                first = Pauses[at].Until.AddDays(1);
            if (number == week)
                return first;
            first = first.AddDays(Days);
        }
    }

    public DateOnly LastDayOf(int week) => FirstDayOf(week).AddDays(Days - 1);

    /// <summary>The week, from 1, that has that day; the one that begins anew for a day of a pause and for what a pause cuts
    /// off.</summary>
    public int WeekOf(DateOnly day)
    {
        var week = 1;
        while (LastDayOf(week) < day)
            week++;
        return week;
    }

    /// <summary>Every day that counts for a week, in order: its seven days, and those that a pause cut off before them.</summary>
    public IEnumerable<DateOnly> DaysOf(int week)
    {
        var last = LastDayOf(week);
        for (var day = week == 1 ? Start : LastDayOf(week - 1).AddDays(1); day <= last; day = day.AddDays(1))
            if (!Pauses.Any(p => p.Has(day)))
                yield return day;
    }

    /// <summary>The pauses after which a week begins anew; none for most weeks.</summary>
    public Series<Pause> PausesBefore(int week)
    {
        var last = LastDayOf(week);
        return Pauses.Where(p => p.Until < last && (week == 1 || p.From > LastDayOf(week - 1))).ToSeries();
    }
}
