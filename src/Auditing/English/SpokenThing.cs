using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Something of a dose that a text can name by a figure.</summary>
/// <param name="Name">In a dose several things may have the same.</param>
/// <param name="Number">Over all doses asked about, both ends included.</param>
/// <param name="Verb">What is done; null for what stands beside the work.</param>
/// <param name="Placeholder">The word in braces that stands for it; null where there is none.</param>
public sealed record SpokenThing(string Name, SpokenKind Kind, Count Number, Verb? Verb = null, string? Placeholder = null)
{
    /// <summary>Everything in those doses, from the smallest number to the largest.</summary>
    public static Series<SpokenThing> Of(IEnumerable<Dose> doses) =>
        doses
            .SelectMany(dose => In(dose).GroupBy(t => t.Name).SelectMany(same => same.Index()))
            .GroupBy(t => (t.Item.Name, t.Index))
            .Select(same =>
                same.First().Item with
                {
                    Number = new(same.Min(t => t.Item.Number.Low), same.Max(t => t.Item.Number.High)),
                }
            )
            .ToSeries();

    private static IEnumerable<SpokenThing> In(Dose dose)
    {
        yield return new("sets", SpokenKind.Sets, dose.Sets, null, "sets");
        foreach (var group in dose.Parts.OfType<DosePart.Group>())
            if (group.Times.High > 1)
                yield return new("rounds", SpokenKind.Times, group.Times);
        foreach (var thing in dose.Actions.SelectMany(In).Concat(In(dose.Terms)))
            yield return thing;
    }

    private static IEnumerable<SpokenThing> In(DoseAction action)
    {
        var verb = action.Verb;
        if (action.Times is { } times)
            yield return new("times", SpokenKind.Repetitions, times, verb, "reps");
        var name = verb.Word();
        var number = action.Amount.Number;
        yield return action.Amount.Unit switch
        {
            AmountUnit.Seconds => new(
                name,
                SpokenKind.Time,
                number,
                verb,
                verb == Domain.Verb.Hold || verb.IsContraction() ? name : null
            ),
            AmountUnit.Breaths => new(name, SpokenKind.Breaths, number, verb, "breaths"),
            AmountUnit.Reps => new(name, SpokenKind.Repetitions, number, verb, "reps"),
            AmountUnit.Metres => new(name, SpokenKind.Metres, number, verb),
        };
        if (action.Effort is Effort.Felt felt)
            yield return new("felt", SpokenKind.Felt, felt.Rating, null, "effort");
        if (action.Effort is Effort.Steady steady)
            yield return new("effort", SpokenKind.Percent, steady.Percent, null, "effort");
        if (action.Effort is Effort.Ramp ramp)
            yield return new(
                "effort",
                SpokenKind.Percent,
                new(Math.Min(ramp.First.Low, ramp.Last.Low), Math.Max(ramp.First.High, ramp.Last.High)),
                null,
                "effort"
            );
    }

    private static IEnumerable<SpokenThing> In(DoseTerms terms)
    {
        if (terms.Rest is { } rest)
            yield return new("rest", SpokenKind.Rest, new(rest.Value), null, "rest");
        if (terms.Pause is { } pause)
            yield return new("pause", SpokenKind.Pause, new(pause.Value));
        if (terms.Switch is { } change)
            yield return new("switch", SpokenKind.Switch, new(change.Value));
        if (terms.Leave is { } leave)
            yield return new("leave", SpokenKind.Leave, new(leave));
        if (terms.Tempo is not { } tempo)
            yield break;
        foreach (var beat in new[] { tempo.Lower, tempo.PauseLow, tempo.Raise, tempo.PauseHigh })
            if (beat is { } seconds)
                yield return new("beat", SpokenKind.Wait, new(seconds), Domain.Verb.Move);
    }
}
