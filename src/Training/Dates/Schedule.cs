using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>On which days of a programme a session is done.</summary>
public static class Schedule
{
    /// <summary>The dates of a week, in order; none where the client chooses the day, or it goes by the days of play. Every so
    /// many days counts from the programme's first day, through all of its weeks.</summary>
    public static Series<DateOnly> DatesOf(this Programme programme, SessionDays days, int week)
    {
        var all = Enumerable.Range(0, 7).Select(day => programme.FirstDayOf(week).AddDays(day));
        return days switch
        {
            SessionDays.On on => all.Where(d => on.Weekdays.Contains(d.DayOfWeek)).ToSeries(),
            SessionDays.EveryDays every => all.Where(d => (d.DayNumber - programme.Start.DayNumber) % every.Days == 0).ToSeries(),
            _ => [],
        };
    }

    /// <summary>How often it is done in a week; null where that goes by how often the client plays.</summary>
    public static int? TimesOf(this Programme programme, SessionDays days, int week) =>
        days switch
        {
            SessionDays.TimesAWeek times => times.Times,
            SessionDays.BeforePlay => null,
            _ => programme.DatesOf(days, week).Count,
        };
}
