using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Tests.Reading;

internal sealed record Ends(decimal Low, decimal High)
{
    public bool AreWithin(decimal low, decimal high) => low <= Low && Low <= High && High <= high;

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Low}..{High}");
}

internal sealed record AmountMeaning(string Unit, Ends Ends);

internal sealed record EffortMeaning(string Kind, Ends First, Ends Last, decimal Steps)
{
    public override string ToString() => $"{Kind} {First} {Last} {Steps}";
}

internal sealed record ActionMeaning(Ends? Times, string Verb, string Unit, Ends Amount, EffortMeaning? Effort)
{
    public override string ToString() => $"[{Times} {Verb} {Amount} {Unit} {Effort}]";
}

internal sealed record PartMeaning(Ends? Rounds, List<ActionMeaning> Actions)
{
    public override string ToString() => $"{(Rounds is null ? "" : Rounds + "*")}({string.Concat(Actions)})";
}

internal sealed record TermMeaning(string Name, decimal[] Numbers, string Words)
{
    public override string ToString() => $"; {Name} {string.Join(" ", Numbers)} {ReadWords()}";

    private string ReadWords()
    {
        var tidy = Regex.Replace(Words, "\\s+", " ").Trim();
        return Name == "load" ? tidy : tidy.Replace('×', 'x').Replace('–', '-').ToLowerInvariant();
    }
}

/// <summary>What a line says, bounds and all not yet looked at, and the law of <c>dose-line.md</c> over it, written a second
/// time.</summary>
internal sealed record DoseMeaning(Ends Sets, List<PartMeaning> Parts, List<TermMeaning> Terms)
{
    private static readonly string[] SideTerms = ["each", "alternate", "both", "on"];

    public string Text =>
        $"{Sets}: {string.Concat(Parts)}{string.Concat(Terms.Select(t => t.ToString()).Order(StringComparer.Ordinal))}";

    private IEnumerable<ActionMeaning> Actions => Parts.SelectMany(p => p.Actions);

    public bool IsLawful() =>
        Sets.AreWithin(1, 100)
        && Parts.All(p => p.Rounds?.AreWithin(1, 100) ?? true)
        && Actions.All(IsLawful)
        && Terms.All(IsLawful)
        && Terms.Select(t => SideTerms.Contains(t.Name) ? "side" : t.Name).Distinct().Count() == Terms.Count
        && (!Has("plus") || Has("each"))
        && (!Has("rest") || Sets.High > 1 || Has("plus"))
        && (!Has("pause") || Actions.Any(a => a.Times is { High: > 1 }))
        && (!Has("switch") || Has("each") || Has("alternate"))
        && (!(Has("tempo") || Has("leave")) || Actions.Any(a => a.Unit == "reps"))
        && HighSeconds() <= 4 * 3600;

    private bool Has(string name) => Terms.Any(t => t.Name == name);

    private static bool IsLawful(ActionMeaning action)
    {
        var units = action.Verb switch
        {
            "hold" or "breathe" => "s breaths",
            "move" => "reps s",
            "carry" => "m",
            _ => "s",
        };
        var bound = action.Unit is "s" or "m" ? 3600 : 100;
        return (action.Times?.AreWithin(1, 100) ?? true)
            && units.Split(' ').Contains(action.Unit)
            && action.Amount.AreWithin(1, bound)
            && IsLawfulEffort(action);
    }

    private static bool IsLawfulEffort(ActionMeaning action) =>
        action.Effort switch
        {
            null => true,
            _ when action.Verb is "hold" or "breathe" => false,
            { Kind: "felt" } felt => felt.First.AreWithin(0, 10),
            _ when action.Verb is "move" or "carry" => false,
            { Kind: "steady" } steady => steady.First.AreWithin(1, 100),
            var ramp => ramp.First.AreWithin(1, 100)
                && ramp.Last.AreWithin(1, 100)
                && ramp.Steps is >= 2 and <= 20
                && action.Amount.Low % ramp.Steps == 0
                && action.Amount.High % ramp.Steps == 0,
        };

    private static bool IsLawful(TermMeaning term) =>
        term.Name switch
        {
            "rest" or "pause" or "switch" => term.Numbers[0] is >= 0 and <= 900,
            "plus" => term.Numbers[0] is >= 1 and <= 100 && CanBeShown(term.Words),
            "leave" => term.Numbers[0] is >= 0 and <= 100,
            "tempo" => term.Numbers.Sum(Math.Abs) is >= 1 and <= 4 * 3600,
            "on" or "load" => CanBeShown(term.Words)
                && !Regex.IsMatch(
                    term.Name + term.Words,
                    "^(one|ones|once|only|onto|loads|loaded|loading)(?!\\p{L})",
                    RegexOptions.IgnoreCase
                ),
            _ => true,
        };

    private static bool CanBeShown(string words) =>
        !Regex.Replace(words, "\\s", "").Any(c => char.IsControl(c) || char.IsSurrogate(c));

    private decimal HighSeconds()
    {
        decimal Term(string name, decimal otherwise) => Terms.FirstOrDefault(t => t.Name == name)?.Numbers[0] ?? otherwise;
        var repetition = Terms.FirstOrDefault(t => t.Name == "tempo")?.Numbers.Sum(Math.Abs) ?? 4;
        var (rest, pause, change) = (Term("rest", 0), Term("pause", 0), Term("switch", 10));
        var work = Parts.Sum(p =>
            (p.Rounds?.High ?? 1)
            * p.Actions.Sum(a =>
                (
                    (a.Times?.High ?? 1)
                    * a.Amount.High
                    * a.Unit switch
                    {
                        "breaths" => 10,
                        "reps" => repetition,
                        _ => 1,
                    }
                ) + (((a.Times?.High ?? 1) - 1) * pause)
            )
        );
        var one = (Sets.High * work) + ((Sets.High - 1) * rest);
        if (Has("each"))
            return (2 * one) + change + (Term("plus", 0) * (rest + work));
        return Has("alternate") ? (Sets.High * ((2 * work) + change)) + ((Sets.High - 1) * Math.Max(rest, change)) : one;
    }

    /// <summary>The same text for a dose that was read.</summary>
    public static string Of(Dose dose) =>
        new DoseMeaning(Of(dose.Sets), dose.Parts.Select(Of).ToList(), TermsOf(dose.Terms).ToList()).Text;

    private static Ends Of(Count count) => new(count.Low, count.High);

    private static PartMeaning Of(DosePart part) =>
        part is DosePart.Group(var times, var actions)
            ? new(Of(times), actions.Select(Of).ToList())
            : new(null, part.Actions.Select(Of).ToList());

    private static ActionMeaning Of(DoseAction action)
    {
        var unit = action.Amount switch
        {
            Amount.Span => "s",
            Amount.Breaths => "breaths",
            Amount.Reps => "reps",
            _ => "m",
        };
        var effort = action.Effort switch
        {
            Effort.Steady(var percent) => new EffortMeaning("steady", Of(percent), Of(percent), 0),
            Effort.Ramp(var first, var last, var steps) => new EffortMeaning("ramp", Of(first), Of(last), steps),
            Effort.Felt(var rating) => new EffortMeaning("felt", Of(rating), Of(rating), 0),
            _ => null,
        };
        return new(
            action.Times is null ? null : Of(action.Times),
            action.Verb.ToString().ToLowerInvariant(),
            unit,
            Of(action.Amount.Number),
            effort
        );
    }

    private static IEnumerable<TermMeaning> TermsOf(DoseTerms terms)
    {
        if (terms.Rest is { } rest)
            yield return new("rest", [rest.Value], "");
        if (terms.Pause is { } pause)
            yield return new("pause", [pause.Value], "");
        if (terms.Switch is { } change)
            yield return new("switch", [change.Value], "");
        if (terms.Side is SideTerm.On(var name))
            yield return new("on", [], name.Word);
        else if (terms.Side is { } side)
            yield return new(side.GetType().Name.ToLowerInvariant(), [], "");
        if (terms.Plus is { } plus)
            yield return new("plus", [plus.Sets], plus.Side.Word);
        if (terms.Tempo is { } t)
            yield return new("tempo", [t.Lower ?? -1, t.PauseLow ?? -1, t.Raise ?? -1, t.PauseHigh ?? -1], "");
        if (terms.Load is { } load)
            yield return new("load", [], load);
        if (terms.Leave is { } leave)
            yield return new("leave", [leave], "");
    }
}
