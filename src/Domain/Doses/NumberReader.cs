using System.Globalization;

namespace Gradus.Domain;

/// <summary>A whole number in a line; of more than nine digits it is one thousand million, which is beyond every bound.</summary>
internal sealed record Number(long Value, Place Place)
{
    public override string ToString() => Value.ToString(CultureInfo.InvariantCulture);
}

/// <summary>One number or two with a dash between them, in any order.</summary>
internal sealed record NumberRange(Number First, Number Last, Place Place)
{
    public bool IsSingle => First == Last;

    public bool IsOrdered => First.Value <= Last.Value;
}

/// <summary>Reads numbers and ranges, and holds them against their bounds.</summary>
internal static class NumberReader
{
    private const int MostDigits = 9;
    private const long TooLarge = 1_000_000_000;

    private static readonly string[] InWords = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

    /// <param name="noun">What the number is, with its article: "the number of steps".</param>
    /// <param name="help">What to write where there is none.</param>
    public static Number? Whole(DoseScanner scanner, string noun, string help)
    {
        var (digits, place) = scanner.TakeDigits();
        if (digits.Length == 0) return Missing(scanner, noun, help);
        if (digits.Length > 1 && digits[0] == '0')
        {
            var plain = digits.TrimStart('0') is { Length: > 0 } rest ? rest : "0";
            return scanner.Refuse<Number>(place, $"{DoseLetters.Quote(digits)} begins with a zero.", $"Write {Short(plain)}.");
        }

        var line = scanner.Line;
        if (place.End + 1 < line.Length && line[place.End] is '.' or '·' && char.IsAsciiDigit(line[place.End + 1]))
        {
            var end = place.End + 1;
            while (end < line.Length && char.IsAsciiDigit(line[end])) end++;
            return scanner.Refuse<Number>(
                new(place.Start, end),
                $"{DoseLetters.Quote(line[place.Start..end])} is not a whole number.",
                "Write whole numbers only; for a part of a minute write seconds, as in hold 1 min 30 s.");
        }

        return new(digits.Length > MostDigits ? TooLarge : long.Parse(digits, CultureInfo.InvariantCulture), place);
    }

    /// <summary>A number or a range, its order not yet judged.</summary>
    public static NumberRange? Range(DoseScanner scanner, string noun, string help)
    {
        if (Whole(scanner, noun, help) is not { } first) return null;
        if (!scanner.Take('-')) return new(first, first, first.Place);
        if (Whole(scanner, "the second number of the range", "Write both numbers, as in 30-60, or leave out the dash.") is not { } last) return null;
        return scanner.Next() == '-'
            ? scanner.Refuse<NumberRange>(new(scanner.At, scanner.At + 1), "A range has two numbers, and after them stands another dash.", "Write the smallest and the largest number, as in 30-60.")
            : new(first, last, new(first.Place.Start, last.Place.End));
    }

    /// <summary>The range as a count within its bounds.</summary>
    public static Count? Within(DoseScanner scanner, NumberRange range, Bound bound)
    {
        if (!range.IsOrdered)
        {
            return scanner.Refuse<Count>(
                range.Place, $"{Written(range, bound)} runs from high to low.", $"Write the smaller number first: {range.Last}-{range.First}{bound.Unit}.");
        }

        if (range.First.Value < bound.Range.Low) return OutOf(scanner, range, bound, "less");
        if (range.Last.Value > bound.Range.High) return OutOf(scanner, range, bound, "more");
        return new((int)range.First.Value, (int)range.Last.Value);
    }

    /// <summary>A single number within its bounds; a range is refused.</summary>
    /// <param name="use">How such a number is used, as <c>leave 2</c>.</param>
    public static Count? Single(DoseScanner scanner, Bound bound, string use)
    {
        var help = $"Write one number, as in {use}.";
        if (Whole(scanner, bound.Noun, help) is not { } number) return null;
        if (bound == Bound.Rating && scanner.Next() == '%')
            return scanner.Refuse<Count>(new(number.Place.Start, scanner.At + 1), "A felt effort is a number from 0 to 10, not a percentage.", $"Write at {number}%, without the word effort.");
        if (scanner.Next() != '-') return Within(scanner, new(number, number, number.Place), bound);
        return scanner.Refuse<Count>(
            new(number.Place.Start, scanner.At + 1), $"{Capital(bound.Noun)} is a single number, not a range.", help);
    }

    /// <summary>Whether it is a number up to ten, written as a word.</summary>
    public static bool IsInWords(Found found) => !found.IsGlued && InWords.Contains(found.Word);

    public static T? InFigures<T>(DoseScanner scanner, Found found)
        where T : class =>
        scanner.Refuse<T>(found.Place, $"{found.Quoted} is not written in figures.", $"Write {new Count(Array.IndexOf(InWords, found.Word))}.");

    private static Count? OutOf(DoseScanner scanner, NumberRange range, Bound bound, string how) => scanner.Refuse<Count>(
        range.Place, $"{Written(range, bound)} is {how} than {bound.Noun} may be.", $"Write a number from {bound.Range.Low} to {bound.Range.High}.");

    private static string Written(NumberRange range, Bound bound) =>
        (range.IsSingle ? Short(range.First) : $"{Short(range.First)}-{Short(range.Last)}") + bound.Unit;

    private static string Short(Number number) => number.Value < TooLarge ? number.ToString() : "A number of so many digits";

    private static string Short(string digits) => digits.Length > MostDigits ? "it without the zeros" : digits;

    private static Number? Missing(DoseScanner scanner, string noun, string help)
    {
        if (scanner.Look() is { } found && IsInWords(found)) return InFigures<Number>(scanner, found);
        return WordFaults.Expected<Number>(scanner, noun, DoseVocabulary.All, help);
    }

    private static string Capital(string noun) => char.ToUpperInvariant(noun[0]) + noun[1..];
}

/// <summary>What a number may be.</summary>
/// <param name="Noun">With its article: "a count".</param>
/// <param name="Unit">Behind the number in a message, as <c>%</c>; mostly empty.</param>
internal sealed record Bound(string Noun, Count Range, string Unit = "")
{
    public static readonly Bound Count = new("a count", DoseBounds.Counts);
    public static readonly Bound Breaths = new("a number of breaths", DoseBounds.Counts, " breaths");
    public static readonly Bound Reps = new("a number of reps", DoseBounds.Counts, " reps");
    public static readonly Bound Metres = new("a number of metres", DoseBounds.Metres, " m");
    public static readonly Bound Percent = new("a percentage", DoseBounds.Percents, "%");
    public static readonly Bound Rating = new("a felt effort", DoseBounds.Ratings);
    public static readonly Bound Steps = new("the number of steps", DoseBounds.RampSteps);
    public static readonly Bound Plus = new("the number of sets after plus", DoseBounds.Counts);
    public static readonly Bound Leave = new("the number of repetitions to leave", DoseBounds.Leave);
}
