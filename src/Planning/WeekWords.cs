using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What each week holds, in words.</summary>
internal static class WeekWords
{
    public static PlannedWeek Of(TrainedWeek week, Texts texts)
    {
        var words = texts.Words;
        return new(
            week.Number,
            week.FirstDay,
            words.Say(
                week.IsLighter ? "lighter-week-from" : "week-from",
                ("week", words.Say("week", ("week", week.Number))),
                ("date", words.Date(week.FirstDay))
            ),
            week.Sessions.Select(s => new PlannedWeekSession(
                    s.Session,
                    texts.Session(s.Session).Name,
                    s.Times,
                    s.Dates,
                    When(s, words),
                    s.Seconds,
                    s.About
                ))
                .ToSeries()
        );
    }

    private static string When(WeekSession session, Words words) =>
        session.Dates.Count > 0 ? words.And([.. session.Dates.Select(d => words.Weekday(d.DayOfWeek))])
        : session.Times is { } n ? words.Say("times-this-week", ("n", n))
        : words.Say("before-play");
}
