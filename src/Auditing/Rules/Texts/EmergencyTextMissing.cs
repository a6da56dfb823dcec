using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class EmergencyTextMissing : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (practice.Card.EmergencyIn(client.Country.Value) is not null)
            yield break;
        yield return this.Found(
            Level.Error,
            client.Id,
            client.Country.At,
            $"Nothing says what {client.Name} should do in an emergency in {client.Country.Value}.",
            $"Add a line '{client.Country.Value}: {{ call: \"…\" }}' under 'emergency' in practice.md, with the number there.",
            client.Country.Value.Length
        );
    }
}
