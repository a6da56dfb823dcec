using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class EditionOutlivesClearance : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        foreach (var condition in practice.Conditions)
        {
            if (uses.FirstOrDefault(u => Screening.RestsOnClearance(client, u, condition)) is not { } use)
                continue;
            if (Validity.ClearedUntil(client, condition.Id) is not { } until || until >= client.Programme.End)
                continue;
            if (
                uses.SelectMany(u => Screening.Of(practice, client, u))
                    .OfType<Objection.ClearanceShort>()
                    .Any(o => o.Condition == condition)
            )
                continue;
            var last = client.Clearances.Last(c => c.Condition == condition.Id && c.Until == until);
            yield return new(
                RuleId.Of(GetType()),
                Level.Error,
                client.Id,
                last.At,
                $"The clearance for {condition.Name}, on which '{use.Exercise.Title}' rests, ends on {until.Iso()}, but "
                    + $"the pages that show it are in use until {client.Programme.End.Iso()}.",
                "Ask for a clearance that lasts as long as the programme, or end the programme with this one and begin "
                    + "another without the exercise."
            );
        }
    }
}
