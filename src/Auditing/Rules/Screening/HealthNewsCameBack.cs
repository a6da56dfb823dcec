using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class HealthNewsCameBack : IStoppingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from entry in client.Log
        where entry.Outcome is LogOutcome.NotToday { For: NotTodayReason.Health }
        where entry.Day >= client.Answered && entry.Day <= today
        select this.Found(
            Level.Error,
            client.Id,
            entry.At,
            $"{client.Name} told of a fall, or a new injury, medicine or diagnosis, on {entry.Day.Iso()}, and the answers about "
                + $"health are of {client.Answered.Iso()}.",
            "Ask everything again before the next publishing, and write the new date under 'answered'; where it is new, a "
                + "clinician looks at it first."
        );
}
