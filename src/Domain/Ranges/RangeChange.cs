namespace Gradus.Domain;

/// <summary>What may be said of a difference between two occasions.</summary>
public enum ChangeWord
{
    /// <summary>More, beyond the error, after two weeks or more in which work to gain it was planned.</summary>
    Gain,

    /// <summary>More, beyond the error.</summary>
    More,

    /// <summary>No change that this measure can show; never "the same".</summary>
    NotShown,

    /// <summary>Less, beyond the error: measure again and ask.</summary>
    Less,

    /// <summary>The numbers stand side by side: there is no error to judge by, or too little time lies between.</summary>
    NotJudged,
}

/// <summary>One occasion of a series beside an earlier one.</summary>
/// <param name="Difference">Later less earlier.</param>
/// <param name="Error">Null where there is none for this measure.</param>
/// <param name="Margin">What the difference must reach, in the motion's unit, inclusive; null where there is no error.</param>
public sealed record RangeChange(
    Occasion From,
    Occasion To,
    decimal Difference,
    ErrorInUse? Error,
    decimal? Margin,
    ChangeWord Word
)
{
    /// <summary>Fewer days than these between two occasions are no gain.</summary>
    public const int DaysForGain = 14;

    public int DaysApart => Apart(From, To);

    /// <param name="mayGain">Whether work that gains this motion on this side was planned between the two, for somebody whom more
    /// range helps.</param>
    public static RangeChange Of(Occasion from, Occasion to, ErrorInUse? error, bool mayGain)
    {
        var difference = to.Value - from.Value;
        if (error is null)
            return new(from, to, difference, null, null, ChangeWord.NotJudged);
        var margin = error.ChangeBetween(from.Days.Count, to.Days.Count);
        var days = Apart(from, to);
        var word =
            difference <= -margin ? ChangeWord.Less
            : days < Occasion.DaysApart ? ChangeWord.NotJudged
            : difference < margin ? ChangeWord.NotShown
            : mayGain && days >= DaysForGain ? ChangeWord.Gain
            : ChangeWord.More;
        return new(from, to, difference, error, margin, word);
    }

    private static int Apart(Occasion from, Occasion to) => to.First.DayNumber - from.Last.DayNumber;
}

/// <summary>The straight line through three occasions or more, which is never drawn beyond the last of them.</summary>
/// <param name="Change">From the first day to the last, to one decimal.</param>
/// <param name="Margin">Null where there is no error for this measure.</param>
public sealed record RangeLine(decimal Change, ErrorInUse? Error, decimal? Margin)
{
    /// <param name="occasions">At least three.</param>
    public static RangeLine Of(Series<Occasion> occasions, ErrorInUse? error)
    {
        var days = occasions.Select(o => o.First).ToSeries();
        var (spread, mean) = (SpreadOf(days), MeanOf(days));
        var rise = occasions.Sum(o => (o.First.DayNumber - mean) * o.Value) / spread;
        return new(Decimals.ToOne(rise * (days[^1].DayNumber - days[0].DayNumber)), error, error?.ChangeAlong(days));
    }

    /// <summary>Σ(t − t̄)², in days.</summary>
    internal static decimal SpreadOf(Series<DateOnly> days)
    {
        var mean = MeanOf(days);
        return days.Sum(d => (d.DayNumber - mean) * (d.DayNumber - mean));
    }

    private static decimal MeanOf(Series<DateOnly> days) => days.Sum(d => (decimal)d.DayNumber) / days.Count;
}
