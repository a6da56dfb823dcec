using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A span of time in a line, in seconds; not yet held against a bound.</summary>
internal sealed record WrittenTime(long Seconds, LinePlace Place);

/// <summary>Reads <c>n unit</c> and <c>n min n s</c>.</summary>
internal static class TimeReader
{
    private static readonly NumberBound SecondsOfMinute = new("the seconds after minutes", new(1, 59), " s");

    /// <summary>A rest, a pause or a switch: one time from 0 s to 15 min.</summary>
    public static Seconds? Single(DoseScanner scanner, string term)
    {
        var help = $"Write one time, as in {DoseVocabulary.Use(term)}.";
        if (NumberReader.Whole(scanner, $"the time of {term}", help) is not { } number)
            return null;
        if (scanner.Next() == '-')
            return Range(scanner, number.Place.Start, term, help);
        var unitHelp = $"Write s or min after it, as in {DoseVocabulary.Use(term)}.";
        if (Unit(scanner, number, DoseVocabulary.TimeUnits, unitHelp) is not { } unit)
            return null;
        if (After(scanner, number, unit) is not { } time)
            return null;
        if (scanner.Next() == '-')
            return Range(scanner, number.Place.Start, term, help);
        if (time.Seconds <= DoseBounds.Rests.High)
            return new((int)time.Seconds);
        scanner.Refuse<WrittenTime>(time.Place, $"A {term} is at most 15 min.", "Write a time from 0 s to 15 min.");
        return null;
    }

    /// <summary>A time whose number has not been read yet.</summary>
    public static WrittenTime? Whole(DoseScanner scanner, string noun, string help)
    {
        if (NumberReader.Whole(scanner, noun, help) is not { } number)
            return null;
        return Unit(scanner, number, DoseVocabulary.TimeUnits, "Write s or min after it, as in 30 s-2 min.") is { } unit
            ? After(scanner, number, unit)
            : null;
    }

    /// <summary>The rest of a time whose first number and unit have been read.</summary>
    public static WrittenTime? After(DoseScanner scanner, WrittenNumber number, string unit)
    {
        var place = new LinePlace(number.Place.Start, scanner.At);
        if (unit == "s")
            return new(number.Value, place);
        if (!scanner.AtDigit)
            return new(number.Value * 60, place);
        if (NumberReader.Whole(scanner, "a number of seconds", "Write seconds, as in 1 min 30 s.") is not { } seconds)
            return null;
        if (Unit(scanner, seconds, ["s"], "Write s after it, as in 1 min 30 s.") is null)
            return null;
        if (seconds.Value > 59 && number.Value + (seconds.Value / 60) <= 60)
        {
            var (minutes, rest) = (number.Value + (seconds.Value / 60), seconds.Value % 60);
            return scanner.Refuse<WrittenTime>(
                seconds.Place,
                $"{seconds} s is more than the seconds after minutes may be.",
                rest == 0 ? $"Write {minutes} min." : $"Write {minutes} min {rest} s."
            );
        }

        if (seconds.Value == 0)
        {
            return scanner.Refuse<WrittenTime>(seconds.Place, "0 s after minutes says nothing.", $"Write {number} min.");
        }
        return NumberReader.Within(scanner, new(seconds, seconds, seconds.Place), SecondsOfMinute) is null
            ? null
            : new((number.Value * 60) + seconds.Value, new(number.Place.Start, scanner.At));
    }

    /// <summary>The unit after a number.</summary>
    public static string? Unit(DoseScanner scanner, WrittenNumber number, IReadOnlyList<string> units, string help)
    {
        if (scanner.TakeOf(units) is { } unit)
            return unit;
        var found = scanner.Look();
        return found is null or { IsWord: false, Text: "," or ")" } || IsWordOfOtherKind(found)
            ? scanner.Refuse<string>(number.Place, $"{number} has no unit.", help)
            : WordFaults.Expected<string>(scanner, "a unit", units, help);
    }

    private static bool IsWordOfOtherKind(FoundInLine found) =>
        found is { IsWord: true, IsGlued: false }
        && DoseVocabulary.All.Contains(found.Word)
        && !DoseVocabulary.Units.Contains(found.Word);

    private static Seconds? Range(DoseScanner scanner, int start, string term, string help)
    {
        scanner.Refuse<WrittenTime>(new(start, scanner.At + 1), $"A {term} is a single time, not a range.", help);
        return null;
    }
}
