namespace Gradus.Domain;

/// <summary>How long a settled dose takes, by the closed formulas of <c>dose.md</c>, Arithmetic: with S sets of W seconds, rest
/// R, switch C one side takes S·W + (S − 1)·R, each side 2·(one side) + C, alternate sides S·(2W + C) + (S − 1)·max(R, C), and
/// plus n adds n·(R + W).</summary>
public static class DoseTime
{
    /// <summary>In seconds, without a limit: a dose too long for a line can be measured before it is refused.</summary>
    public static long Exact(Dose settled, DoseSettings settings)
    {
        long sets = settled.Sets.High;
        var work = settled.Parts.Sum(part =>
            part.Times.High * part.Actions.Sum(action => Action(action, settled.Terms, settings))
        );
        long rest = Rest(settled.Terms).Value;
        long change = Switch(settled.Terms, settings).Value;
        var oneSide = (sets * work) + ((sets - 1) * rest);
        var more = settled.Terms.Plus is { Sets: var plus } ? plus * (rest + work) : 0;
        return settled.Terms.Side switch
        {
            SideTerm.Each => (2 * oneSide) + change + more,
            SideTerm.Alternate => (sets * ((2 * work) + change)) + ((sets - 1) * Math.Max(rest, change)),
            _ => oneSide,
        };
    }

    /// <summary>Between the sets: 0 where none is written.</summary>
    public static Seconds Rest(DoseTerms terms) => terms.Rest ?? Seconds.Zero;

    /// <summary>Between the counted repetitions of an action: 0 where none is written.</summary>
    public static Seconds Pause(DoseTerms terms) => terms.Pause ?? Seconds.Zero;

    /// <summary>Between the sides: the practice's own where none is written.</summary>
    public static Seconds Switch(DoseTerms terms, DoseSettings settings) => terms.Switch ?? settings.Switch;

    /// <summary>One repetition of a timed action, or the whole amount of one counted in breaths, reps or metres. Metres are
    /// rounded up to whole seconds.</summary>
    public static Seconds Once(DoseAction action, DoseTerms terms, DoseSettings settings) =>
        new(checked((int)ExactOnce(action, terms, settings)));

    private static long ExactOnce(DoseAction action, DoseTerms terms, DoseSettings settings) =>
        action.Amount switch
        {
            Amount.Span(var seconds) => seconds.High,
            Amount.Breaths(var breaths) => (long)breaths.High * settings.Breath.Value,
            Amount.Reps(var reps) => (long)reps.High * (terms.Tempo?.Seconds ?? settings.Repetition).Value,
            Amount.Metres(var metres) => ((long)metres.High + settings.Carry.Value - 1) / settings.Carry.Value,
            _ => throw new ArgumentOutOfRangeException(nameof(action)),
        };

    private static long Action(DoseAction action, DoseTerms terms, DoseSettings settings)
    {
        long times = action.Times?.High ?? 1;
        return (times * ExactOnce(action, terms, settings)) + ((times - 1) * Pause(terms).Value);
    }
}
