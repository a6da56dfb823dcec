namespace Gradus.Domain;

/// <summary>Makes a dose with ranges into one with single numbers.</summary>
internal static class SettledDose
{
    /// <summary>The dose with each range replaced by the number picked from it, without the terms that have nothing to act on
    /// then. The seconds of a ramp of k steps are k times the number picked from (low/k to high/k), so that k still divides
    /// them.</summary>
    public static Dose At(Dose dose, Func<Count, int> pick)
    {
        Count Number(Count range) => new(pick(range));

        DoseAction Action(DoseAction action) =>
            new(action.Times is { } times ? Number(times) : null, action.Verb, AmountOf(action), EffortOf(action.Effort));

        Amount AmountOf(DoseAction action) =>
            action.Amount switch
            {
                Amount.Span(var seconds) when action.Effort is Effort.Ramp { Steps: var k } => new Amount.Span(
                    new Count(k * pick(new Count(seconds.Low / k, seconds.High / k)))
                ),
                Amount.Span(var seconds) => new Amount.Span(Number(seconds)),
                Amount.Breaths(var breaths) => new Amount.Breaths(Number(breaths)),
                Amount.Reps(var reps) => new Amount.Reps(Number(reps)),
                Amount.Metres(var metres) => new Amount.Metres(Number(metres)),
                var other => throw new ArgumentOutOfRangeException(nameof(dose), other, "An unknown amount."),
            };

        Effort? EffortOf(Effort? effort) =>
            effort switch
            {
                Effort.Steady(var percent) => new Effort.Steady(Number(percent)),
                Effort.Ramp(var first, var last, var steps) => new Effort.Ramp(Number(first), Number(last), steps),
                _ => effort,
            };

        DosePart Part(DosePart part) =>
            part switch
            {
                DosePart.Group(var times, var actions) => new DosePart.Group(Number(times), actions.Select(Action).ToSeries()),
                DosePart.Single(var action) => new DosePart.Single(Action(action)),
                _ => throw new ArgumentOutOfRangeException(nameof(dose), part, "An unknown part."),
            };

        return TermEffect.DropIdle(dose with { Sets = Number(dose.Sets), Parts = dose.Parts.Select(Part).ToSeries() });
    }
}
