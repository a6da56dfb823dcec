using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What to say where the sets or the work are not as they must be.</summary>
internal static class WorkFaults
{
    private const string XHelp = "Write x between a count and a verb, as in 3 x hold 30 s.";

    private const string VerbHelp = "Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.";

    /// <summary>No verb stands where an action must begin.</summary>
    public static DoseAction? NoVerb(DoseScanner scanner, Count? times)
    {
        if (scanner.Look() is { } found && NumberReader.IsInWords(found))
            return NumberReader.InFigures<DoseAction>(scanner, found);
        if (scanner.Look() is { IsNumber: true } number)
        {
            return times is null
                ? scanner.Refuse<DoseAction>(number.Place, $"{number.Text} stands where a verb should stand.", VerbHelp)
                : scanner.Refuse<DoseAction>(
                    number.Place,
                    "At most two counts stand before a verb: the sets and the repetitions.",
                    "Leave out the third count."
                );
        }

        return WordFaults.Expected<DoseAction>(scanner, "a verb", DoseVocabulary.Verbs, VerbHelp);
    }

    /// <summary>A count is not followed by <c>x</c>.</summary>
    public static Count? NoX(DoseScanner scanner, WrittenRange count)
    {
        var number = scanner.Line[count.Place.Start..count.Place.End];
        if (scanner.TakeOf(DoseVocabulary.Units) is { } unit)
        {
            var verb = unit switch
            {
                "reps" => "move",
                "m" => "carry",
                "breaths" => "breathe",
                _ => "hold",
            };
            return scanner.Refuse<Count>(
                scanner.Since(count.Place.Start),
                "This amount has no verb before it.",
                $"Write first what is done, as in {verb} {DoseLetters.Fold(number)} {unit}."
            );
        }

        var found = scanner.Look();
        if (found is null or { Text: "," or ")" })
        {
            return scanner.Refuse<Count>(
                count.Place,
                $"{DoseLetters.Quote(number)} is neither a dose nor the amount of one.",
                "Write what is done and how much, as in 3 x move 10 reps."
            );
        }

        if (found is { Text: "(" } || (!found.IsGlued && DoseVocabulary.Verbs.Contains(found.Word)))
            return scanner.Refuse<Count>(count.Place, $"After the count {DoseLetters.Quote(number)} an x is missing.", XHelp);
        return WordFaults.Expected<Count>(scanner, "the x of a count", ["x", .. DoseVocabulary.Units], XHelp);
    }

    /// <summary>Neither <c>then</c> nor a closing bracket stands after an action in brackets.</summary>
    public static T? Unclosed<T>(DoseScanner scanner, string help)
        where T : class
    {
        var found = scanner.Look();
        if (found is null)
            return scanner.Refuse<T>(scanner.Ending, "The bracket is not closed.", "Write ) after the last action.");
        if (found is { Text: "," })
            return scanner.Refuse<T>(
                found.Place,
                "The bracket is not closed before the comma.",
                "Write then between two actions, and ) after the last."
            );
        if (!found.IsGlued && (found.IsNumber || DoseVocabulary.Verbs.Contains(found.Word)))
            return scanner.Refuse<T>(
                found.Place,
                $"Before {found.Quoted} the word then is missing.",
                "Write then between two actions, as in (press 10 s then hold 20 s)."
            );
        if (!found.IsGlued && DoseVocabulary.Terms.Contains(found.Word))
            return scanner.Refuse<T>(
                found.Place,
                $"{found.Quoted} begins a term, and terms stand after the bracket.",
                "Close the bracket and write a comma before the term."
            );
        return WordFaults.Expected<T>(scanner, "then or a closing bracket", ["then", "at"], help);
    }
}
