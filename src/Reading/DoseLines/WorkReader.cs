using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Reads the sets and the work: everything before the first term.</summary>
internal static class WorkReader
{
    private const string BracketHelp = "Write the actions of one set in brackets, as in (press 10 s then hold 20 s).";

    /// <summary>The first count before an <c>x</c> is the sets.</summary>
    public static Dose? Read(DoseScanner scanner)
    {
        var sets = new Count(1);
        var isCounted = scanner.AtDigit;
        if (isCounted)
        {
            if (Times(scanner) is not { } written)
                return null;
            sets = written;
        }

        var parts = scanner.Take('(') ? Bracket(scanner) : Bare(scanner, isCounted);
        return parts is null ? null : new(sets, parts, DoseTerms.None);
    }

    private static Series<DosePart>? Bare(DoseScanner scanner, bool isCounted)
    {
        Count? times = null;
        if (isCounted && scanner.AtDigit)
        {
            var start = scanner.At;
            times = Times(scanner);
            if (times is null)
                return null;
            if (scanner.Next() == '(')
            {
                return scanner.Refuse<Series<DosePart>>(
                    scanner.Since(start),
                    "Only the sets are counted outside the brackets.",
                    "Put the second count inside, as in 2 x (3 x (press 10 s then hold 20 s))."
                );
            }
        }

        return Action(scanner, times) is { } action ? [new DosePart.Single(action)] : null;
    }

    private static Series<DosePart>? Bracket(DoseScanner scanner)
    {
        var parts = new List<DosePart>();
        do
        {
            if (Part(scanner) is not { } part)
                return null;
            parts.Add(part);
        } while (scanner.Take("then"));
        return scanner.Take(')') ? parts.ToSeries() : Unclosed<Series<DosePart>>(scanner);
    }

    private static DosePart? Part(DoseScanner scanner)
    {
        Count? times = null;
        if (scanner.AtDigit)
        {
            times = Times(scanner);
            if (times is null)
                return null;
            if (scanner.Take('('))
                return Group(scanner, times);
        }
        else if (scanner.Next() == '(')
        {
            return scanner.Refuse<DosePart>(
                new(scanner.At, scanner.At + 1),
                "The inner bracket has no count.",
                "Write a count before it, as in (2 x (press 10 s then pull 5 s) then hold 30 s)."
            );
        }

        return Action(scanner, times) is { } action ? new DosePart.Single(action) : null;
    }

    private static DosePart.Group? Group(DoseScanner scanner, Count times)
    {
        var actions = new List<DoseAction>();
        do
        {
            Count? own = null;
            if (scanner.AtDigit && (own = Times(scanner)) is null)
                return null;
            if (scanner.Next() == '(')
            {
                return scanner.Refuse<DosePart.Group>(
                    new(scanner.At, scanner.At + 1),
                    "Brackets stand at most two deep.",
                    "Write the actions out one after another, with then between them."
                );
            }

            if (Action(scanner, own) is not { } action)
                return null;
            actions.Add(action);
        } while (scanner.Take("then"));
        return scanner.Take(')') ? new(times, actions.ToSeries()) : Unclosed<DosePart.Group>(scanner);
    }

    private static DoseAction? Action(DoseScanner scanner, Count? times)
    {
        if (scanner.TakeOf(DoseVocabulary.Verbs) is not { } word)
            return WorkFaults.NoVerb(scanner, times);
        var verb = Verbs.All.First(v => v.Word() == word);
        if (AmountReader.Read(scanner, verb) is not { } amount)
            return null;
        scanner.Next();
        var start = scanner.At;
        if (!scanner.Take("at"))
            return new(times, verb, amount.Amount, null);
        return EffortReader.Read(scanner, verb, amount.Amount, start) is { } effort
            ? new(times, verb, amount.Amount, effort)
            : null;
    }

    private static Count? Times(DoseScanner scanner)
    {
        if (NumberReader.Range(scanner, "a count", "Write a count, as in 3 x hold 30 s.") is not { } range)
            return null;
        if (!scanner.Take("x"))
            return WorkFaults.NoX(scanner, range);
        return NumberReader.Within(scanner, range, NumberBound.Count);
    }

    private static T? Unclosed<T>(DoseScanner scanner)
        where T : class => WorkFaults.Unclosed<T>(scanner, BracketHelp);
}
