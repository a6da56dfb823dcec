using static Gradus.Tests.Reading.Recognition;

namespace Gradus.Tests.Reading;

/// <summary>The grammar of <c>dose-line.md</c>, production by production, as a recogniser that knows nothing of the reader it
/// judges. It gives the meaning of a line as written; <see cref="DoseMeaning"/> says which meanings are lawful.</summary>
internal static class DoseGrammar
{
    private static readonly string[] VerbWords = ["hold", "breathe", "press", "pull", "raise", "move", "carry"];

    /// <summary>All meanings of a line, each once.</summary>
    public static HashSet<string> Meanings(string line) =>
        All(Dose(firstCountIsSets: true), line).Select(m => m.Text).ToHashSet(StringComparer.Ordinal);

    /// <summary>The lawful ones among them.</summary>
    public static HashSet<string> LawfulMeanings(string line) =>
        All(Dose(firstCountIsSets: true), line).Where(m => m.IsLawful()).Select(m => m.Text).ToHashSet(StringComparer.Ordinal);

    /// <summary>All meanings if nobody had said that the first count before an x is always the sets.</summary>
    public static HashSet<string> MeaningsWithoutTheRuleOfSets(string line) =>
        All(Dose(firstCountIsSets: false), line).Select(m => m.Text).ToHashSet(StringComparer.Ordinal);

    // dose = [ count "x" ] work { "," term }
    private static Reads<DoseMeaning> Dose(bool firstCountIsSets) =>
        from sets in Optional(Times())
        from work in Work(mayCount: sets is not null || !firstCountIsSets)
        from terms in Many(from comma in Word(",") from term in Term() select term)
        select new DoseMeaning(sets ?? new(1, 1), work, terms);

    // work = action | "(" part { "then" part } ")"
    private static Reads<List<PartMeaning>> Work(bool mayCount) =>
        Either(
            from action in mayCount ? Action() : BareAction(null)
            select new List<PartMeaning> { new(null, [action]) },
            from open in Word("(")
            from first in Part()
            from others in Many(from then in Word("then") from part in Part() select part)
            from close in Word(")")
            select new List<PartMeaning>([first, .. others])
        );

    // part = action | count "x" "(" action { "then" action } ")"
    private static Reads<PartMeaning> Part() =>
        Either(
            from action in Action()
            select new PartMeaning(null, [action]),
            from times in Times()
            from open in Word("(")
            from first in Action()
            from others in Many(from then in Word("then") from action in Action() select action)
            from close in Word(")")
            select new PartMeaning(times, [first, .. others])
        );

    // action = [ count "x" ] verb amount [ "at" effort ]
    private static Reads<ActionMeaning> Action() =>
        from times in Optional(Times())
        from action in BareAction(times)
        select action;

    private static Reads<ActionMeaning> BareAction(Ends? times) =>
        from verb in Either([.. VerbWords.Select(Word)])
        from amount in Amount()
        from effort in Optional(from at in Word("at") from effort in Effort() select effort)
        select new ActionMeaning(times, verb, amount.Unit, amount.Ends, effort);

    // amount = span | count "breaths" | count "reps" | count "m"        span = count unit | time [ "-" time ]
    private static Reads<AmountMeaning> Amount() =>
        Either(
            from seconds in Either(
                from count in Count()
                from unit in Unit()
                select new Ends(count.Low * unit.Value, count.High * unit.Value),
                from low in Time()
                select new Ends(low.Value, low.Value),
                from low in Time()
                from dash in Word("-")
                from high in Time()
                select new Ends(low.Value, high.Value)
            )
            select new AmountMeaning("s", seconds),
            from count in Count()
            from unit in Word("breaths")
            select new AmountMeaning(unit, count),
            from count in Count()
            from unit in Word("reps")
            select new AmountMeaning(unit, count),
            from count in Count()
            from unit in Word("m")
            select new AmountMeaning(unit, count)
        );

    // effort = percent | count [ "%" ] "to" percent "in" n "steps" | "effort" n        percent = count "%"
    private static Reads<EffortMeaning> Effort() =>
        Either(
            from percent in Percent()
            select new EffortMeaning("steady", percent, percent, 0),
            from first in Either(Percent(), Count())
            from to in Word("to")
            from last in Percent()
            from inWord in Word("in")
            from n in Number()
            from steps in Word("steps")
            select new EffortMeaning("ramp", first, last, n.Value),
            from word in Word("effort")
            from rating in Count()
            select new EffortMeaning("felt", rating, rating, 0)
        );

    private static Reads<TermMeaning> Term() =>
        Either(
            from word in Either(Word("rest"), Word("pause"), Word("switch"))
            from time in Time()
            select new TermMeaning(word, [time.Value], ""),
            from each in Either(Word("each"), Word("per"))
            from side in Word("side")
            select new TermMeaning("each", [], ""),
            from word in Either(Word("alternate"), Word("both"))
            from sides in Word("sides")
            select new TermMeaning(word, [], ""),
            from onWord in Word("on")
            from side in Text()
            select new TermMeaning("on", [], side),
            from plus in Word("plus")
            from n in Number()
            from x in Word("x")
            from onWord in Word("on")
            from side in Text()
            select new TermMeaning("plus", [n.Value], side),
            from tempo in Word("tempo")
            from a in Beat()
            from b in NextBeat()
            from c in NextBeat()
            from d in NextBeat()
            select new TermMeaning("tempo", [a.Value, b.Value, c.Value, d.Value], ""),
            from load in Word("load")
            from text in Text()
            select new TermMeaning("load", [], text),
            from leave in Word("leave")
            from n in Number()
            select new TermMeaning("leave", [n.Value], "")
        );

    // beat = n | "x", which is written as -1 here
    private static Reads<Whole> Beat() => Either(Number(), from x in Word("x") select new Whole(-1));

    private static Reads<Whole> NextBeat() => from dash in Word("-") from beat in Beat() select beat;

    // count = n | n "-" n
    private static Reads<Ends> Count() =>
        Either(
            from n in Number()
            select new Ends(n.Value, n.Value),
            from low in Number()
            from dash in Word("-")
            from high in Number()
            select new Ends(low.Value, high.Value)
        );

    private static Reads<Ends> Times() => from count in Count() from x in Word("x") select count;

    private static Reads<Ends> Percent() => from count in Count() from sign in Word("%") select count;

    // unit = "s" | "min"
    private static Reads<Whole> Unit() => Either(Word("s").Select(_ => new Whole(1)), Word("min").Select(_ => new Whole(60)));

    // time = n unit | n "min" n "s", where the seconds are 1 to 59; others mean -1e9, which no bound allows
    private static Reads<Whole> Time() =>
        Either(
            from n in Number()
            from unit in Unit()
            select new Whole(n.Value * unit.Value),
            from n in Number()
            from min in Word("min")
            from seconds in Number()
            from s in Word("s")
            select new Whole(seconds.Value is >= 1 and <= 59 ? (n.Value * 60) + seconds.Value : -1e9m)
        );
}
