using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What a placeholder of an exercise's text stands for in a dose.</summary>
public static class Figures
{
    /// <summary>Every placeholder that a coach can write, without braces.</summary>
    public static readonly Series<string> Names =
    [
        "hold",
        "press",
        "pull",
        "raise",
        "rest",
        "effort",
        "sets",
        "reps",
        "breaths",
        "side",
    ];

    /// <summary>The different things that a placeholder names in a dose: none and two are both mistakes.</summary>
    public static IEnumerable<Figure> In(Dose dose, string name) =>
        (
            name switch
            {
                "hold" => Amounts(dose, Verb.Hold),
                "press" => Amounts(dose, Verb.Press),
                "pull" => Amounts(dose, Verb.Pull),
                "raise" => Amounts(dose, Verb.Raise),
                "rest" => dose.Terms.Rest is { } rest ? [new(new(rest.Value), FigureUnit.Seconds)] : [],
                "effort" => dose.Actions.Select(a => EffortOf(a.Effort)).OfType<Figure>(),
                "sets" => [new(dose.Sets, FigureUnit.Number)],
                "reps" => dose.Actions.Select(RepsOf).OfType<Figure>(),
                "breaths" => dose
                    .Actions.Where(a => a.Amount is Amount.Breaths)
                    .Select(a => new Figure(a.Amount.Number, FigureUnit.Number)),
                "side" => dose.Terms.Side is null ? [] : [new(new(1), FigureUnit.Side)],
                _ => [],
            }
        ).Distinct();

    /// <summary>The figure over several doses: from the smallest to the largest. Null where none of them has it.</summary>
    public static Figure? Over(IEnumerable<Dose> doses, string name)
    {
        var figures = doses.Select(d => In(d, name).FirstOrDefault()).OfType<Figure>().ToArray();
        return figures.Length == 0
            ? null
            : figures[0] with
            {
                Number = new(figures.Min(f => f.Number.Low), figures.Max(f => f.Number.High)),
            };
    }

    public static string Say(this Figure figure, Words words) =>
        figure.Unit switch
        {
            FigureUnit.Seconds => words.Spans(figure.Number),
            FigureUnit.Breaths => words.Say(
                "breaths",
                ("n", figure.Number.IsSingle ? figure.Number.Low : words.Number(figure.Number)),
                ("high", figure.Number.High)
            ),
            FigureUnit.Percent => words.Say("per-cent", ("n", words.Number(figure.Number))),
            _ => words.Number(figure.Number),
        };

    private static IEnumerable<Figure> Amounts(Dose dose, Verb verb) =>
        dose
            .Actions.Where(a => a.Verb == verb)
            .Select(a => new Figure(a.Amount.Number, a.Amount is Amount.Breaths ? FigureUnit.Breaths : FigureUnit.Seconds));

    private static Figure? EffortOf(Effort? effort) =>
        effort switch
        {
            Effort.Steady steady => new(steady.Percent, FigureUnit.Percent),
            Effort.Ramp ramp => new(
                new(Math.Min(ramp.First.Low, ramp.Last.Low), Math.Max(ramp.First.High, ramp.Last.High)),
                FigureUnit.Percent
            ),
            Effort.Felt felt => new(new(felt.Rating), FigureUnit.Number),
            _ => null,
        };

    private static Figure? RepsOf(DoseAction action) =>
        action.Amount is Amount.Reps ? new(action.Amount.Number, FigureUnit.Number)
        : action.Times is { } times ? new(times, FigureUnit.Number)
        : null;
}

public sealed record Figure(Count Number, FigureUnit Unit);

public enum FigureUnit
{
    Number,
    Seconds,
    Breaths,
    Percent,
    Side,
}
