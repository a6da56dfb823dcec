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
        )
        {
            Pauses = texts.Client.Programme.Calendar.PausesBefore(week.Number).Select(p => Pause(p, week, texts)).ToSeries(),
        };
    }

    /// <summary>A pause that is longer than the client may be away makes the page offer an earlier week: it says so, because the
    /// calendar goes on with the next.</summary>
    private static PlannedPause Pause(Pause pause, TrainedWeek week, Texts texts)
    {
        var (words, calendar) = (texts.Words, texts.Client.Programme.Calendar);
        var isCut = calendar.DaysOf(week.Number).First() < pause.From;
        var isLong = pause.Until.DayNumber - pause.From.DayNumber + 1 > texts.Card.Settings.DaysBackOneWeek;
        (string, object)[] days =
        [
            ("from", words.Date(pause.From)),
            ("until", words.Date(pause.Until)),
            ("week", words.Say("week", ("week", week.Number))),
            ("date", words.Date(week.FirstDay)),
        ];
        var said = new[]
        {
            words.Say("pause-from", days),
            isCut ? words.Say("pause-cut") : "",
            isLong ? words.Say("pause-long") : "",
        };
        return new(PlannedCourse.DaysOf(pause), string.Join(' ', said.Where(s => s.Length > 0)), words.Say("pause-now", days));
    }

    private static string When(WeekSession session, Words words) =>
        session.Dates.Count > 0 ? words.And([.. session.Dates.Select(d => words.Weekday(d.DayOfWeek))])
        : session.Times is { } n ? words.Say("times-this-week", ("n", n))
        : words.Say("before-play");
}
