using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What the programme's own sessions do for each motion and side in each week. Planned counts as done until a log says
/// otherwise.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
public sealed record PlannedWork(Motion Motion, Side? Side, Stage Stage, int Week, DateOnly From, DateOnly Until)
{
    public static Series<PlannedWork> Of(Client client, Training training) =>
        (
            from use in training.Uses
            where use.Session <= client.Programme.Sessions.Count
            from week in use.Weeks
            from side in use.Exercise.Trains.IsPaired ? week.Dose.Sides.All.Select(s => (Side?)s) : [null]
            select new PlannedWork(
                use.Exercise.Trains,
                side,
                use.Exercise.Stage,
                week.Week,
                client.Programme.FirstDayOf(week.Week),
                client.Programme.LastDayOf(week.Week)
            )
        )
            .Distinct()
            .ToSeries();

    /// <summary>The motions that are gained and can be measured, each once.</summary>
    internal static IEnumerable<Motion> Gained(Series<PlannedWork> work, Practice practice) =>
        work.Where(w => w.Stage == Stage.Gain && practice.WaysToMeasure(w.Motion).Any()).Select(w => w.Motion).Distinct();

    /// <summary>Whether it works what that measure measures, on that side.</summary>
    public bool Works(Measure measure, Side? side) => Motion.Name == measure.Trained && Side == side;
}
