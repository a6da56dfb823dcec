using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class EditionOutlivesClearance : IObjectionRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        foreach (var condition in practice.Conditions)
        {
            if (training.Uses.FirstOrDefault(u => Screening.RestsOnClearance(practice, client, u, condition)) is not { } use)
                continue;
            if (Validity.ClearedUntil(client, condition) is not { } until || until >= client.Programme.End)
                continue;
            if (training.Uses.SelectMany(u => u.Against).OfType<Objection.ClearanceShort>().Any(o => o.Condition == condition.Id))
                continue;
            var last = client.Clearances.Last(c => c.Condition == condition.Id && c.Until == until);
            yield return this.Found(
                Level.Error,
                client.Id,
                last.At,
                $"The clearance for {condition.Name}, on which '{practice.TitleOf(use)}' rests, ends on {until.Iso()}, but "
                    + $"the pages that show it are valid until {client.Programme.End.Iso()}.",
                "Ask for a clearance that lasts as long as the programme, or end the programme with this one and begin "
                    + "another without the exercise."
            );
        }
    }
}
