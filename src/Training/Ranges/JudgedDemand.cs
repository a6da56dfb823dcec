using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Why a demand is compared with nothing.</summary>
public enum DemandOpen
{
    /// <summary>There is no reading of that motion, side and mode.</summary>
    NotMeasured,

    /// <summary>The latest reading is too old.</summary>
    Old,

    /// <summary>The sport does not say whose reading counts, active or passive.</summary>
    ModeNotWritten,

    /// <summary>Nobody has written down how the motion is measured.</summary>
    MethodNotWritten,
}

/// <summary>A demand of one of the client's sports on one side of the client's own body.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
/// <param name="Key">The series that counts; null where there is none.</param>
/// <param name="Mark">The latest occasion of it beside the demand; null where there is none. Where the demand is open it is shown
/// at most.</param>
/// <param name="Open">Null where it is judged, or its two numbers stand side by side.</param>
public sealed record JudgedDemand(
    SportId Sport,
    Demand Demand,
    Measure Measure,
    Side? Side,
    SeriesKey? Key,
    RangeMark? Mark,
    DemandOpen? Open
)
{
    /// <summary>Whether the range is short of it, beyond the error.</summary>
    public bool IsShort => Open is null && Mark?.Word == MarkWord.Short;

    /// <summary>The same before anything was measured: what is asked of whom.</summary>
    public static Series<JudgedDemand> Of(Practice practice, Training training) =>
        Of(practice, training, [], DateOnly.MaxValue).ToSeries();

    internal static IEnumerable<JudgedDemand> Of(
        Practice practice,
        Training training,
        Series<MeasuredSeries> measured,
        DateOnly today
    ) =>
        from played in training.Stances.Sports
        from demand in practice.Find(played.Sport)?.Demands ?? []
        let measure = practice.MeasureOf(demand.Motion)
        where measure.Motion.Unit != MotionUnit.None
        from side in SidesOf(played, demand, measure.Motion)
        select On(practice, played.Sport, demand, measure, side, measured, today);

    /// <summary>A name of a side that is no role of the sport is said where it is written, and concerns nobody.</summary>
    private static IEnumerable<Side?> SidesOf(PlayedSport played, Demand demand, Motion motion) =>
        !motion.IsPaired ? [null]
        : demand.Side is null ? Sides.Each
        : Sides.Each.Any(s => s?.Word() == demand.Side) ? Sides.Each.Where(s => s?.Word() == demand.Side)
        : played.Roles.Where(r => r.Name == demand.Side).Select(r => (Side?)r.Side);

    private static JudgedDemand On(
        Practice practice,
        SportId sport,
        Demand demand,
        Measure measure,
        Side? side,
        Series<MeasuredSeries> measured,
        DateOnly today
    )
    {
        if (demand.Mode is null)
            return new(sport, demand, measure, side, null, null, DemandOpen.ModeNotWritten);
        var latest = (
            from series in measured
            where (series.Key.Motion, series.Key.Side, series.Key.Mode) == (measure.Motion, side, demand.Mode)
            let read = series.Latest
            where read is not null
            orderby read.Last descending, read.Value
            select ((SeriesKey Key, Occasion Occasion)?)(series.Key, read)
        ).FirstOrDefault();
        if (latest is not var (key, occasion))
            return new(sport, demand, measure, side, null, null, DemandOpen.NotMeasured);
        var mark = RangeMark.Of(occasion, demand.AtLeast, ErrorInUse.For(measure, key, occasion.Days, practice.OwnErrors));
        return new(
            sport,
            demand,
            measure,
            side,
            key,
            mark,
            RangeMark.IsOld(occasion.Last, today) ? DemandOpen.Old
                : measure.How is null && mark.Error is not null ? DemandOpen.MethodNotWritten
                : null
        );
    }
}
