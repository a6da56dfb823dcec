namespace Gradus.Domain;

/// <summary>What may be said of a range beside a mark that somebody set.</summary>
public enum MarkWord
{
    /// <summary>Even the low end of what was read reaches it.</summary>
    Enough,

    /// <summary>Even the high end of what was read stays below it.</summary>
    Short,

    /// <summary>It lies within the error of what was read.</summary>
    NotTold,

    /// <summary>There is no error for this measure: two numbers and no word.</summary>
    NotJudged,
}

/// <summary>An occasion beside a mark: the demand of a sport, or the range that an exercise needs.</summary>
/// <param name="HalfWidth">Of the occasion; null where there is no error for this measure.</param>
public sealed record RangeMark(Occasion Read, decimal Mark, ErrorInUse? Error, decimal? HalfWidth, MarkWord Word)
{
    /// <summary>How many days a reading is good for; common practice, no source.</summary>
    public const int ReadingsLast = 180;

    /// <summary>By how much it is about short.</summary>
    public decimal Missing => Mark - Read.Value;

    /// <summary>Whether somebody must measure again before anything is said.</summary>
    public static bool IsOld(DateOnly read, DateOnly today) => read.AddDays(ReadingsLast) < today;

    public static RangeMark Of(Occasion read, decimal mark, ErrorInUse? error)
    {
        var half = error?.HalfWidth(read.Days.Count);
        return new(read, mark, error, half, half is { } width ? WordFor(read.Value, mark, width) : MarkWord.NotJudged);
    }

    private static MarkWord WordFor(decimal value, decimal mark, decimal half) =>
        value - half >= mark ? MarkWord.Enough
        : value + half < mark ? MarkWord.Short
        : MarkWord.NotTold;
}
