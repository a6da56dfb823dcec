namespace Gradus.Auditing;

/// <summary>What stands around an amount and takes it out of the dose: a condition, a part, a frequency, a comparison.</summary>
internal static class SpokenSetting
{
    private static readonly IReadOnlySet<string> Over = SpokenWords.Of("over up gone past passed done through finished");
    private static readonly IReadOnlySet<string> Behind = SpokenWords.Of(
        "more extra fewer less longer ago later earlier old apart away walk from"
    );
    private static readonly IReadOnlySet<string> Activities = SpokenWords.Of(
        "training play playing eating fencing start begin train fence eat warm"
    );
    private static readonly IReadOnlySet<string> Aside = SpokenWords.Of("skip leaves drop add miss");

    public static bool IsNoDose(SpokenSentence sentence, SpokenAmount amount) =>
        IsDifference(sentence, amount)
        || IsPart(sentence, amount.From)
        || IsFrequency(sentence, amount.To)
        || (IsConditional(sentence, amount.From) && !IsOver(sentence, amount))
        || IsBesideTraining(sentence, amount)
        || BoundOf(sentence, amount) is null;

    /// <summary>Whether the clause has said a condition before that token: "if it lasts a minute".</summary>
    public static bool IsConditional(SpokenSentence sentence, int at)
    {
        var from = sentence.ClauseFrom(at);
        if (sentence.Word(from) is "or" or "and")
            from = sentence.ClauseFrom(from - 2);
        for (var i = from; i < at; i++)
        {
            var word = sentence.Word(i);
            if (word == "as" && !sentence.Says(i, "as", "soon", "as") && !sentence.Says(i, "as", "long", "as"))
                continue;
            if (word == "should" && i > from)
                continue;
            if (SpokenWords.Conditions.Contains(word))
                return true;
        }

        return false;
    }

    /// <summary>The number itself, an end of it, or null where it is only compared with: "lasts longer than a minute".</summary>
    public static SpokenBound? BoundOf(SpokenSentence sentence, SpokenAmount amount)
    {
        var at = amount.From;
        while (sentence.Word(at - 1) is "a" or "the" or "about")
            at--;
        if (sentence.Word(at - 1) == "than")
        {
            var more = sentence.Word(at - 2) is "more" or "longer";
            if (!sentence.Has(sentence.ClauseFrom(at), at, SpokenWords.Negations))
                return null;
            return more ? SpokenBound.AtMost : SpokenBound.AtLeast;
        }

        if (sentence.Word(at - 1) is "above" or "below" or "under")
            return null;
        if (sentence.Word(at - 1) is "minimum" || sentence.Word(amount.To) is "minimum")
            return SpokenBound.AtLeast;
        if (sentence.Word(at - 1) is "maximum" or "max" || sentence.Word(amount.To) is "maximum")
            return SpokenBound.AtMost;
        if (
            sentence.Says(at - 2, "at", "least")
            || sentence.Says(at - 2, "minimum", "of")
            || sentence.Says(amount.To, "or", "more")
            || sentence.Says(amount.To, "or", "longer")
            || sentence.Says(amount.To, "at", "least")
        )
            return SpokenBound.AtLeast;
        if (
            sentence.Says(at - 2, "at", "most")
            || sentence.Says(at - 2, "up", "to")
            || sentence.Says(at - 2, "maximum", "of")
            || sentence.Says(amount.To, "at", "most")
            || sentence.Says(amount.To, "at", "the", "most")
        )
            return SpokenBound.AtMost;
        return amount.Unit == SpokenUnit.Percent && sentence.Word(at - 2) is "begin" or "start"
            ? SpokenBound.AtLeast
            : SpokenBound.Exact;
    }

    /// <summary>"The last ten seconds", "every five seconds", "week 3".</summary>
    private static bool IsPart(SpokenSentence sentence, int from)
    {
        var at = from - 1;
        while (SpokenWords.Fillers.Contains(sentence.Word(at)))
            at--;
        return SpokenWords.Parts.Contains(sentence.Word(at));
    }

    /// <summary>"Two more lifts", "a set more", "leave out one set", "ten seconds later".</summary>
    private static bool IsDifference(SpokenSentence sentence, SpokenAmount amount)
    {
        var from = sentence.ClauseFrom(amount.From);
        return Behind.Contains(sentence.Word(amount.To))
            || sentence.Says(amount.To, "at", "a", "time")
            || sentence.Has(from, amount.From, Aside)
            || sentence.Says(amount.From - 2, "leave", "out")
            || sentence.Says(amount.From - 1, "more");
    }

    /// <summary>"Twice a week", "six breaths a minute", "a hundred times in an evening", "three times as long".</summary>
    private static bool IsFrequency(SpokenSentence sentence, int to)
    {
        if (sentence.Word(to) is "as" or "the" or "your")
            return true;
        if (sentence.Word(to) == "in")
            return sentence.Has(to + 1, to + 5, SpokenWords.Periods);
        return sentence.Word(to) is "a" or "an" or "per" or "each" or "every"
            && SpokenWords.Periods.Contains(sentence.Word(to + 1));
    }

    /// <summary>"When the 30 seconds are over" names the hold itself.</summary>
    private static bool IsOver(SpokenSentence sentence, SpokenAmount amount) =>
        amount.Unit == SpokenUnit.Seconds
        && sentence.Word(amount.To) is "are" or "is" or "have" or "has"
        && sentence.Has(amount.To, amount.To + 3, Over);

    /// <summary>"For five minutes before you start", "after ten minutes' rest from play".</summary>
    private static bool IsBesideTraining(SpokenSentence sentence, SpokenAmount amount)
    {
        var to = sentence.ClauseTo(amount.To);
        for (var i = amount.To; i < to; i++)
        {
            if (
                sentence.Word(i) is "before" or "after"
                && Activities.Contains(sentence.Word(sentence.Word(i + 1) is "you" or "your" or "a" or "the" ? i + 2 : i + 1))
            )
                return true;
            if (sentence.Word(i) is "afterwards" or "beforehand")
                return true;
            if (sentence.Word(i) == "from" && sentence.Word(i + 1) is "play" or "training" or "fencing")
                return true;
        }

        return false;
    }
}
