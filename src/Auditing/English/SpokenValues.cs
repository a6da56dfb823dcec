namespace Gradus.Auditing;

/// <summary>English text → the figures of a dose that it says by hand. Measures of the set-up, ages, clock times, ordinals,
/// frequencies, conditions and parts of a dose are none.</summary>
public static class SpokenValues
{
    private static readonly IReadOnlySet<string> Left = SpokenWords.Of("left hand reserve spare tank");
    private static readonly IReadOnlySet<string> Breathing = SpokenWords.Of("breathe inhale exhale");
    private static readonly IReadOnlySet<string> Walks = SpokenWords.Of("walk carry march");
    private static readonly IReadOnlySet<string> Defines = SpokenWords.Of("is are makes make counts means");
    private static readonly IReadOnlySet<string> Aside = SpokenWords.Of("before between settle first");
    private static readonly IReadOnlySet<string> Weights = SpokenWords.Of(
        "weight bodyweight way range people fencers body straight"
    );

    /// <param name="text">Plain; placeholders stand in it with their braces.</param>
    /// <returns>In the order of the text.</returns>
    public static IEnumerable<SpokenValue> In(string text) => SpokenSentence.In(text).SelectMany(In);

    private static IEnumerable<SpokenValue> In(SpokenSentence sentence)
    {
        var figures = SpokenAmounts.In(sentence).Select(amount => Of(sentence, amount)).OfType<SpokenValue>().ToArray();
        return figures.Concat(SpokenSides.In(sentence, figures.Length > 0)).OrderBy(f => f.Start);
    }

    private static SpokenValue? Of(SpokenSentence sentence, SpokenAmount amount)
    {
        if (
            amount.Unit == SpokenUnit.None
            || SpokenSetting.IsNoDose(sentence, amount)
            || KindOf(sentence, amount) is not { } kind
        )
            return null;
        var start = sentence[amount.From].Start;
        return new(kind, amount.Number, start, sentence[amount.To - 1].End - start)
        {
            Bound = SpokenSetting.BoundOf(sentence, amount) ?? SpokenBound.Exact,
            Verbs = kind == SpokenKind.Time ? SpokenTimes.VerbsOf(sentence, amount.From) : [],
            IsAsked = IsAsked(sentence, amount, kind),
        };
    }

    private static SpokenKind? KindOf(SpokenSentence sentence, SpokenAmount amount) =>
        amount.Unit switch
        {
            SpokenUnit.Seconds => SpokenTimes.KindOf(sentence, amount),
            SpokenUnit.Sets => IsDefinition(sentence, amount) ? null : SpokenKind.Sets,
            SpokenUnit.Repetitions or SpokenUnit.Moves => Repetitions(sentence, amount, SpokenKind.Repetitions),
            SpokenUnit.Efforts => Repetitions(sentence, amount, SpokenKind.Efforts),
            SpokenUnit.Times => Times(sentence, amount),
            SpokenUnit.Breaths => amount.Number.High > 1 && !sentence.Has(Aside) ? SpokenKind.Breaths : null,
            SpokenUnit.Percent => IsEffort(sentence, amount) ? SpokenKind.Percent : null,
            SpokenUnit.OutOfTen => sentence.Has(SpokenWords.Pains) ? null : SpokenKind.Felt,
            SpokenUnit.Metres => sentence.Has(Walks) ? SpokenKind.Metres : null,
            _ => null,
        };

    private static SpokenKind? Repetitions(SpokenSentence sentence, SpokenAmount amount, SpokenKind kind)
    {
        var behind = sentence.ClauseTo(amount.From);
        if (sentence.Has(amount.To, behind, Left) && !sentence.Says(amount.To, "with"))
            return SpokenKind.Leave;
        if (sentence.Word(amount.To - 1) == "ones" && !sentence.Has(0, amount.From, SpokenWords.Repeats))
            return null;
        return amount.Number.High == 1 || IsDefinition(sentence, amount) ? null : kind;
    }

    /// <summary>"That is one repetition", "ten rocks make one set".</summary>
    private static bool IsDefinition(SpokenSentence sentence, SpokenAmount amount) =>
        amount.Number.High == 1 && sentence.Has(sentence.ClauseFrom(amount.From), amount.From, Defines);

    private static SpokenKind? Times(SpokenSentence sentence, SpokenAmount amount) =>
        sentence.Has(Breathing) ? SpokenKind.Breaths
        : amount.From == 0
        || sentence.Has(SpokenWords.Repeats)
        || sentence.Has(SpokenWords.Moving)
        || SpokenSides.IsShare(sentence, amount.To)
            ? SpokenKind.Times
        : null;

    /// <summary>A share is an effort where something of an effort is named, and no share of a weight or a way.</summary>
    private static bool IsEffort(SpokenSentence sentence, SpokenAmount amount) =>
        sentence.Has(SpokenWords.Strengths) && !sentence.Has(amount.To, amount.To + 5, Weights);

    private static bool IsAsked(SpokenSentence sentence, SpokenAmount amount, SpokenKind kind) =>
        kind switch
        {
            SpokenKind.Time => SpokenTimes.IsAsked(sentence, amount),
            SpokenKind.Breaths => sentence.Has(sentence.ClauseFrom(amount.From), amount.From, SpokenWords.Asks),
            SpokenKind.Times => sentence.Has(SpokenWords.Repeats),
            SpokenKind.Repetitions => amount.Unit == SpokenUnit.Repetitions,
            _ => true,
        };
}
