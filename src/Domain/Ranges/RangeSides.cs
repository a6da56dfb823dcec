namespace Gradus.Domain;

/// <summary>What may be said of the two sides.</summary>
public enum SidesWord
{
    /// <summary>Beyond the error, as they do in healthy people too.</summary>
    Differ,

    /// <summary>No difference that this measure can show.</summary>
    NotShown,

    /// <summary>There is no error for this measure.</summary>
    NotJudged,
}

/// <summary>Left and right on one occasion, in the motion's unit and never in per cent.</summary>
/// <param name="Difference">Left less right.</param>
/// <param name="Margin">What the difference must reach either way, inclusive; null where there is no error.</param>
public sealed record RangeSides(
    Occasion Left,
    Occasion Right,
    decimal Difference,
    ErrorInUse? Error,
    decimal? Margin,
    SidesWord Word
)
{
    public DateOnly First => Left.First < Right.First ? Left.First : Right.First;

    public DateOnly Last => Left.Last > Right.Last ? Left.Last : Right.Last;

    /// <summary>Whether all days of both lie in one occasion.</summary>
    public static bool AreOne(Occasion left, Occasion right) =>
        Math.Max(left.Last.DayNumber, right.Last.DayNumber) - Math.Min(left.First.DayNumber, right.First.DayNumber)
        < Occasion.DaysApart;

    public static RangeSides Of(Occasion left, Occasion right, ErrorInUse? error)
    {
        var difference = left.Value - right.Value;
        return new(
            left,
            right,
            difference,
            error,
            error?.Change,
            error is null ? SidesWord.NotJudged
                : Math.Abs(difference) >= error.Change ? SidesWord.Differ
                : SidesWord.NotShown
        );
    }
}

/// <summary>How the difference of the sides changed between two occasions.</summary>
/// <param name="Margin">√2 times the error of one side, unless an error of the change of a difference is published; null where
/// there is neither.</param>
/// <param name="IsShown">Whether it changed beyond that; null where there is none.</param>
public sealed record SidesChange(RangeSides From, RangeSides To, decimal? Margin, bool IsPublished, bool? IsShown)
{
    /// <summary>Of the difference left less right.</summary>
    public decimal Change => To.Difference - From.Difference;

    /// <param name="side">The error of one side, over all days of both occasions.</param>
    /// <param name="published">The error of the change of a difference.</param>
    public static SidesChange Of(RangeSides from, RangeSides to, ErrorInUse? side, ErrorInUse? published)
    {
        var margin = published?.Change ?? side?.ChangeOfSides;
        var change = to.Difference - from.Difference;
        return new(from, to, margin, published is not null, margin is { } m ? Math.Abs(change) >= m : null);
    }
}
