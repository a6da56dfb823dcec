using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class YouthWithoutSign : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (
            client.Born.IsIn(AgeBand.Under18, client.Programme)
            && !practice.Cautions.Any(c => c.AttachesTo is { Age: AgeBand.Under18 })
        )
            yield return this.Found(
                Level.Warning,
                client.Id,
                client.At,
                $"{client.Name} is under 18, and no caution speaks of bones that still grow.",
                "Write a caution with 'attaches-to: { age: under-18 }': pain at the back of the heel or just below the kneecap."
            );
    }
}
