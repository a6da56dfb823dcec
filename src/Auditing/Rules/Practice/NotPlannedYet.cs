using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class NotPlannedYet : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        if (client.Sports.Count > 1)
            yield return Wrong(client, client.Sports[1].Sport.At, $"{client.Name} plays two sports, and pages know the sides of one so far.", "Keep one sport under 'sports'.");
    }

    private Finding Wrong(Client client, Location at, string message, string help) => new(RuleId.Of(GetType()), Level.Error, client.Id, at, message, help);
}
