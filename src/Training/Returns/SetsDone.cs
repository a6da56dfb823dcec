using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>The sets of one motion and side in the sessions that were done in one week.</summary>
/// <param name="Side">Null where the dose has no sides.</param>
/// <param name="Planned">Of the same sessions; only of exercises of which the log says how many sets were done.</param>
public sealed record SetsDone(Motion Motion, Side? Side, int Week, int Done, int Planned)
{
    public bool IsMore => Done > Planned;

    /// <summary>By motion in the order of the programme, side, and week.</summary>
    public static Series<SetsDone> Of(Client client, Training training, CountedLog log)
    {
        var order = training.Uses.Select(u => u.Exercise.Trains).Distinct().ToList();
        return (
            from entry in log.Done
            from line in entry.Exercises
            where line.Sets is not null
            from plan in PlanOf(training, entry, line)
            group (Done: line.Sets ?? 0, plan.Sets) by (
                plan.Motion,
                plan.Side,
                Week: client.Programme.WeekOf(entry.Day)
            ) into same
            orderby order.IndexOf(same.Key.Motion), same.Key.Side, same.Key.Week
            select new SetsDone(same.Key.Motion, same.Key.Side, same.Key.Week, same.Sum(s => s.Done), same.Sum(s => s.Sets))
        ).ToSeries();
    }

    /// <summary>What the plan has of that line, side by side. A line without a side tells of both.</summary>
    internal static IEnumerable<(Motion Motion, Side? Side, int Sets)> PlanOf(
        Training training,
        LogEntry entry,
        LoggedExercise line
    ) =>
        from use in training.Uses
        where use.Session == entry.Session && use.Exercise.Id == line.Exercise
        from week in use.Weeks
        where week.Week == entry.Week
        from side in SidesOf(week.Dose)
        where line.Side is null || side.Side is null || side.Side == line.Side
        group side.Sets by (use.Exercise.Trains, side.Side) into same
        select (same.Key.Trains, same.Key.Side, same.Sum());

    private static IEnumerable<(Side? Side, int Sets)> SidesOf(SettledDose dose) =>
        dose.Sides.Order switch
        {
            SideOrder.None => [(null, dose.Sets)],
            SideOrder.One => [(dose.Sides.First, dose.Sets)],
            SideOrder.Each or SideOrder.Alternate or SideOrder.Both =>
            [
                (dose.Sides.First, dose.Sets + dose.Sides.MoreOnFirst),
                (dose.Sides.First.Other(), dose.Sets),
            ],
        };
}
