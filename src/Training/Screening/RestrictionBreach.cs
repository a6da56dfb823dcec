using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>A use that does what a clinician asked to be left out.</summary>
/// <param name="Limit">The one that it goes beyond; null where it is not to be done at all.</param>
/// <param name="Week">The first in which it does.</param>
public sealed record RestrictionBreach(Aside<Restriction> Restriction, ClearanceLimit? Limit, WeekDose Week)
{
    /// <param name="exercise">That of the use, with what it needs and how it looks; null where it could not be read.</param>
    internal static IEnumerable<RestrictionBreach> Of(DoseSettings settings, Client client, Use use, Exercise? exercise) =>
        from restriction in client.Restrictions
        where IsAbout(restriction, use, exercise)
        from limit in restriction.Limits.Select(l => (ClearanceLimit?)l).DefaultIfEmpty(null)
        let week = use.Weeks.FirstOrDefault(w =>
            client.Programme.Calendar.DaysOf(w.Week).Any(day => restriction.On <= day && day <= restriction.Until)
            && (limit is null || ClearanceCheck.IsBeyond(limit, w.Dose, use.Exercise, settings))
        )
        where week is not null
        select new RestrictionBreach(Aside.Of(restriction), limit, week);

    /// <summary>Whether it bears the joint, or goes into the movement; where both are named, both.</summary>
    private static bool IsAbout(Restriction restriction, Use use, Exercise? exercise) =>
        (restriction.Joint is not { } joint || use.Bears(joint, restriction.Side))
        && (restriction.Movement is not { } motion || use.Exercise.Trains.Name == motion || exercise?.GoesInto(motion) == true);
}
