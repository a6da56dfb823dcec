using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Measured ranges → what the client is told of them. No cause is named, nothing is put in per cent, and below the error
/// nothing is called more or less.</summary>
internal sealed class ProgressWords(ClientRanges ranges, Texts texts)
{
    private readonly Words words = texts.Words;

    /// <returns>Null where nothing was measured.</returns>
    public static PlannedProgress? Of(ClientRanges ranges, Texts texts) =>
        ranges.Series.Count == 0 ? null : new ProgressWords(ranges, texts).All();

    private PlannedProgress All()
    {
        var judged = ranges
            .Series.Where(s => s.HalfWidths.Any(h => h is not null))
            .OrderByDescending(s => s.Changes.Any(c => c.Word != ChangeWord.NotJudged))
            .ToArray();
        var sides = ranges.Sides.Select(SidesOf).OfType<string>().ToArray();
        return new(
            Notes(judged).ToSeries(),
            judged.Select(Range).ToSeries(),
            sides.Length > 0 ? [.. sides, words.Say("sides-note")] : [],
            ranges.Series.Except(judged).Select(Numbers).ToSeries()
        );
    }

    private IEnumerable<string> Notes(MeasuredSeries[] judged)
    {
        if (judged.Length > 0)
        {
            yield return words.Say("progress-note");
            yield return words.Say("progress-picture");
        }

        if (ranges.Comparisons > 0)
            yield return words.Say("progress-chance", ("n", ranges.Comparisons));
        if (ranges.Series.Any(s => Demands(s).Any()))
            yield return words.Say("demand-note");
    }

    private PlannedRange Range(MeasuredSeries series)
    {
        var unit = series.Key.Motion.Unit;
        var demands = Demands(series).ToArray();
        var pictures = series
            .Read.Occasions.Zip(series.HalfWidths)
            .Select(o => o.Second is { } half ? Picture(o.First, half, unit) : null)
            .ToSeries();
        var marks = demands.Where(d => d.Open is null).Select(d => d.Demand.AtLeast).Distinct().ToSeries();
        return new(
            Name(series.Key.Motion, series.Key.Side),
            Way(series.Key),
            Changes(series).Concat(demands.Select(Said)).ToSeries(),
            ScaleOf(pictures.OfType<RangePicture>().ToArray(), marks, unit),
            Readings(series, pictures)
        );
    }

    private PlannedNumbers Numbers(MeasuredSeries series) =>
        new(
            Name(series.Key.Motion, series.Key.Side),
            Way(series.Key),
            Readings(series, series.Read.Occasions.Select(_ => (RangePicture?)null).ToSeries()),
            Demands(series).Select(Asked).ToSeries()
        );

    private string Way(SeriesKey key) =>
        words.Say(key.Mode == RangeMode.Active ? "range-active" : "range-passive", ("instrument", key.Instrument));

    /// <summary>Of which the client may know.</summary>
    private IEnumerable<JudgedDemand> Demands(MeasuredSeries series) =>
        ranges.Demands.Where(d => d.Key == series.Key && (d.Open is null or DemandOpen.Old));

    /// <summary>In the order of their days; what followed training has no picture.</summary>
    private Series<PlannedReading> Readings(MeasuredSeries series, Series<RangePicture?> pictures)
    {
        var unit = series.Key.Motion.Unit;
        var judged = series
            .Read.Occasions.Zip(pictures)
            .Select(o =>
                (
                    Day: o.First.First,
                    Said: new PlannedReading(Days(o.First), Between(Value(o.First.Value, unit), o.Second), o.Second)
                )
            );
        var after = series.Read.AfterTraining.Select(r =>
            (
                Day: r.Date,
                Said: new PlannedReading(
                    words.PlainDate(r.Date),
                    words.Say("range-after-training", ("value", Value(r.Value, unit))),
                    null
                )
            )
        );
        return judged.Concat(after).OrderBy(r => r.Day).Select(r => r.Said).ToSeries();
    }

    /// <summary>Wide enough for every picture and mark, to fives of degrees or whole centimetres.</summary>
    /// <param name="pictures">At least one.</param>
    private static RangeScale ScaleOf(RangePicture[] pictures, Series<decimal> marks, MotionUnit unit)
    {
        var step = unit == MotionUnit.Centimetres ? 1m : 5m;
        var (low, high) = (pictures.Select(p => p.Low).Concat(marks).Min(), pictures.Select(p => p.High).Concat(marks).Max());
        return new((Math.Ceiling(low / step) - 1) * step, (Math.Floor(high / step) + 1) * step, marks);
    }

    private RangePicture Picture(Occasion occasion, decimal half, MotionUnit unit)
    {
        var (low, high) = (RangeRounding.Low(occasion.Value - half, unit), RangeRounding.High(occasion.Value + half, unit));
        return new(words.Say("range-picture", ("low", Value(low, unit)), ("high", Value(high, unit))), low, high, occasion.Value);
    }

    /// <summary>Since the baseline, or where there is none since the time before: the other one is for the coach.</summary>
    private IEnumerable<string> Changes(MeasuredSeries series)
    {
        if (series.Sudden is { } sudden)
            yield return Change(sudden, series.Key.Motion.Unit);
        if ((series.SinceBaseline ?? series.SinceBefore) is { } change)
            yield return Change(change, series.Key.Motion.Unit);
        else if (series.Latest is not null)
            yield return words.Say("range-once");
    }

    private string Change(RangeChange change, MotionUnit unit) =>
        change.Error?.Home is null ? Judged(change, unit) : words.Say("range-provisional", ("said", Judged(change, unit)));

    private string Judged(RangeChange change, MotionUnit unit)
    {
        var (date, to) = (Days(change.From), Value(change.To.Value, unit));
        var amount = Value(Math.Abs(change.Difference), unit);
        return change switch
        {
            { Word: ChangeWord.Gain or ChangeWord.More, Margin: { } margin } => words.Say(
                change.Word == ChangeWord.Gain ? "range-gain" : "range-more",
                ("amount", amount),
                ("date", date),
                ("error", Value(RangeRounding.Error(margin), unit)),
                ("low", Value(RangeRounding.Low(change.Difference - margin, unit), unit)),
                ("high", Value(RangeRounding.High(change.Difference + margin, unit), unit))
            ),
            { Word: ChangeWord.Less, Margin: { } margin } => words.Say(
                "range-less",
                ("amount", amount),
                ("date", date),
                ("error", Value(RangeRounding.Error(margin), unit)),
                ("coach", texts.Card.Coach)
            ),
            { Word: ChangeWord.NotShown, Margin: { } margin } => words.Say(
                "range-not-shown",
                ("from", Value(change.From.Value, unit)),
                ("date", date),
                ("to", to),
                ("error", Value(RangeRounding.Error(margin), unit))
            ),
            _ => words.Say(
                change.Error is null ? "range-no-error" : "range-too-soon",
                ("from", Value(change.From.Value, unit)),
                ("date", date),
                ("to", to)
            ),
        };
    }

    /// <summary>"Épée fencing, lunge, rear leg: at least 15°. Short of it by about 4°."</summary>
    private string Said(JudgedDemand judged)
    {
        var unit = judged.Measure.Motion.Unit;
        return words.Say("demand-said", ("asked", Asked(judged)), ("verdict", Verdict()));

        string Verdict() =>
            judged.Open is DemandOpen.Old
                ? words.Say("demand-old")
                : judged.Mark switch
                {
                    { Word: MarkWord.Enough } => words.Say("demand-enough"),
                    { Word: MarkWord.Short } mark => words.Say("demand-short", ("amount", Value(mark.Missing, unit))),
                    { Word: MarkWord.NotTold, HalfWidth: { } half } => words.Say(
                        "demand-not-told",
                        ("error", Value(RangeRounding.Error(half), unit))
                    ),
                    _ => words.Say("demand-no-error"),
                };
    }

    private string Asked(JudgedDemand judged)
    {
        var sport = texts.Of(judged.Sport);
        var (position, value) = (judged.Demand.Position, Value(judged.Demand.AtLeast, judged.Measure.Motion.Unit));
        return sport.Roles.FirstOrDefault(r => r.Name == judged.Demand.Side)?.Shown is { } role
            ? words.Say("demand-role", ("position", position), ("sport", sport.Name), ("role", role), ("value", value))
            : words.Say("demand-both", ("position", position), ("sport", sport.Name), ("value", value));
    }

    /// <summary>Null where it may not be judged.</summary>
    private string? SidesOf(ComparedSides compared)
    {
        var (latest, motion) = (compared.Latest, compared.Key.Motion);
        if (latest.Margin is not { } margin)
            return null;
        return words.Say(
            latest.Word == SidesWord.Differ ? "sides-differ" : "sides-not-shown",
            ("motion", Name(motion, null)),
            ("left", Value(latest.Left.Value, motion.Unit)),
            ("right", Value(latest.Right.Value, motion.Unit)),
            ("error", Value(RangeRounding.Error(margin), motion.Unit))
        );
    }

    private string Name(Motion motion, Side? side)
    {
        var said = words.SayOr("motion-" + Kebab.OfWords(motion.Name), motion.Name);
        var name = said[..1].ToUpperInvariant() + said[1..];
        return side is { } one ? words.Say("range-on", ("motion", name), ("side", words.Say(one.Word()))) : name;
    }

    private string Between(string value, RangePicture? picture) =>
        picture is null ? value : words.Say("range-read", ("value", value), ("between", picture.Sentence));

    private string Value(decimal value, MotionUnit unit) => RangeWords.Value(value, unit, words);

    private string Days(Occasion occasion) => RangeWords.Days(occasion, words);
}
