using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What to say where a term is missing, repeated or without effect.</summary>
internal static class TermFaults
{
    private const string Help = "Write a term, as in rest 20 s, or leave out the comma.";

    public static WrittenTerms? NoTerm(DoseScanner scanner)
    {
        if (scanner.Look() is { IsGlued: false, Word: "side" or "sides" } found)
            return scanner.Refuse<WrittenTerms>(
                found.Place,
                $"{found.Quoted} does not say which sides.",
                "Write each side, alternate sides or both sides."
            );
        if (scanner.Look() is { IsGlued: false, Word: "left" or "right" } side)
            return scanner.Refuse<WrittenTerms>(
                side.Place,
                $"Before {side.Quoted} the word on is missing.",
                $"Write on {side.Word}."
            );
        return WordFaults.Expected<WrittenTerms>(scanner, "a term", DoseVocabulary.Terms, Help);
    }

    public static WrittenTerms? Twice(DoseScanner scanner, TermName name, LinePlace again, LinePlace first)
    {
        var (one, other) = (Quoted(scanner, first), Quoted(scanner, again));
        return scanner.Refuse<WrittenTerms>(
            again,
            name == TermName.Side
                ? $"The side is said twice: {one} and {other}."
                : $"{Word(name)} stands twice: {one} and {other}.",
            "Keep one of the two."
        );
    }

    /// <summary>Whether the word follows that belongs to a side term; its other number is refused.</summary>
    public static bool HasWord(DoseScanner scanner, string before, string word, string wrong)
    {
        scanner.Next();
        var start = scanner.At;
        var written = scanner.TakeOf([word, wrong]);
        if (written == word)
            return true;
        var help = $"Write {(before == "per" ? "each" : before)} {word}.";
        if (written == wrong)
            scanner.Refuse<string>(scanner.Since(start), $"After '{before}' stands {word}, not {wrong}.", help);
        else if (scanner.Look() is { IsWord: true, IsGlued: false } found)
            scanner.Refuse<string>(found.Place, $"After '{before}' stands {word}, not {found.Quoted}.", help);
        else
            WordFaults.Expected<string>(scanner, $"the word {word}", [word], help);
        return false;
    }

    /// <summary>A term that has nothing to act on.</summary>
    public static Dose? Idle(DoseScanner scanner, Dose dose, TermName name, LinePlace place)
    {
        var isCounted = dose.Actions.Any(a => a.Times is { High: > 1 });
        var (why, help) = name switch
        {
            TermName.Rest when isCounted && dose.Terms.Pause is null => (
                "there is only one set",
                "Between repetitions write pause instead of rest."
            ),
            TermName.Rest => ("there is only one set", "Write more sets, or leave out rest."),
            TermName.Pause when dose.Sets.High > 1 && dose.Terms.Rest is null => (
                "no verb has a count above 1 besides the sets",
                "Between sets write rest instead of pause."
            ),
            TermName.Pause => (
                "no verb has a count above 1 besides the sets",
                "Write a count before the verb, as in 2 x 4 x raise 8 s, or leave out pause."
            ),
            TermName.Switch => ("the side does not change", "Write each side or alternate sides too, or leave out switch."),
            _ => ("nothing is counted in reps", $"Count a movement in reps, as in move 8 reps, or leave out {Word(name)}."),
        };
        return scanner.Refuse<Dose>(place, $"{Word(name)} has nothing to act on: {why}.", help, DoseFaultKind.TermWithoutEffect);
    }

    private static string Word(TermName name) => name.ToString().ToLowerInvariant();

    private static string Quoted(DoseScanner scanner, LinePlace place) => DoseLetters.Quote(scanner.Line[place.Start..place.End]);
}
