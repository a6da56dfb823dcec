using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>How much of a verb was written, and where.</summary>
internal sealed record WrittenAmount(Amount Amount, LinePlace Place);

/// <summary>Reads the amount after a verb.</summary>
internal static class AmountReader
{
    public static WrittenAmount? Read(DoseScanner scanner, Verb verb)
    {
        var help = $"Write a number and its unit, as in {DoseVocabulary.Use(verb.Word())}.";
        if (NumberReader.Range(scanner, $"the amount of {verb.Word()}", help) is not { } range)
            return null;
        var units = VerbFaults.UnitsOf(verb);
        var unitHelp = $"Write {VerbFaults.Or(units)} after it, as in {DoseVocabulary.Use(verb.Word())}.";
        if (TimeReader.Unit(scanner, range.Last, DoseVocabulary.Units, unitHelp) is not { } unit)
            return null;
        if (!units.Contains(unit))
            return VerbFaults.WrongUnit(scanner, verb, range, unit);
        var amount = unit is "s" or "min" ? Span(scanner, range, unit) : Counted(scanner, range, unit);
        return amount is null ? null : new(amount, scanner.Since(range.Place.Start));
    }

    private static Amount? Counted(DoseScanner scanner, WrittenRange range, string unit)
    {
        var bound = unit switch
        {
            "breaths" => NumberBound.Breaths,
            "reps" => NumberBound.Reps,
            _ => NumberBound.Metres,
        };
        return NumberReader.Within(scanner, range, bound) is not { } number
            ? null
            : unit switch
            {
                "breaths" => new Amount.Breaths(number),
                "reps" => new Amount.Reps(number),
                _ => new Amount.Metres(number),
            };
    }

    private static Amount.Span? Span(DoseScanner scanner, WrittenRange range, string unit)
    {
        long low,
            high;
        if (range.IsSingle)
        {
            if (TimeReader.After(scanner, range.First, unit) is not { } time)
                return null;
            (low, high) = (time.Seconds, time.Seconds);
            if (scanner.Take('-'))
            {
                const string Help = "Write both times, as in 30 s-2 min, or leave out the dash.";
                if (TimeReader.Whole(scanner, "the second time of the range", Help) is not { } last)
                    return null;
                high = last.Seconds;
            }
        }
        else
        {
            var factor = unit == "min" ? 60 : 1;
            (low, high) = (range.First.Value * factor, range.Last.Value * factor);
            if (scanner.Next() == '-' || (unit == "min" && scanner.AtDigit))
                return MixedRange(scanner, range, unit);
        }

        return Within(scanner, low, high, range, unit);
    }

    private static Amount.Span? Within(DoseScanner scanner, long low, long high, WrittenRange range, string unit)
    {
        var place = scanner.Since(range.Place.Start);
        var written = DoseLetters.Quote(scanner.Line[place.Start..place.End]);
        if (low > high)
        {
            return scanner.Refuse<Amount.Span>(
                place,
                $"{written} runs from high to low.",
                (range.IsSingle, unit) switch
                {
                    (true, _) => "Write the shorter time first, as in 30 s-2 min.",
                    (_, "min") => $"Write both units: {range.First} s-{range.Last} min.",
                    _ => $"Write the smaller number first: {range.Last}-{range.First} s.",
                }
            );
        }

        if (low < DoseBounds.Spans.Low)
        {
            return scanner.Refuse<Amount.Span>(place, $"{written} is no time at all.", "Write a time from 1 s to 60 min.");
        }
        if (high > DoseBounds.Spans.High)
        {
            return scanner.Refuse<Amount.Span>(
                place,
                $"{written} is longer than 60 min.",
                "Write a time from 1 s to 60 min, and more sets where it takes longer."
            );
        }
        return new(new Count((int)low, (int)high));
    }

    private static Amount.Span? MixedRange(DoseScanner scanner, WrittenRange range, string unit) =>
        scanner.Refuse<Amount.Span>(
            scanner.Since(range.Place.Start),
            $"After {range} {unit} the range is complete.",
            "Write each end as a whole time, as in 1 min 30 s-2 min."
        );
}
