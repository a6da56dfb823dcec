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
        foreach (var own in drill.Properties.Concat(DoseProperties.Of(dose)))
            yield return own;
        if (Hardness.IsVigorous(drill, dose))
            yield return DoseProperties.HardEffort;
        if (IsLoaded(drill, dose))
            yield return WorkProperty.Loaded;
        if (drill.Position is Position.HandsAndKnees or Position.Hanging)
            yield return WorkProperty.WeightOnHands;
        if (GoesToTheEnd(drill, dose))
            yield return WorkProperty.EndRange;
        if (BendsTheTrunk(drill, dose))
            yield return WorkProperty.TrunkEndRange;
    }

    /// <summary>Whether the trunk is bent or turned to its end.</summary>
    public static bool BendsTheTrunk(Drill drill, Dose dose) =>
        drill.Properties.Contains(WorkProperty.TrunkEndRange)
        || (drill.Trains.Region is { IsSpine: true } && GoesToTheEnd(drill, dose));

    /// <summary>Whoever holds, raises or moves may come to the end of the joint, unless the coach says otherwise; so does a push
    /// in a place where range is gained or its end controlled.</summary>
    private static bool GoesToTheEnd(Drill drill, Dose dose) =>
        !drill.Properties.Contains(WorkProperty.MidRange)
        && (
            drill.Stage is Stage.Gain or Stage.Control && dose.Actions.Any(a => a.Verb is not Verb.Breathe)
            || dose.Actions.Any(a => a.Verb is Verb.Hold or Verb.Raise or Verb.Move)
            || drill.Properties.Contains(WorkProperty.SitsOnHeels)
        );
}
