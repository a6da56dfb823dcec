using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The terms of a line, and where each stands.</summary>
internal sealed record WrittenTerms(DoseTerms Terms, IReadOnlyDictionary<TermName, LinePlace> Places);

/// <summary>Reads the terms, each after its comma, each at most once.</summary>
internal static class TermReader
{
    public static WrittenTerms? Read(DoseScanner scanner)
    {
        var terms = DoseTerms.None;
        var places = new Dictionary<TermName, LinePlace>();
        while (scanner.Take(','))
        {
            scanner.Next();
            var start = scanner.At;
            if (scanner.TakeOf(DoseVocabulary.Terms) is not { } word)
                return TermFaults.NoTerm(scanner);
            var name = NameOf(word);
            if (Term(scanner, terms, word) is not { } more)
                return null;
            if (places.TryGetValue(name, out var first))
                return TermFaults.Twice(scanner, name, scanner.Since(start), first);
            places.Add(name, scanner.Since(start));
            terms = more;
        }

        return scanner.IsDone ? new(terms, places) : WordFaults.Trailing<WrittenTerms>(scanner);
    }

    private static TermName NameOf(string word) =>
        word switch
        {
            "rest" => TermName.Rest,
            "pause" => TermName.Pause,
            "switch" => TermName.Switch,
            "plus" => TermName.Plus,
            "tempo" => TermName.Tempo,
            "load" => TermName.Load,
            "leave" => TermName.Leave,
            _ => TermName.Side,
        };

    /// <summary>The terms with one more.</summary>
    private static DoseTerms? Term(DoseScanner scanner, DoseTerms terms, string word) =>
        word switch
        {
            "rest" => TimeReader.Single(scanner, word) is { } rest ? terms with { Rest = rest } : null,
            "pause" => TimeReader.Single(scanner, word) is { } pause ? terms with { Pause = pause } : null,
            "switch" => TimeReader.Single(scanner, word) is { } change ? terms with { Switch = change } : null,
            "plus" => Plus(scanner) is { } plus ? terms with { Plus = plus } : null,
            "tempo" => TempoReader.Read(scanner) is { } tempo ? terms with { Tempo = tempo } : null,
            "load" => Text(scanner, "what is held or worn", "load 8 kg") is { } load ? terms with { Load = load } : null,
            "leave" => NumberReader.Single(scanner, NumberBound.Leave, "leave 2") is { } leave
                ? terms with
                {
                    Leave = leave.Low,
                }
                : null,
            _ => Side(scanner, word) is { } side ? terms with { Side = side } : null,
        };

    private static SideTerm? Side(DoseScanner scanner, string word) =>
        word switch
        {
            "each" or "per" => TermFaults.HasWord(scanner, word, "side", "sides") ? new SideTerm.Each() : null,
            "alternate" => TermFaults.HasWord(scanner, word, "sides", "side") ? new SideTerm.Alternate() : null,
            "both" => TermFaults.HasWord(scanner, word, "sides", "side") ? new SideTerm.Both() : null,
            _ => On(scanner) is { } name ? new SideTerm.On(SideName.Of(name)) : null,
        };

    private static Plus? Plus(DoseScanner scanner)
    {
        const string Help = "Write how many sets more and for which side, as in plus 1 x on left.";
        if (NumberReader.Single(scanner, NumberBound.Plus, "plus 1 x on left") is not { } sets)
            return null;
        if (!scanner.Take("x"))
            return WordFaults.Missing<Plus>(scanner, "the x of plus", Help);
        if (!scanner.Take("on"))
            return WordFaults.Missing<Plus>(scanner, "the word on", Help);
        return On(scanner) is { } side ? new(sets.Low, SideName.Of(side)) : null;
    }

    private static string? On(DoseScanner scanner) =>
        Text(scanner, "a side", "on left") is { } side ? DoseLetters.Side(side) : null;

    private static string? Text(DoseScanner scanner, string noun, string use)
    {
        var (text, place) = scanner.TakeText();
        if (text.Length == 0)
            return scanner.Refuse<string>(
                scanner.IsDone ? scanner.Ending : new(scanner.At, scanner.At + 1),
                $"Here {noun} is missing.",
                $"Write it, as in {use}."
            );
        return Characters.CanBeShown(text)
            ? text
            : scanner.Refuse<string>(
                place,
                $"{DoseLetters.Quote(text)} holds a character that cannot be shown.",
                $"Write it again, as in {use}."
            );
    }
}
