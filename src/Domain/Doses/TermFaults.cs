namespace Gradus.Domain;

/// <summary>What to say where a term is missing, repeated or without effect.</summary>
internal static class TermFaults
{
    private const string Help = "Write a term, as in rest 20 s, or leave out the comma.";

    public static WrittenTerms? NoTerm(DoseScanner scanner)
    {
        if (scanner.Look() is { IsGlued: false, Word: "side" or "sides" } found)
            return scanner.Refuse<WrittenTerms>(found.Place, $"{found.Quoted} does not say which sides.", "Write each side, alternate sides or both sides.");
        if (scanner.Look() is { IsGlued: false, Word: "left" or "right" } side)
            return scanner.Refuse<WrittenTerms>(side.Place, $"Before {side.Quoted} the word on is missing.", $"Write on {side.Word}.");
        return WordFaults.Expected<WrittenTerms>(scanner, "a term", DoseVocabulary.Terms, Help);
    }

    public static WrittenTerms? Twice(DoseScanner scanner, TermName name, Place again, Place first)
    {
        var (one, other) = (Quoted(scanner, first), Quoted(scanner, again));
        return scanner.Refuse<WrittenTerms>(
            again,
            name == TermName.Side ? $"The side is said twice: {one} and {other}." : $"{name.ToString().ToLowerInvariant()} stands twice: {one} and {other}.",
            "Keep one of the two.");
    }

    /// <summary>Whether the word follows that belongs to a side term; its other number is refused.</summary>
    public static bool HasWord(DoseScanner scanner, string before, string word, string wrong)
    {
        scanner.Next();
        var start = scanner.At;
        var written = scanner.TakeOf([word, wrong]);
        if (written == word) return true;
        var help = $"Write {(before == "per" ? "each" : before)} {word}.";
        if (written == wrong) scanner.Refuse<string>(scanner.Since(start), $"After '{before}' stands {word}, not {wrong}.", help);
        else if (scanner.Look() is { IsWord: true, IsGlued: false } found) scanner.Refuse<string>(found.Place, $"After '{before}' stands {word}, not {found.Quoted}.", help);
        else WordFaults.Expected<string>(scanner, $"the word {word}", [word], help);
        return false;
    }

    /// <summary>A term that has nothing to act on.</summary>
    public static Dose? Idle(DoseScanner scanner, Dose dose, TermName name, Place place)
    {
        var isCounted = dose.Actions.Any(a => a.Times is { High: > 1 });
        var (message, help) = name switch
        {
            TermName.Rest => ("rest has nothing to act on: there is only one set.", isCounted && dose.Terms.Pause is null
                ? "Between repetitions write pause instead of rest."
                : "Write more sets, or leave out rest."),
            TermName.Pause => ("pause has nothing to act on: no verb has a count above 1 besides the sets.", dose.Sets.High > 1 && dose.Terms.Rest is null
                ? "Between sets write rest instead of pause."
                : "Write a count before the verb, as in 2 x 4 x raise 8 s, or leave out pause."),
            TermName.Switch => ("switch has nothing to act on: the side does not change.", "Write each side or alternate sides too, or leave out switch."),
            _ => ($"{name.ToString().ToLowerInvariant()} has nothing to act on: nothing is counted in reps.", $"Count a movement in reps, as in move 8 reps, or leave out {name.ToString().ToLowerInvariant()}."),
        };
        return scanner.Refuse<Dose>(place, message, help, DoseFaultKind.TermWithoutEffect);
    }

    private static string Quoted(DoseScanner scanner, Place place) => DoseLetters.Quote(scanner.Line[place.Start..place.End]);
}
