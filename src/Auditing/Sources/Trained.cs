using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing.Sources;

/// <summary>One motion and side that a use trains, and the first week and last week in which it does.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
internal sealed record Trained(Motion Motion, Side? Side, Use Use, int From, int Until)
{
    public Stage Stage => Use.Exercise.Stage;

    /// <summary>Everything that the programme's own sessions train.</summary>
    public static Series<Trained> Of(Client client, Training training) =>
        (
            from use in training.Uses
            where use.Session <= client.Programme.Sessions.Count
            from week in use.Weeks
            from side in week.BySide
            group week.Week by (use, side.Side) into weeks
            select new Trained(weeks.Key.use.Exercise.Trains, weeks.Key.Side, weeks.Key.use, weeks.Min(), weeks.Max())
        ).ToSeries();

    /// <summary>"ankle dorsiflexion, left", "ankle dorsiflexion, left and right", "spine flexion".</summary>
    public static string Named(Motion motion, IEnumerable<Side?> sides)
    {
        var words = sides.OfType<Side>().Distinct().Order().Select(s => s.Word()).ToArray();
        return words.Length == 0 ? motion.Name : $"{motion.Name}, {string.Join(" and ", words)}";
    }
}
