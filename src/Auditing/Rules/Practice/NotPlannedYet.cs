using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class NotPlannedYet : IClientRule
{
    private const string Help = "Take it out for now, and write the uses one after another under 'do'.";

    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        if (client.Sports.Count > 1)
            yield return Wrong(client, client.Sports[1].Sport.At, $"{client.Name} plays two sports, and pages know the sides of one so far.", "Keep one sport under 'sports'.");
        foreach (var alternate in client.Programme.Alternates)
            yield return Wrong(client, alternate.At, $"The alternate session '{alternate.Name}' is read, but no page shows it yet.", "Take it out for now.");
        foreach (var use in client.Programme.Sessions.SelectMany(s => s.Do))
        {
            if (use.Rounds is not null) yield return Wrong(client, use.Rounds.At, "Rounds are read, but no page shows them yet.", Help);
            foreach (var version in use.Versions)
                yield return Wrong(client, version.At, "An easier or harder version in a week is read, but no page shows it yet.", "Write a second use of that exercise, with from-week and until-week.");
        }
    }

    private Finding Wrong(Client client, Location at, string message, string help) => new(RuleId.Of(GetType()), Level.Error, client.Id, at, message, help);
}
