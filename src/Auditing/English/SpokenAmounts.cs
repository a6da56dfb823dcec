namespace Gradus.Auditing;

/// <summary>Sentence → every amount in it, whether it is one of the dose or not.</summary>
internal static class SpokenAmounts
{
    public static IEnumerable<SpokenAmount> In(SpokenSentence sentence)
    {
        for (var at = 0; at < sentence.Count; )
        {
            if ((Labelled(sentence, at) ?? At(sentence, at)) is not { } amount)
            {
                at++;
                continue;
            }

            at = amount.To;
            if (amount.Unit == SpokenUnit.None && sentence.Word(at) is "x" or "×")
                amount = amount with { Unit = SpokenUnit.Sets, To = ++at };
            else if (amount.Unit == SpokenUnit.Sets && sentence.Word(at) == "of")
                at++;
            else
            {
                yield return Bare(sentence, amount);
                continue;
            }

            yield return amount;
            if (At(sentence, at) is not { } work)
                continue;
            yield return work.Unit == SpokenUnit.None ? work with { Unit = SpokenUnit.Repetitions } : work;
            at = work.To;
        }
    }

    /// <summary>"Sets of ten", "reps: 10".</summary>
    private static SpokenAmount? Labelled(SpokenSentence sentence, int at)
    {
        var word = sentence.Word(at);
        var unit =
            SpokenWords.Repetitions.Contains(word) ? SpokenUnit.Repetitions
            : SpokenWords.Sets.Contains(word) ? SpokenUnit.Sets
            : SpokenUnit.None;
        var isOf = unit == SpokenUnit.Sets && sentence.Word(at + 1) == "of";
        if (
            unit == SpokenUnit.None
            || (sentence.Word(at + 1) != ":" && !isOf)
            || At(sentence, at + 2) is not { Unit: SpokenUnit.None } amount
        )
            return null;
        return amount with { Unit = isOf ? SpokenUnit.Repetitions : unit };
    }

    private static SpokenAmount? At(SpokenSentence sentence, int at)
    {
        if (sentence.Word(at) == "twice")
            return new(new(2), SpokenUnit.Times, at, at + 1);
        if (SpokenTerms.At(sentence, at) is not { } first)
            return null;
        if (
            Connected(sentence, at, first.Next) is { } behind
            && SpokenTerms.At(sentence, behind) is { } second
            && (first.Unit == SpokenUnit.None || first.Unit == second.Unit)
            && Scaled(sentence, first, second, behind) is var low
            && low <= second.Value
        )
            return Whole(low, second.Value, second.Unit, at, second.Next);
        return Whole(first.Value, first.Value, first.Unit, at, first.Next);
    }

    /// <summary>"One to two minutes": the first number has the unit of the second.</summary>
    private static decimal Scaled(SpokenSentence sentence, SpokenTerm first, SpokenTerm second, int behind) =>
        first.Unit == SpokenUnit.None
        && second.Unit == SpokenUnit.Seconds
        && SpokenNumbers.At(sentence, behind) is var (written, _)
        && written > 0
        && second.Value >= written * 60
            ? first.Value * 60
            : first.Value;

    /// <summary>Where the high end begins; null where the number is single.</summary>
    private static int? Connected(SpokenSentence sentence, int at, int next) =>
        sentence.Word(next) switch
        {
            "to" or "or" or "-" or "–" or "—" => next + 1,
            "and" when sentence.Word(at - 1) == "between" => next + 1,
            "up" when sentence.Word(next + 1) == "to" => next + 2,
            _ => null,
        };

    /// <summary>Nothing of a dose has fractions.</summary>
    private static SpokenAmount? Whole(decimal low, decimal high, SpokenUnit unit, int from, int to) =>
        low == decimal.Truncate(low) && high == decimal.Truncate(high) ? new(new((int)low, (int)high), unit, from, to) : null;

    /// <summary>"Do ten on each side", "make 8 to 10 in a set": a number alone counts repetitions.</summary>
    private static SpokenAmount Bare(SpokenSentence sentence, SpokenAmount amount)
    {
        if (amount.Unit != SpokenUnit.None)
            return amount;
        var behind = sentence.Word(amount.To);
        var ends =
            behind.Length == 0
            || behind is "," or ";" or "slowly"
            || sentence.Has(amount.To + 1, amount.To + 3, SpokenWords.Sets)
            || sentence.Says(amount.To, "of", "these")
            || sentence.Says(amount.To, "of", "them");
        var onSides = SpokenSides.IsShare(sentence, amount.To);
        var asked =
            sentence.Word(amount.From - 1) is "do" or "make" or "perform" or "complete"
            || sentence.Says(amount.From - 2, "aim", "for");
        return (asked && ends) || onSides ? amount with { Unit = SpokenUnit.Repetitions } : amount;
    }
}
