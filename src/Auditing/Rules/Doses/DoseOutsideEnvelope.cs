using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DoseOutsideEnvelope : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        where use.Version is null
        let exercise = practice.Of(use.Exercise.Id)
        from line in use.Written.ByWeek
        // A lighter week may be below the low end, and so may a share of the sets.
        let isLess = client.Programme.Lighter.Contains(line.Week)
            || client.Programme.AllSessions[use.Session - 1].Taken is not null
        from departure in Departures(exercise.Dose.Dose, line.Dose.Dose, use.Written.Rounds)
        where departure.Side == DepartureSide.Hard || !isLess
        select this.Found(
            departure.Side == DepartureSide.Hard ? Level.Error : Level.Note,
            client.Id,
            line.Dose.At,
            $"Week {line.Week} of '{exercise.Title}': {departure.Words}.",
            $"Stay inside '{exercise.Dose.Line}', or widen it in {exercise.At.File} if you mean it for everybody.",
            line.Dose.Line.Length
        );

    /// <summary>In rounds the sets are as many as the rounds, and the rest is not the exercise's.</summary>
    private static Series<Departure> Departures(Dose? envelope, Dose? line, Rounds? rounds)
    {
        if (envelope is null || line is null)
            return [];
        if (rounds is not null)
            line = line with { Sets = new(rounds.Times), Terms = line.Terms with { Rest = null } };
        return Envelope.Compare(envelope, DoseInheritance.Complete(line, envelope));
    }
}
