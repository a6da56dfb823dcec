namespace Gradus.Auditing;

/// <summary>Sentence → the sides that it asks for. Where sides only describe a place ("low on both sides") there is
/// none.</summary>
internal static class SpokenSides
{
    private static readonly IReadOnlySet<string> Changes = SpokenWords.Of(
        "change changing swap swapping switch switching alternate alternating"
    );
    private static readonly IReadOnlySet<string> Order = SpokenWords.Of("first start begin then after");
    private static readonly IReadOnlySet<string> Turns = SpokenWords.Of("first then");
    private static readonly IReadOnlySet<string> Right = SpokenWords.Of("right");
    private static readonly IReadOnlySet<string> Same = SpokenWords.Of("same repeat again");
    private static readonly IReadOnlySet<string> Again = SpokenWords.Of("do repeat same then now again go");
    private static readonly IReadOnlySet<string> Work = SpokenWords.Of(
        "do repeat set sets repetitions times twice work {sets} {reps} {hold} {press} {pull} {raise} {breaths}"
    );

    /// <summary>Whether "on each side", "per leg" or "a side" stands there.</summary>
    public static bool IsShare(SpokenSentence sentence, int at)
    {
        if (sentence.Says(at, "a", "side"))
            return true;
        var word = sentence.Word(at) is "on" or "for" or "with" or "to" ? at + 1 : at;
        return sentence.Word(word) is "each" or "per" or "either" or "every"
            && SpokenWords.Limbs.Contains(sentence.Word(word + 1));
    }

    /// <param name="counted">Whether the sentence has another figure of the dose.</param>
    public static IEnumerable<SpokenValue> In(SpokenSentence sentence, bool counted)
    {
        for (var at = 0; at < sentence.Count; at++)
        {
            if (At(sentence, at, counted) is not var (side, to) || SpokenSetting.IsConditional(sentence, at))
                continue;
            yield return new(SpokenKind.Side, new(1), sentence[at].Start, sentence[to - 1].End - sentence[at].Start)
            {
                Side = side,
            };
            at = to - 1;
        }
    }

    private static (SpokenSide Side, int To)? At(SpokenSentence sentence, int at, bool counted)
    {
        var (word, next) = (sentence.Word(at), sentence.Word(at + 1));
        var onLimb = SpokenWords.Limbs.Contains(next);
        if (word == "left" && IsTurn(sentence, at))
            return (SpokenSide.Each, at + 1);
        if (word is "left" or "right")
            return onLimb && !sentence.Has(Order) ? (word == "left" ? SpokenSide.Left : SpokenSide.Right, at + 2) : null;
        if (word == "other" && IsRestOfOne(sentence, at, counted))
            return (SpokenSide.Each, at + 1);
        if (word == "other" && onLimb)
            return IsAgain(sentence, at, next) ? (SpokenSide.Each, at + 2) : null;
        if (word == "both" && onLimb)
            return Both(sentence, at, next, counted);
        if (Changes.Contains(word))
            return ChangeOf(sentence, at);
        if (sentence.Says(at, "one", "side", "only") || sentence.Says(at, "only", "one", "side"))
            return (SpokenSide.One, at + 3);
        return
            word is "each" or "per" or "either" or "every"
            && onLimb
            && sentence.Word(at + 2) != "of"
            && Works(sentence, at, counted)
            ? (SpokenSide.Each, at + 2)
            : null;
    }

    /// <summary>"Then the other side", "the same with the other arm".</summary>
    private static bool IsAgain(SpokenSentence sentence, int at, string limb)
    {
        var from = sentence.ClauseFrom(at);
        if (sentence.Has(from, at, SpokenWords.Negations))
            return false;
        return limb == "side" ? sentence.Has(from, at, Again) : sentence.Has(from, sentence.ClauseTo(at), Same);
    }

    /// <summary>"The left leg first, then the right".</summary>
    private static bool IsTurn(SpokenSentence sentence, int at) => sentence.Has(Turns) && sentence.Has(at, sentence.Count, Right);

    /// <summary>"Eight with one arm, then eight with the other".</summary>
    private static bool IsRestOfOne(SpokenSentence sentence, int at, bool counted)
    {
        if (!counted || SpokenWords.Limbs.Contains(sentence.Word(at + 1)) || !sentence.Has(0, at, Turns))
            return false;
        for (var i = 0; i < at; i++)
            if (sentence.Word(i) == "one" && SpokenWords.Limbs.Contains(sentence.Word(i + 1)))
                return true;
        return false;
    }

    private static (SpokenSide, int)? Both(SpokenSentence sentence, int at, string limb, bool counted)
    {
        for (var i = at + 2; i < sentence.ClauseTo(at); i++)
        {
            if (sentence.Says(i, "at", "once"))
                return (SpokenSide.Both, i + 2);
            if (sentence.Says(i, "at", "the", "same", "time"))
                return (SpokenSide.Both, i + 4);
        }

        return limb == "sides" && Works(sentence, at, counted) ? (SpokenSide.All, at + 2) : null;
    }

    /// <summary>"Change legs", "alternate sides", "swap your arms".</summary>
    private static (SpokenSide, int)? ChangeOf(SpokenSentence sentence, int at)
    {
        var limb = sentence.Word(at + 1) is "your" or "the" ? at + 2 : at + 1;
        return
            SpokenWords.Limbs.Contains(sentence.Word(limb)) && sentence.Word(limb).EndsWith('s') || sentence.Word(limb) == "feet"
            ? (SpokenSide.Each, limb + 1)
            : null;
    }

    private static bool Works(SpokenSentence sentence, int at, bool counted) => counted || sentence.Has(0, at, Work);
}
