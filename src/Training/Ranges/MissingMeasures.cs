using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>A motion and side that has no reading at all.</summary>
/// <param name="Ways">How it can be measured: the one that a demand names, or every way there is for what is trained.</param>
/// <param name="Side">Null where the motion has no left and right.</param>
/// <param name="Demand">Where a sport asks for it; null where none does.</param>
/// <param name="IsTrained">Whether the programme works on it.</param>
public sealed record NeverMeasured(Series<Measure> Ways, Side? Side, JudgedDemand? Demand, bool IsTrained)
{
    internal static IEnumerable<NeverMeasured> Of(
        Practice practice,
        Series<PlannedWork> work,
        Series<MeasuredSeries> measured,
        Series<JudgedDemand> demands
    )
    {
        var demanded = demands
            .Where(d => !IsRead([d.Measure], d.Side))
            .DistinctBy(d => (d.Measure.Motion.Name, d.Side))
            .Select(d => new NeverMeasured([d.Measure], d.Side, d, work.Any(w => w.Works(d.Measure, d.Side))))
            .ToArray();
        var trained =
            from worked in work
            let ways = practice.WaysToMeasure(worked.Motion).ToSeries()
            where ways.Count > 0
            where !IsRead(ways, worked.Side)
            where !demanded.Any(d => d.Side == worked.Side && ways.Contains(d.Ways[0]))
            select new NeverMeasured(ways, worked.Side, null, true);
        return demanded.Concat(trained.DistinctBy(t => (t.Ways, t.Side)));

        bool IsRead(Series<Measure> ways, Side? side) =>
            measured.Any(s => s.Key.Side == side && ways.Any(w => w.Motion == s.Key.Motion));
    }
}

/// <summary>Why something ought to be measured again.</summary>
public enum DueWhy
{
    /// <summary>The day or week in which it was to be measured again is over, and nothing was read in it or later.</summary>
    Retest,

    /// <summary>The programme that works on it is over, and nothing was read in its last week or later.</summary>
    ProgrammeOver,

    /// <summary>The latest reading is too old to build on.</summary>
    Old,
}

/// <summary>A series that ought to have a new reading.</summary>
public sealed record DueMeasure(SeriesKey Key, Measure Measure, Occasion Latest, DueWhy Why)
{
    internal static IEnumerable<DueMeasure> Of(
        Programme programme,
        Series<PlannedWork> work,
        Series<MeasuredSeries> measured,
        DateOnly today
    ) =>
        from series in measured
        let latest = series.Latest
        where latest is not null
        let isTrained = work.Any(w => w.Works(series.Measure, series.Key.Side))
        let isMissed = isTrained && programme.Retest is { } retest && today > retest.Until && latest.Last < retest.From
        let isOver = isTrained
            && programme.Retest is null
            && today > programme.End
            && latest.Last < programme.FirstDayOf(programme.Weeks)
        where isMissed || isOver || RangeMark.IsOld(latest.Last, today)
        select new DueMeasure(
            series.Key,
            series.Measure,
            latest,
            isMissed ? DueWhy.Retest
                : isOver ? DueWhy.ProgrammeOver
                : DueWhy.Old
        );
}
