using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A time → what it is the time of.</summary>
internal static class SpokenTimes
{
    private static readonly IReadOnlySet<string> Breathing = SpokenWords.Of("breathe breath breaths inhale exhale");
    private static readonly IReadOnlySet<string> Recovery = SpokenWords.Of("recover recovery break breather");
    private static readonly IReadOnlySet<string> Between = SpokenWords.Of("them each");
    private static readonly IReadOnlySet<string> Places = SpokenWords.Of("top bottom middle halfway");

    private static readonly (Verb Verb, IReadOnlySet<string> Words)[] Cues =
    [
        (Verb.Press, SpokenWords.Of("push pushes pushing press presses pressing squeeze squeezes drive tense shove brace")),
        (Verb.Pull, SpokenWords.Of("pull pulls pulling draw drawing")),
        (Verb.Raise, SpokenWords.Of("lift lifts raise raises hover lifting")),
        (Verb.Hold, SpokenWords.Of("stay sink hang remain relax linger rest lean")),
        (Verb.Breathe, SpokenWords.Of("breathe breathing")),
        (Verb.Move, SpokenWords.Of("hop hops rock move step march swing bounce circle")),
    ];

    /// <summary>Null where it is no time of the dose.</summary>
    public static SpokenKind? KindOf(SpokenSentence sentence, SpokenAmount amount)
    {
        var (from, to) = (sentence.ClauseFrom(amount.From), sentence.ClauseTo(amount.From));
        if (
            IsMeasured(sentence, from, amount.From)
            || sentence.Says(amount.To, "in", "all")
            || sentence.Says(amount.To, "in", "total")
            || IsTaken(sentence, from, amount.From)
        )
            return null;
        if (IsBreathing(sentence, amount) || IsAfter(sentence, amount))
            return null;
        for (var i = from; i < to; i++)
        {
            if (sentence.Word(i) == "between")
                return SpokenWords.Sets.Contains(sentence.Word(i + 1)) || SpokenWords.Sets.Contains(sentence.Word(i + 2))
                        ? SpokenKind.Rest
                    : sentence.Word(i + 1) is "sides" or "legs" or "arms" ? SpokenKind.Switch
                    : IsRepetition(sentence.Word(i + 1)) || IsRepetition(sentence.Word(i + 2)) ? SpokenKind.Pause
                    : IsRest(sentence, amount) ? SpokenKind.Rest
                    : SpokenKind.Time;
            if (sentence.Word(i) == "before" && i >= amount.To && sentence.Has(i, i + 4, SpokenWords.Sets))
                return SpokenKind.Rest;
            if (sentence.Word(i) == "after" && sentence.Word(i + 1) is "each" or "every")
                return SpokenWords.Sets.Contains(sentence.Word(i + 2)) ? SpokenKind.Rest
                    : sentence.Has(i + 2, i + 3, SpokenWords.Timed) || sentence.Has(i + 2, i + 3, SpokenWords.Moving)
                        ? SpokenKind.Pause
                    : SpokenKind.Time;
            if (sentence.Word(i) == "next" && i >= amount.To && SpokenWords.Sets.Contains(sentence.Word(i + 1)))
                return SpokenKind.Rest;
            if (
                i >= amount.To
                && sentence.Word(i) is "change" or "swap" or "switch"
                && SpokenWords.Limbs.Contains(sentence.Word(i + 1))
            )
                return SpokenKind.Switch;
        }

        if (IsRest(sentence, amount) || sentence.Has(from, to, Recovery))
            return SpokenKind.Rest;
        return IsWait(sentence, amount) ? SpokenKind.Wait : SpokenKind.Time;
    }

    /// <summary>The verbs before the time in its sentence, nearest first. "Hold" and "keep" go with every one of them, and tell
    /// none apart.</summary>
    public static Series<Verb> VerbsOf(SpokenSentence sentence, int from)
    {
        var verbs = new List<Verb>();
        for (var i = from - 1; i >= 0; i--)
            verbs.AddRange(Cues.Where(c => c.Words.Contains(sentence.Word(i))).Select(c => c.Verb));
        return verbs.Distinct().ToSeries();
    }

    /// <summary>"Stay there for 30 seconds" asks; "hold for two seconds at the top" is a beat of a movement.</summary>
    public static bool IsAsked(SpokenSentence sentence, SpokenAmount amount) =>
        sentence.Has(sentence.ClauseFrom(amount.From), amount.From, SpokenWords.Asks)
        && !sentence.Has(sentence.ClauseFrom(amount.From), sentence.ClauseTo(amount.From), Places);

    private static bool IsRepetition(string word) =>
        Between.Contains(word)
        || SpokenWords.Repetitions.Contains(word)
        || SpokenWords.Efforts.Contains(word)
        || SpokenWords.Moves.Contains(word);

    /// <summary>"Rest for a minute", "a minute's rest", "30 seconds off".</summary>
    private static bool IsRest(SpokenSentence sentence, SpokenAmount amount)
    {
        var at = amount.From - 1;
        while (
            SpokenWords.Fillers.Contains(sentence.Word(at))
            || sentence.Word(at) is "between" or "at" or "least" or "up" or "to" or "period" or "time" or ":" or "is" or "lasts"
        )
            at--;
        return sentence.Word(at) is "rest" or "rests" or "resting" or "recover"
            || sentence.Says(at - 2, "catch", "your", "breath")
            || sentence.Word(amount.To) is "rest" or "off" or "break"
            || sentence.Says(amount.To, "'", "rest")
            || sentence.Says(amount.To, "of", "rest");
    }

    /// <summary>"Wait for 20 seconds", "a two-second pause".</summary>
    private static bool IsWait(SpokenSentence sentence, SpokenAmount amount)
    {
        var at = amount.From - 1;
        while (SpokenWords.Fillers.Contains(sentence.Word(at)) || sentence.Word(at) is "there" or "here")
            at--;
        return sentence.Word(at) is "wait" or "pause" || sentence.Word(amount.To) is "pause" or "wait";
    }

    /// <summary>"A bout lasts three minutes" is none of the dose; "each push lasts six seconds" is.</summary>
    private static bool IsMeasured(SpokenSentence sentence, int from, int to)
    {
        for (var i = from; i < to; i++)
            if (SpokenWords.Measures.Contains(sentence.Word(i)))
                return !sentence.Has(from, i, SpokenWords.Timed);
        return false;
    }

    /// <summary>"It may take a minute" says how long something is; "take three seconds on the way down" asks.</summary>
    private static bool IsTaken(SpokenSentence sentence, int clause, int from)
    {
        for (var i = clause + 1; i < from; i++)
            if (
                sentence.Word(i) == "take"
                && sentence.Word(i - 1) is "may" or "will" or "can" or "should" or "it" or "might" or "sets" or "to"
            )
                return true;
        return false;
    }

    /// <summary>"Breathe in for four seconds and out for six": the beat of a breath.</summary>
    private static bool IsBreathing(SpokenSentence sentence, SpokenAmount amount)
    {
        var clause = sentence.ClauseFrom(amount.From);
        if (!sentence.Has(0, amount.To, Breathing))
            return false;
        for (var i = clause; i < amount.From; i++)
            if (sentence.Word(i) is "in" or "out" or "inhale" or "exhale" || sentence.Says(i, "hold", "your", "breath"))
                return true;
        return false;
    }

    /// <summary>"After 30 seconds" names the hold where the sentence then lets go of it.</summary>
    private static bool IsAfter(SpokenSentence sentence, SpokenAmount amount)
    {
        var at = amount.From - 1;
        while (sentence.Word(at) is "the" or "a" or "about")
            at--;
        return sentence.Word(at) == "after" && !sentence.Has(amount.To, amount.To + 5, SpokenWords.Releases);
    }
}
