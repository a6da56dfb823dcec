using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing.Sources;

/// <summary>What each motion and side gets in each week by the measures in which doses grow. What goes by the days of play is in
/// none of them: nobody knows how often it is done.</summary>
internal static class WeekTotals
{
    public static IEnumerable<WeekTotal> Of(Practice practice, Client client, Training training)
    {
        var (programme, settings) = (client.Programme, practice.Card.Settings.Dose);
        var parts = (
            from use in training.Uses
            where use.Session <= programme.Sessions.Count
            let times = TimesAWeek(programme, use)
            where times is not null
            from week in use.Weeks
            let work = SideWork.Of(week.Dose, settings)
            from side in SidesOf(week.Dose.Sides)
            select (use, week.Week, side, Part: new TotalPart(use, week, work, times.Value))
        ).ToArray();
        return parts
            .GroupBy(p => (p.use.Exercise.Trains, p.side))
            .Select(g => new WeekTotal(
                g.Key.Trains,
                g.Key.side,
                Enumerable
                    .Range(1, programme.Weeks)
                    .Select(week => new TotalWeek(
                        week,
                        programme.Lighter.Contains(week),
                        g.Where(p => p.Week == week).Select(p => p.Part).ToSeries()
                    ))
                    .ToSeries()
            ));
    }

    public static string Words(this SideMeasure measure) =>
        measure switch
        {
            SideMeasure.Stretch => "stretch seconds",
            SideMeasure.Effort => "effort-weighted seconds",
            SideMeasure.Contraction => "contraction seconds",
            SideMeasure.Tension => "seconds of moves",
            SideMeasure.Metres => "metres",
            _ => throw new ArgumentOutOfRangeException(nameof(measure)),
        };

    private static IEnumerable<Side?> SidesOf(WorkedSides sides) =>
        sides.Order == SideOrder.None ? [null] : sides.All.Select(s => (Side?)s);

    /// <summary>A session every so many days comes as often in one week as in another, on the average: that four times follow
    /// three is no growth. Null where it goes by the days of play.</summary>
    private static decimal? TimesAWeek(Programme programme, Use use) =>
        programme.Sessions[use.Session - 1].Days switch
        {
            SessionDays.EveryDays every => 7m / every.Days,
            var days => programme.TimesOf(days, 1),
        };
}

internal sealed record WeekTotal(Motion Motion, Side? Side, Series<TotalWeek> Weeks);

/// <param name="Uses">One for each use that is done.</param>
internal sealed record TotalWeek(int Week, bool IsLighter, Series<TotalPart> Uses);

/// <param name="Work">In one session.</param>
/// <param name="Times">So often a week.</param>
internal sealed record TotalPart(Use Use, WeekDose Week, SideWork Work, decimal Times)
{
    public decimal Of(SideMeasure measure) =>
        Times * Work.Measures.First(m => m.Measure == measure).Amount / (measure == SideMeasure.Effort ? SideWork.EffortUnit : 1);
}
