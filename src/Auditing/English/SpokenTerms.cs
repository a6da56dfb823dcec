namespace Gradus.Auditing;

/// <summary>A number with its noun: "half a minute", "two and a half minutes", "8 slow lifts", "60 per cent".</summary>
internal static class SpokenTerms
{
    /// <summary>The term that begins at a token; null where there is none. A number with no noun of a dose has no unit.</summary>
    public static SpokenTerm? At(SpokenSentence sentence, int at)
    {
        if (Fraction(sentence, at) is { } fraction)
            return fraction;
        if (SpokenNumbers.At(sentence, at) is var (value, next))
        {
            if (sentence.Says(next, "and", "a", "half"))
                (value, next) = (value + 0.5m, next + 3);
            return WithNoun(sentence, value, next);
        }

        if (sentence.Word(at) is not ("a" or "an"))
            return null;
        var noun = PastAdjectives(sentence, at + 1);
        return IsMinute(sentence.Word(noun)) ? WithNoun(sentence, 1, at + 1) : null;
    }

    /// <summary>"Half a minute", "half-minute", "three quarters of a minute", "half your strength".</summary>
    private static SpokenTerm? Fraction(SpokenSentence sentence, int at)
    {
        var from = sentence.Word(at) == "a" ? at + 1 : at;
        if (sentence.Word(from) == "half")
        {
            var next = Past(sentence, from + 1, "-", "of", "a", "your", "the", "one");
            if (IsMinute(sentence.Word(next)))
                return new(30, SpokenUnit.Seconds, next + 1);
            if (sentence.Word(next) == "dozen")
                return WithNoun(sentence, 6, next + 1);
            return sentence.Word(next) is "strength" or "effort" or "force" or "power"
                ? new(50, SpokenUnit.Percent, next + 1)
                : null;
        }

        var (quarters, behind) =
            sentence.Says(from, "quarter") ? (1, from + 1)
            : sentence.Says(from, "three", "quarters") ? (3, from + 2)
            : sentence.Says(from, "three", "-", "quarters") ? (3, from + 3)
            : (0, from);
        if (quarters == 0)
            return null;
        var minute = Past(sentence, behind, "of", "a", "one");
        return IsMinute(sentence.Word(minute)) ? new(quarters * 15, SpokenUnit.Seconds, minute + 1) : null;
    }

    private static SpokenTerm WithNoun(SpokenSentence sentence, decimal value, int next)
    {
        var behind =
            sentence.Word(next) == "of" && sentence.Word(next + 1) is "these" or "those" ? next + 2 : Past(sentence, next, "-");
        var noun = PastAdjectives(sentence, behind);
        var word = sentence.Word(noun);
        if (IsMinute(word))
            return Minutes(sentence, value, noun + 1);
        if (IsSecond(word))
            return new(value, SpokenUnit.Seconds, noun + 1);
        if (word is "%" or "percent")
            return new(value, SpokenUnit.Percent, noun + 1);
        if (sentence.Says(noun, "per", "cent"))
            return new(value, SpokenUnit.Percent, noun + 2);
        if (sentence.Says(noun, "out", "of") && sentence.Word(noun + 2) is "ten" or "10")
            return new(value, SpokenUnit.OutOfTen, noun + 3);
        if (sentence.Says(noun, "/", "10"))
            return new(value, SpokenUnit.OutOfTen, noun + 2);
        var unit = UnitOf(word);
        return unit == SpokenUnit.None ? new(value, unit, next) : new(value, unit, noun + 1);
    }

    private static SpokenTerm Minutes(SpokenSentence sentence, decimal minutes, int next)
    {
        if (sentence.Says(next, "and", "a", "half"))
            return new((minutes * 60) + 30, SpokenUnit.Seconds, next + 3);
        if (sentence.Says(next, "and", "a", "quarter"))
            return new((minutes * 60) + 15, SpokenUnit.Seconds, next + 3);
        if (SpokenNumbers.At(sentence, Past(sentence, next, "and")) is var (seconds, behind) && IsSecond(sentence.Word(behind)))
            return new((minutes * 60) + seconds, SpokenUnit.Seconds, behind + 1);
        return new(minutes * 60, SpokenUnit.Seconds, next);
    }

    private static SpokenUnit UnitOf(string word) =>
        SpokenWords.Sets.Contains(word) ? SpokenUnit.Sets
        : SpokenWords.Repetitions.Contains(word) ? SpokenUnit.Repetitions
        : SpokenWords.Efforts.Contains(word) ? SpokenUnit.Efforts
        : SpokenWords.Moves.Contains(word) ? SpokenUnit.Moves
        : word switch
        {
            "times" => SpokenUnit.Times,
            "breath" or "breaths" => SpokenUnit.Breaths,
            "m" or "metre" or "metres" or "meter" or "meters" => SpokenUnit.Metres,
            _ => SpokenUnit.None,
        };

    private static bool IsMinute(string word) => word is "minute" or "minutes" or "min" or "mins" or "minute's";

    private static bool IsSecond(string word) => word is "second" or "seconds" or "sec" or "secs" or "s" or "second's";

    private static int PastAdjectives(SpokenSentence sentence, int at)
    {
        for (var i = 0; i < 2 && SpokenWords.Adjectives.Contains(sentence.Word(at)); i++)
            at = sentence.Word(at + 1) == "," ? at + 2 : at + 1;
        return at;
    }

    private static int Past(SpokenSentence sentence, int at, params ReadOnlySpan<string> words)
    {
        while (at < sentence.Count && words.Contains(sentence.Word(at)))
            at++;
        return at;
    }
}

/// <param name="Value">Seconds, where it is a time.</param>
/// <param name="Next">Behind its last token.</param>
internal sealed record SpokenTerm(decimal Value, SpokenUnit Unit, int Next);
