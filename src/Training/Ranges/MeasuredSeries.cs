using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>One series of a client with the only two comparisons that are made of it.</summary>
/// <param name="Baseline">The last occasion before the programme; null where there is none.</param>
/// <param name="SinceBaseline">The latest occasion beside the baseline; null where they are one, or there is none.</param>
/// <param name="SinceBefore">The latest beside the one before it; null where that is the baseline, or there is none.</param>
/// <param name="Sudden">Less, beyond the error, from a day to the next within the latest occasion, where their mean would hide
/// it; null where there is none.</param>
/// <param name="Line">Through three occasions or more; null where there are fewer.</param>
/// <param name="HalfWidths">Of each occasion by itself, half the width of what it may truly have been; null where there is no
/// error for it.</param>
public sealed record MeasuredSeries(
    RangeSeries Read,
    Measure Measure,
    Occasion? Baseline,
    RangeChange? SinceBaseline,
    RangeChange? SinceBefore,
    RangeChange? Sudden,
    RangeLine? Line,
    Series<decimal?> HalfWidths
)
{
    public SeriesKey Key => Read.Key;

    /// <summary>Null where every reading followed training.</summary>
    public Occasion? Latest => Read.Latest;

    /// <summary>Those that there are, the one since the baseline first.</summary>
    public IEnumerable<RangeChange> Changes => new[] { SinceBaseline, SinceBefore }.OfType<RangeChange>();

    /// <param name="mayGain">Whether more range helps this client.</param>
    internal static MeasuredSeries Of(
        Practice practice,
        Programme programme,
        Series<PlannedWork> work,
        RangeSeries read,
        bool mayGain
    )
    {
        var measure = practice.MeasureOf(read.Key.Motion.Name);
        var baseline = read.BaselineFor(programme.Start);
        if (read.Latest is not { } latest)
            return new(read, measure, null, null, null, null, null, []);
        var before = read.Occasions.Count > 1 ? read.Occasions[^2] : null;
        return new(
            read,
            measure,
            baseline,
            baseline is null || baseline == latest ? null : Beside(baseline),
            before is null || before == baseline && baseline != latest ? null : Beside(before),
            SuddenIn(latest),
            read.Occasions.Count < 3 ? null : RangeLine.Of(read.Occasions, ErrorOf(read.Days)),
            read.Occasions.Select(o => ErrorOf(o.Days)?.HalfWidth(o.Days.Count)).ToSeries()
        );

        RangeChange Beside(Occasion from) =>
            RangeChange.Of(from, latest, ErrorOf(from.Days.Concat(latest.Days)), mayGain && IsGained(from, latest));

        bool IsGained(Occasion from, Occasion to) =>
            work.Any(w => w.Stage == Stage.Gain && w.Works(measure, read.Key.Side) && w.From < to.First && w.Until >= from.Last);

        RangeChange? SuddenIn(Occasion occasion)
        {
            if (occasion.Days.Count < 2)
                return null;
            var (from, to) = (occasion.Days[^2], occasion.Days[^1]);
            var change = RangeChange.Of(new([from]), new([to]), ErrorOf([from, to]), false);
            return change.Word == ChangeWord.Less ? change : null;
        }

        ErrorInUse? ErrorOf(IEnumerable<DayValue> days) =>
            ErrorInUse.For(measure, read.Key, days, practice.OwnErrors)
            ?? (HomeError.Of(read.Key, baseline, programme.Start) is { } home ? ErrorInUse.Of(home, days) : null);
    }
}
