namespace Gradus.Domain;

/// <summary>Numbers of a dose held against their range, and said in words.</summary>
internal static class EnvelopeNumbers
{
    /// <summary>More is on the hard side.</summary>
    public static IEnumerable<Departure> Compare(Count allowed, Count written, Func<Count, string> words) =>
        Compare(allowed, written, words, words);

    /// <summary>More is on the hard side.</summary>
    /// <param name="own">What was written, with its verb.</param>
    /// <param name="range">What the exercise allows.</param>
    public static IEnumerable<Departure> Compare(Count allowed, Count written, Func<Count, string> own, Func<Count, string> range)
    {
        var departure = $"{own(written)}, the exercise allows {range(allowed)}";
        if (written.High > allowed.High)
            yield return new(DepartureSide.Hard, departure);
        else if (written.Low < allowed.Low)
            yield return new(DepartureSide.Easy, departure);
    }

    /// <summary>As <c>3 sets</c> or <c>2 to 3 sets</c>.</summary>
    public static string Counted(Count number, string one, string several) =>
        $"{Number(number)} {(number.High == 1 ? one : several)}";

    /// <summary>As <c>2</c> or <c>2 to 3</c>.</summary>
    public static string Number(Count number) =>
        number.IsSingle ? number.ToString() : $"{new Count(number.Low)} to {new Count(number.High)}";

    /// <summary>As <c>45 s</c>, <c>30 to 60 s</c> or <c>90 s to 2 min</c>.</summary>
    public static string Time(Count seconds)
    {
        var printed = DosePrinter.Times(seconds);
        return seconds.IsSingle ? printed : printed.Replace("-", " to ", StringComparison.Ordinal);
    }
}
