namespace Gradus.Domain;

/// <summary>The terms by name, in the order the printer writes them.</summary>
public enum TermName
{
    Rest,
    Pause,
    Switch,
    Side,
    Plus,
    Tempo,
    Load,
    Leave,
}

/// <summary>Whether the terms of a dose have something to act on, at its high end.</summary>
public static class TermEffect
{
    /// <summary>The terms that are written and do nothing: rest with one set and no plus, pause without a count above 1 before a
    /// verb, switch without each or alternate sides, tempo and leave without reps. A plus without each side is not among
    /// them.</summary>
    public static IEnumerable<TermName> Idle(Dose dose)
    {
        var terms = dose.Terms;
        if (terms.Rest is not null && dose.Sets.High == 1 && terms.Plus is null)
            yield return TermName.Rest;
        if (terms.Pause is not null && !dose.Actions.Any(a => a.Times is { High: > 1 }))
            yield return TermName.Pause;
        if (terms.Switch is not null && terms.Side is not (SideTerm.Each or SideTerm.Alternate))
            yield return TermName.Switch;
        if (dose.Actions.Any(a => a.Amount is Amount.Reps))
            yield break;
        if (terms.Tempo is not null)
            yield return TermName.Tempo;
        if (terms.Leave is not null)
            yield return TermName.Leave;
    }

    /// <summary>The dose without the terms that do nothing, and without a plus that has no each side.</summary>
    public static Dose DropIdle(Dose dose)
    {
        if (dose.Terms.Side is not SideTerm.Each)
            dose = dose with { Terms = dose.Terms with { Plus = null } };
        return Idle(dose).ToArray().Aggregate(dose, (kept, idle) => kept with { Terms = Without(kept.Terms, idle) });
    }

    private static DoseTerms Without(DoseTerms terms, TermName idle) =>
        idle switch
        {
            TermName.Rest => terms with { Rest = null },
            TermName.Pause => terms with { Pause = null },
            TermName.Switch => terms with { Switch = null },
            TermName.Tempo => terms with { Tempo = null },
            TermName.Leave => terms with { Leave = null },
            _ => throw new ArgumentOutOfRangeException(nameof(idle)),
        };
}
