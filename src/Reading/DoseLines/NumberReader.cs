using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Reads numbers and ranges, and holds them against their bounds.</summary>
internal static class NumberReader
{
    private static readonly string[] InWords =
    [
        "zero",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
    ];

    /// <param name="noun">What the number is, with its article: "the number of steps".</param>
    /// <param name="help">What to write where there is none.</param>
    public static WrittenNumber? Whole(DoseScanner scanner, string noun, string help)
    {
        var (digits, place) = scanner.TakeDigits();
        if (digits.Length == 0)
            return Missing(scanner, noun, help);
        if (digits.Length > 1 && digits[0] == '0')
        {
            var plain = digits.TrimStart('0') is { Length: > 0 } rest ? rest : "0";
            return scanner.Refuse<WrittenNumber>(
                place,
                $"{DoseLetters.Quote(digits)} begins with a zero.",
                $"Write {new WrittenNumber(plain, place)}."
            );
        }

        var line = scanner.Line;
        if (place.End + 1 < line.Length && line[place.End] is '.' or '·' or ',' && char.IsAsciiDigit(line[place.End + 1]))
        {
            var end = place.End + 1;
            while (end < line.Length && char.IsAsciiDigit(line[end]))
                end++;
            return scanner.Refuse<WrittenNumber>(
                new(place.Start, end),
                $"{DoseLetters.Quote(line[place.Start..end])} is not a whole number.",
                "Write whole numbers only; for a part of a minute write seconds, as in hold 1 min 30 s."
            );
        }

        return new(digits, place);
    }

    /// <summary>A number or a range, its order not yet judged.</summary>
    public static WrittenRange? Range(DoseScanner scanner, string noun, string help)
    {
        if (Whole(scanner, noun, help) is not { } first)
            return null;
        if (!scanner.Take('-'))
            return new(first, first, first.Place);
        if (
            Whole(scanner, "the second number of the range", "Write both numbers, as in 30-60, or leave out the dash.")
            is not { } last
        )
            return null;
        return scanner.Next() == '-'
            ? scanner.Refuse<WrittenRange>(
                new(scanner.At, scanner.At + 1),
                "A range has two numbers, and after them stands another dash.",
                "Write the smallest and the largest number, as in 30-60."
            )
            : new(first, last, new(first.Place.Start, last.Place.End));
    }

    /// <summary>The range as a count within its bounds.</summary>
    public static Count? Within(DoseScanner scanner, WrittenRange range, NumberBound bound)
    {
        if (!range.IsOrdered)
        {
            return scanner.Refuse<Count>(
                range.Place,
                $"{range}{bound.Unit} runs from high to low.",
                $"Write the smaller number first: {range.Last}-{range.First}{bound.Unit}."
            );
        }

        if (range.First.Value < bound.Range.Low)
            return OutOf(scanner, range, bound, "less");
        if (range.Last.Value > bound.Range.High)
            return OutOf(scanner, range, bound, "more");
        return new((int)range.First.Value, (int)range.Last.Value);
    }

    /// <summary>A single number within its bounds; a range is refused.</summary>
    /// <param name="use">How such a number is used, as <c>leave 2</c>.</param>
    public static Count? Single(DoseScanner scanner, NumberBound bound, string use)
    {
        var help = $"Write one number, as in {use}.";
        if (Whole(scanner, bound.Noun, help) is not { } number)
            return null;
        if (scanner.Next() != '-')
            return Within(scanner, new(number, number, number.Place), bound);
        return scanner.Refuse<Count>(
            new(number.Place.Start, scanner.At + 1),
            $"{Capital(bound.Noun)} is a single number, not a range.",
            help
        );
    }

    /// <summary>Whether it is a number up to ten, written as a word.</summary>
    public static bool IsInWords(FoundInLine found) => !found.IsGlued && InWords.Contains(found.Word);

    public static T? InFigures<T>(DoseScanner scanner, FoundInLine found)
        where T : class =>
        scanner.Refuse<T>(
            found.Place,
            $"{found.Quoted} is not written in figures.",
            $"Write {new Count(Array.IndexOf(InWords, found.Word))}."
        );

    private static Count? OutOf(DoseScanner scanner, WrittenRange range, NumberBound bound, string how) =>
        scanner.Refuse<Count>(
            range.Place,
            $"{range}{bound.Unit} is {how} than {bound.Noun} may be.",
            $"Write a number from {bound.Range.Low} to {bound.Range.High}."
        );

    private static WrittenNumber? Missing(DoseScanner scanner, string noun, string help)
    {
        if (scanner.Look() is { } found && IsInWords(found))
            return InFigures<WrittenNumber>(scanner, found);
        return WordFaults.Expected<WrittenNumber>(scanner, noun, DoseVocabulary.All, help);
    }

    private static string Capital(string noun) => char.ToUpperInvariant(noun[0]) + noun[1..];
}
