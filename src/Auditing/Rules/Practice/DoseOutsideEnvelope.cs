using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DoseOutsideEnvelope : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        where use.Version is null
        from line in use.Written.ByWeek
        from departure in Departures(use.Exercise.Dose.Dose, line.Dose.Dose, use.Written.Rounds)
        select new Finding(
            RuleId.Of(GetType()),
            departure.Side == DepartureSide.Hard ? Level.Error : Level.Note,
            client.Id,
            line.Dose.At,
            $"Week {line.Week} of '{use.Exercise.Title}': {departure.Words}.",
            $"Stay inside '{use.Exercise.Dose.Line}', or widen it in {use.Exercise.At.File} if you mean it for everybody.",
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
