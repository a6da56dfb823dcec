namespace Gradus.Reading;

/// <summary>What to say where a word is missing, unknown or in the wrong place.</summary>
internal static class WordFaults
{
    private const string TrailingHelp = "Leave it out, or write a comma and a term, as in rest 20 s.";

    /// <summary>None of the words stands where one must.</summary>
    /// <param name="noun">What is missing, with its article: "a unit".</param>
    /// <param name="help">The remedy where nothing near was written.</param>
    public static T? Expected<T>(DoseScanner scanner, string noun, IReadOnlyList<string> words, string help)
        where T : class
    {
        if (scanner.Look() is not { } found)
            return Missing<T>(scanner, noun, help);
        if (found.IsWord && (found.IsGlued || !DoseVocabulary.All.Contains(found.Word)))
            return Unknown<T>(scanner, found, noun, words, help);
        if (Sign(found.Text) is { } sign)
            return scanner.Refuse<T>(found.Place, $"{found.Quoted} is no sign of a dose line.", sign);
        return Missing<T>(scanner, noun, help);
    }

    /// <summary>Something must stand here, and whatever does is in its place.</summary>
    public static T? Missing<T>(DoseScanner scanner, string noun, string help)
        where T : class =>
        scanner.Look() is { } found
            ? scanner.Refuse<T>(found.Place, $"{found.Quoted} stands where {noun} should stand.", help)
            : scanner.Refuse<T>(scanner.Ending, $"The line ends where {noun} should stand.", help);

    /// <summary>A word that is none of the language.</summary>
    public static T? Unknown<T>(DoseScanner scanner, FoundInLine found, string noun, IReadOnlyList<string> words, string help)
        where T : class
    {
        var known = found.IsGlued ? DoseVocabulary.All : words;
        var what = found.IsGlued || noun.StartsWith("the ", StringComparison.Ordinal) ? "a word of a dose line" : noun;
        return scanner.Refuse<T>(
            found.Place,
            $"{found.Quoted} is not {what}.",
            DoseVocabulary.Meant(found.Word, known) is { } meant ? $"Write {meant}, as in {DoseVocabulary.Use(meant)}." : help
        );
    }

    /// <summary>Something stands after the work or a term that does not belong there.</summary>
    public static T? Trailing<T>(DoseScanner scanner)
        where T : class
    {
        if (scanner.Look() is not { } found)
            throw new InvalidOperationException("Nothing stands there.");
        if (found.IsWord && (found.IsGlued || !DoseVocabulary.All.Contains(found.Word)))
            return Unknown<T>(scanner, found, "a word of a dose line", DoseVocabulary.All, TrailingHelp);
        if (found.IsNumber)
            return Number<T>(scanner, found);
        var (message, help) = Misplaced(found);
        return scanner.Refuse<T>(found.Place, message, help);
    }

    private static (string Message, string Help) Misplaced(FoundInLine found) =>
        found.Word switch
        {
            "then" => (
                "'then' joins actions inside brackets only.",
                "Put brackets round the actions, as in (press 10 s then hold 20 s)."
            ),
            "x" => ("The count of sets does not stand after the work.", "Write it first, as in 3 x hold 30 s."),
            "at" => (
                "'at' stands where no action ends.",
                "Write the effort once, right after the amount of its action, as in press 10 s at 50%."
            ),
            ")" => ("This bracket closes nothing.", "Leave it out, or open it before the first action."),
            "(" => ("A bracket stands where the work has ended.", "Put all actions into one pair of brackets, joined by then."),
            ";" or "+" or "/" or "&" => (
                $"{found.Quoted} is no sign of a dose line.",
                "Write a comma before a term, or then between two actions in brackets."
            ),
            var word when DoseVocabulary.Terms.Contains(word) => (
                $"'{word}' begins a term, and no comma stands before it.",
                $"Write a comma before it, as in hold 30 s, {DoseVocabulary.Use(word)}."
            ),
            var word when DoseVocabulary.Verbs.Contains(word) => (
                $"'{word}' begins a second action without brackets and then.",
                "Put the actions into brackets, as in (press 10 s then hold 20 s)."
            ),
            _ => ($"{found.Quoted} stands where the line should end.", TrailingHelp),
        };

    private static T? Number<T>(DoseScanner scanner, FoundInLine found)
        where T : class =>
        scanner.Refuse<T>(
            found.Place,
            $"{found.Quoted} stands where the line should end.",
            found.Place.End < scanner.Line.Length && scanner.Line[found.Place.End] == '%'
                ? "Write at before a percentage, as in press 10 s at 50%."
                : "Leave it out; the sets stand first, as in 3 x hold 30 s."
        );

    private static string? Sign(string text) =>
        text switch
        {
            "*" or "✕" or "✖" or "⨯" => "Write x, as in 3 x hold 30 s.",
            "−" or "—" or "‐" or "‑" or "~" => "Write - between two numbers, as in hold 30-60 s.",
            "\"" or "”" or "″" => "Write s for seconds, as in hold 30 s.",
            "'" or "’" or "′" => "Write min for minutes, as in hold 2 min.",
            ":" => "Write minutes and seconds with their units, as in hold 1 min 30 s.",
            "[" or "{" => "Write round brackets, as in (press 10 s then hold 20 s).",
            "]" or "}" => "Write round brackets, as in (press 10 s then hold 20 s).",
            _ => null,
        };
}
