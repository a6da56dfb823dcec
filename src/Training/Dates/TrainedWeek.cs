using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>One week of the programme: seven days from its first one.</summary>
/// <param name="IsLighter">Whether it is a planned easy week.</param>
/// <param name="Sessions">Those of the programme that are done in it, in their order.</param>
public sealed record TrainedWeek(int Number, DateOnly FirstDay, bool IsLighter, Series<WeekSession> Sessions)
{
    /// <summary>The sessions of the programme that are done in a week; those that may be chosen instead take no time beside
    /// them.</summary>
    public static TrainedWeek Of(int week, Programme programme, Series<TrainedSession> sessions)
    {
        var done =
            from session in sessions
            where session.InsteadOf is null
            from weeks in session.Weeks
            where weeks.Weeks.Contains(week)
            select new WeekSession(
                session.Number,
                programme.TimesOf(session.Days, week),
                programme.DatesOf(session.Days, week),
                weeks.Total,
                weeks.About
            );
        return new(week, programme.FirstDayOf(week), programme.Lighter.Contains(week), done.ToSeries());
    }
}

/// <param name="Session">Its number, from 1.</param>
/// <param name="Times">How often in this week; null where it goes by how often the client plays.</param>
/// <param name="Dates">The days of the week that are fixed; empty where the client chooses.</param>
/// <param name="Seconds">Once.</param>
public sealed record WeekSession(int Session, int? Times, Series<DateOnly> Dates, Seconds Seconds, bool About);
