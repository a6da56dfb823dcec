using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What work does to a body, by what is done and never by what it is for: a stretch may harm whether it prepares or
/// gains.</summary>
public static class WorkProperties
{
    /// <summary>What of the work a condition that everybody is asked about matters with; null where it does not matter, and for
    /// a condition of the practice's own.</summary>
    /// <param name="doses">Of the weeks that are judged, or the one at the high end.</param>
    public static string? MattersWith(Condition condition, Drill drill, IEnumerable<Dose> doses) =>
        condition.Basis is { } basis ? doses.SelectMany(dose => Of(drill, dose)).FirstOrDefault(basis.MattersFor.Contains) : null;

    /// <summary>Whether a weight is lifted, held, worn or carried, or more than a joint moves.</summary>
    public static bool IsLoaded(Drill drill, Dose dose) =>
        dose.Terms.Load is not null || drill.Stage == Stage.Load || dose.Actions.Any(a => a.Verb == Verb.Carry);

    private static IEnumerable<string> Of(Drill drill, Dose dose)
    {
        yield return WorkProperty.Everything;
        yield return Kebab.Of(drill.Position.ToString());
        foreach (var own in WorkProperty.Of(drill, dose).Concat(DoseProperties.Of(drill.Stage, dose)))
            yield return own;
        if (Hardness.IsVigorous(drill, dose))
            yield return DoseProperties.HardEffort;
        if (IsLoaded(drill, dose))
            yield return WorkProperty.Loaded;
        if (
            dose.Actions.Any(a => a.Verb.IsContraction() || a.Verb == Verb.Carry)
            || DoseProperties.HoldsForWork(drill.Stage, dose)
        )
            yield return WorkProperty.Effort;
        if (WorkProperty.GoesToTheEnd(drill, dose))
            yield return WorkProperty.EndRange;
    }
}
