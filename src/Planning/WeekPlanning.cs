using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>The sessions of a programme → what each week holds.</summary>
internal static class WeekPlanning
{
    /// <summary>The sessions of the programme that are done in a week; those that may be chosen instead take no time beside
    /// them.</summary>
    public static PlannedWeek Of(int week, Programme programme, Series<PlannedSession> sessions, Words words)
    {
        var done =
            from session in sessions
            where session.InsteadOf is null
            let days = programme.Sessions[session.Number - 1].Days
            from weeks in session.Weeks
            where weeks.Weeks.Contains(week)
            let dates = programme.DatesOf(days, week)
            let times = programme.TimesOf(days, week)
            select new PlannedWeekSession(
                session.Number,
                session.Name,
                times,
                dates,
                When(times, dates, words),
                weeks.Total,
                weeks.About
            );
        var first = programme.FirstDayOf(week);
        return new(
            week,
            first,
            words.Say("week-from", ("week", words.Say("week", ("week", week))), ("date", words.Date(first))),
            done.ToSeries()
        );
    }

    private static string When(int? times, Series<DateOnly> dates, Words words) =>
        dates.Count > 0 ? words.And([.. dates.Select(d => words.Weekday(d.DayOfWeek))])
        : times is { } n ? words.Say("times-this-week", ("n", n))
        : words.Say("before-play");
}
