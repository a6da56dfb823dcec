using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What a placeholder of an exercise's text stands for in a dose.</summary>
public static class Placeholders
{
    /// <summary>The different things that a placeholder names in a dose: none and two are both mistakes.</summary>
    public static IEnumerable<PlaceholderValue> In(Dose dose, string name) =>
        (
            name switch
            {
                "hold" => Amounts(dose, Verb.Hold),
                "press" => Amounts(dose, Verb.Press),
                "pull" => Amounts(dose, Verb.Pull),
                "raise" => Amounts(dose, Verb.Raise),
                "rest" => dose.Terms.Rest is { } rest ? [new(new(rest.Value), PlaceholderUnit.Seconds)] : [],
                "effort" => dose.Actions.Select(a => EffortOf(a.Effort)).OfType<PlaceholderValue>(),
                "sets" => [new(dose.Sets, PlaceholderUnit.Number)],
                "reps" => dose.Actions.Select(RepsOf).OfType<PlaceholderValue>(),
                "breaths" => dose
                    .Actions.Where(a => a.Amount is Amount.Breaths)
                    .Select(a => new PlaceholderValue(a.Amount.Number, PlaceholderUnit.Number)),
                "side" => dose.Terms.Side is null ? [] : [new(new(1), PlaceholderUnit.Side)],
                _ => [],
            }
        ).Distinct();

    /// <summary>The figure over several doses: from the smallest to the largest. Null where none of them has it.</summary>
    public static PlaceholderValue? Over(IEnumerable<Dose> doses, string name)
    {
        var figures = doses.Select(d => In(d, name).FirstOrDefault()).OfType<PlaceholderValue>().ToArray();
        return figures.Length == 0
            ? null
            : figures[0] with
            {
                Number = new(figures.Min(f => f.Number.Low), figures.Max(f => f.Number.High)),
            };
    }

    public static string Say(this PlaceholderValue value, Words words) =>
        value.Unit switch
        {
            PlaceholderUnit.Seconds => words.Spans(value.Number),
            PlaceholderUnit.Breaths => words.Say(
                "breaths",
                ("n", value.Number.IsSingle ? value.Number.Low : words.Number(value.Number)),
                ("high", value.Number.High)
            ),
            PlaceholderUnit.Percent => words.Say("per-cent", ("n", words.Number(value.Number))),
            _ => words.Number(value.Number),
        };

    private static IEnumerable<PlaceholderValue> Amounts(Dose dose, Verb verb) =>
        dose
            .Actions.Where(a => a.Verb == verb)
            .Select(a => new PlaceholderValue(
                a.Amount.Number,
                a.Amount is Amount.Breaths ? PlaceholderUnit.Breaths : PlaceholderUnit.Seconds
            ));

    private static PlaceholderValue? EffortOf(Effort? effort) =>
        effort?.Match<PlaceholderValue>(
            steady => new(steady.Percent, PlaceholderUnit.Percent),
            ramp =>
                new(
                    new(Math.Min(ramp.First.Low, ramp.Last.Low), Math.Max(ramp.First.High, ramp.Last.High)),
                    PlaceholderUnit.Percent
                ),
            felt => new(felt.Rating, PlaceholderUnit.Number)
        );

    private static PlaceholderValue? RepsOf(DoseAction action) =>
        action.Amount is Amount.Reps ? new(action.Amount.Number, PlaceholderUnit.Number)
        : action.Times is { } times ? new(times, PlaceholderUnit.Number)
        : null;
}

public sealed record PlaceholderValue(Count Number, PlaceholderUnit Unit);

public enum PlaceholderUnit
{
    Number,
    Seconds,
    Breaths,
    Percent,
    Side,
}
