using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Reads the effort after <c>at</c>.</summary>
internal static class EffortReader
{
    private const string Help = "Write a percentage or a felt effort, as in press 10 s at 50% or press 10 s at effort 5.";

    private const string FeltHelp = "Write one number or two, as in press 10 s at effort 5 or press 10 s at effort 5-7.";

    private const string RampHelp = "Write a ramp as press 10 s at 20 to 100% in 5 steps.";

    /// <param name="start">Where <c>at</c> stands.</param>
    public static Effort? Read(DoseScanner scanner, Verb verb, Amount amount, int start)
    {
        var effort = scanner.Take("effort") ? Felt(scanner) : Percentage(scanner);
        if (effort is null)
            return null;
        var place = scanner.Since(start);
        if (verb.IsStretch())
            return VerbFaults.NoEffort(scanner, verb, place);
        if (!verb.Takes(effort))
            return VerbFaults.NoPercentage(scanner, verb, place);
        return effort is Effort.Ramp ramp && !ramp.Divides(amount) ? Uneven(scanner, ramp, amount, place) : effort;
    }

    private static Effort? Felt(DoseScanner scanner)
    {
        if (NumberReader.Range(scanner, NumberBound.Rating.Noun, FeltHelp) is not { } range)
            return null;
        if (scanner.Next() == '%')
            return scanner.Refuse<Effort>(
                new(range.Place.Start, scanner.At + 1),
                "A felt effort is a number from 0 to 10, not a percentage.",
                $"Write at {range}%, without the word effort."
            );
        return NumberReader.Within(scanner, range, NumberBound.Rating) is { } rating ? new Effort.Felt(rating) : null;
    }

    private static Effort? Percentage(DoseScanner scanner)
    {
        if (NumberReader.Range(scanner, "an effort", Help) is not { } range)
            return null;
        var isPercent = scanner.Take('%');
        if (scanner.Take("to"))
            return Ramp(scanner, range);
        if (!isPercent)
            return NoPercentSign(scanner, range);
        if (NumberReader.Within(scanner, range, NumberBound.Percent) is not { } percent)
            return null;
        var next = scanner.Look();
        return next is { IsGlued: false, Word: "in" }
            ? scanner.Refuse<Effort>(
                next.Place,
                "'in' belongs to a ramp, and a ramp has two percentages with to between them.",
                RampHelp
            )
            : new Effort.Steady(percent);
    }

    private static Effort? NoPercentSign(DoseScanner scanner, WrittenRange range)
    {
        var found = scanner.Look();
        if (found is { IsWord: true } && (found.IsGlued || !DoseVocabulary.All.Contains(found.Word)))
        {
            return scanner.Refuse<Effort>(
                found.Place,
                $"{found.Quoted} is not a word of a dose line.",
                "Write % for per cent, as in press 10 s at 50%."
            );
        }

        return scanner.Refuse<Effort>(
            range.Place,
            $"{range} has no % after it.",
            range.IsSingle && range.First.Value <= 10
                ? $"Write at {range}% for a percentage, or at effort {range} for a felt effort."
                : $"Write at {range}%."
        );
    }

    private static Effort? Ramp(DoseScanner scanner, WrittenRange from)
    {
        if (NumberReader.Within(scanner, from, NumberBound.Percent) is not { } first)
            return null;
        if (NumberReader.Range(scanner, "the last percentage of the ramp", RampHelp) is not { } to)
            return null;
        if (!scanner.Take('%'))
            return scanner.Refuse<Effort>(to.Place, "The last percentage of a ramp has no % after it.", RampHelp);
        if (NumberReader.Within(scanner, to, NumberBound.Percent) is not { } last)
            return null;
        if (!scanner.Take("in"))
            return WordFaults.Missing<Effort>(scanner, "the number of steps of the ramp", RampHelp);
        if (NumberReader.Single(scanner, NumberBound.Steps, "at 20 to 100% in 5 steps") is not { } steps)
            return null;
        return scanner.Take("steps")
            ? new Effort.Ramp(first, last, steps.Low)
            : WordFaults.Expected<Effort>(scanner, "the word steps", ["steps"], RampHelp);
    }

    private static Effort? Uneven(DoseScanner scanner, Effort.Ramp ramp, Amount amount, LinePlace place)
    {
        var k = ramp.Steps;
        var seconds = amount.Number.Low % k == 0 ? amount.Number.High : amount.Number.Low;
        var (below, above) = (seconds / k * k, ((seconds / k) + 1) * k);
        var near =
            below == 0 ? $"{above} s"
            : above > DoseBounds.Spans.High ? $"{below} s"
            : $"{below} s or {above} s";
        return scanner.Refuse<Effort>(
            place,
            $"{seconds} s cannot be cut into {k} equal steps of whole seconds.",
            $"Write a time that {k} divides, such as {near}."
        );
    }
}
