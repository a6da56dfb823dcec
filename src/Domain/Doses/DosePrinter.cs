using System.Globalization;

namespace Gradus.Domain;

/// <summary>Writes a dose as its one canonical line. The sets are always written, terms stand in the order of
/// <c>dose-line.md</c>, and what is printed reads back to the same dose.</summary>
public static class DosePrinter
{
    /// <summary>As <c>2-3 x hold 30-60 s, rest 20 s, each side</c>. Times below 2 min are written in seconds.</summary>
    public static string Print(Dose dose) => string.Join(", ", Terms(dose.Terms).Prepend($"{dose.Sets} x {Work(dose.Parts)}"));

    /// <summary>As <c>45 s</c>, <c>2 min</c> or <c>2 min 30 s</c>.</summary>
    internal static string Time(int seconds) =>
        (seconds / 60, seconds % 60) switch
        {
            (< 2, _) => Text($"{seconds} s"),
            (var minutes, 0) => Text($"{minutes} min"),
            var (minutes, rest) => Text($"{minutes} min {rest} s"),
        };

    /// <summary>As <c>30-60 s</c>, <c>2-3 min</c> or <c>90 s-2 min</c>.</summary>
    internal static string Times(Count seconds)
    {
        if (seconds.IsSingle)
            return Time(seconds.Low);
        if (seconds.High < 120)
            return $"{seconds} s";
        return seconds.Low % 60 == 0 && seconds.High % 60 == 0
            ? $"{new Count(seconds.Low / 60, seconds.High / 60)} min"
            : $"{Time(seconds.Low)}-{Time(seconds.High)}";
    }

    internal static string AmountOf(Amount amount) =>
        amount.Unit switch
        {
            AmountUnit.Seconds => Times(amount.Number),
            AmountUnit.Breaths => $"{amount.Number} breaths",
            AmountUnit.Reps => $"{amount.Number} reps",
            AmountUnit.Metres => $"{amount.Number} m",
        };

    internal static string EffortOf(Effort effort) =>
        effort.Match(
            steady => $"{steady.Percent}%",
            ramp => Text($"{ramp.First} to {ramp.Last}% in {ramp.Steps} steps"),
            felt => Text($"effort {felt.Rating}")
        );

    private static string Work(Series<DosePart> parts) =>
        parts is [DosePart.Single(var only)] ? Action(only) : $"({string.Join(" then ", parts.Select(Part))})";

    private static string Part(DosePart part) =>
        part switch
        {
            DosePart.Single(var action) => Action(action),
            DosePart.Group(var times, var actions) => $"{times} x ({string.Join(" then ", actions.Select(Action))})",
            _ => throw new ArgumentOutOfRangeException(nameof(part)),
        };

    private static string Action(DoseAction action) =>
        (action.Times is { } times ? $"{times} x " : "")
        + $"{action.Verb.Word()} {AmountOf(action.Amount)}"
        + (action.Effort is { } effort ? $" at {EffortOf(effort)}" : "");

    private static IEnumerable<string> Terms(DoseTerms terms)
    {
        if (terms.Rest is { } rest)
            yield return $"rest {Time(rest.Value)}";
        if (terms.Pause is { } pause)
            yield return $"pause {Time(pause.Value)}";
        if (terms.Switch is { } change)
            yield return $"switch {Time(change.Value)}";
        if (terms.Side is { } side)
            yield return side is SideTerm.On ? $"on {side.Written}" : side.Written;
        if (terms.Plus is { } plus)
            yield return Text($"plus {plus.Sets} x on {plus.Side}");
        if (terms.Tempo is { } tempo)
            yield return $"tempo {tempo}";
        if (terms.Load is { } load)
            yield return $"load {load}";
        if (terms.Leave is { } leave)
            yield return Text($"leave {leave}");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
