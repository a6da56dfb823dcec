using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What one motion and side gets in one week.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
/// <param name="Work">Over all sessions of the week that have their number of times.</param>
/// <param name="Sessions">How many of them train it.</param>
/// <param name="Days">On how many days. A session whose day the client chooses counts as a day of its own; at most seven.</param>
/// <param name="BeforePlay">Whether sessions that go by the days of play come on top; they are in none of the figures.</param>
/// <param name="IsLighter">Whether the week is a lighter one.</param>
public sealed record WeekLoad(
    Motion Motion,
    Side? Side,
    int Week,
    WorkMeasures Work,
    int Sessions,
    int Days,
    bool BeforePlay,
    bool IsLighter
);

/// <summary>Uses → load for each motion, side and week.</summary>
internal static class Loads
{
    /// <summary>By motion in the order of the programme, side, and week; a motion has an entry for every week of the programme.
    /// Only the programme's own sessions count: those chosen instead of one are in its place.</summary>
    public static Series<WeekLoad> Of(Programme programme, Series<Use> uses)
    {
        var work = (
            from use in uses
            where use.Session <= programme.Sessions.Count
            from week in use.Weeks
            from side in week.BySide
            select (use, week, side.Side, side.Work)
        ).ToArray();
        return work.GroupBy(w => (w.use.Exercise.Trains, w.Side))
            .OrderBy(g => Array.FindIndex(work, w => w.use.Exercise.Trains == g.Key.Trains))
            .ThenBy(g => g.Key.Side)
            .SelectMany(g =>
                Enumerable
                    .Range(1, programme.Weeks)
                    .Select(week =>
                        InWeek(
                            g.Key.Trains,
                            g.Key.Side,
                            week,
                            [.. g.Where(w => w.week.Week == week).Select(w => (w.use, w.Work))],
                            programme
                        )
                    )
            )
            .ToSeries();
    }

    private static WeekLoad InWeek(Motion motion, Side? side, int week, (Use Use, WorkMeasures Work)[] done, Programme programme)
    {
        var sessions = done.Select(d => d.Use.Session).Distinct().Select(s => programme.Sessions[s - 1].Days).ToArray();
        var total = done.Aggregate(WorkMeasures.None, (sum, d) =>
            sum + (d.Work * (programme.TimesOf(programme.Sessions[d.Use.Session - 1].Days, week) ?? 0))
        );
        var dated = sessions.SelectMany(s => programme.DatesOf(s, week)).Distinct().Count();
        var chosen = sessions.Sum(s => s is SessionDays.TimesAWeek times ? times.Times : 0);
        return new(
            motion,
            side,
            week,
            total,
            sessions.Sum(s => programme.TimesOf(s, week) ?? 0),
            Math.Min(7, dated + chosen),
            sessions.Any(s => s is SessionDays.BeforePlay),
            programme.Lighter.Contains(week)
        );
    }
}
