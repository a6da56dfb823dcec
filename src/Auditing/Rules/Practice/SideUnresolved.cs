using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class SideUnresolved : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        var sport = practice.Find(client.Sport.Value);
        if (sport is null) yield break;
        foreach (var use in uses)
        {
            if (Unknown(use, sport, client.Stance) is { } name)
                yield return Wrong(client, use, $"'{name}' is no side that {sport.Name} knows.", Nearest.Ask(name, SideNames.Of(sport), $"Write one of: {string.Join(", ", SideNames.Of(sport))}."));
            else if (use.Exercise.Trains.IsPaired && use.Weeks.Any(w => w.Dose.Terms.Side is null))
                yield return Wrong(client, use, $"Nothing says on which side '{use.Exercise.Title}' is done.", "Add 'side:' here, or a side to the dose of the exercise, as each side.");
        }
    }

    private static string? Unknown(Use use, Sport sport, Side stance) => use.Weeks
        .SelectMany(w => new[] { (w.Dose.Terms.Side as SideTerm.On)?.Name, w.Dose.Terms.Plus?.Side })
        .FirstOrDefault(name => name is not null && SideNames.Resolve(name, sport, stance) is null);

    private Finding Wrong(Client client, Use use, string message, string help)
    {
        var at = use.Written.Side?.At ?? use.At;
        return new(RuleId.Of(GetType()), Level.Error, client.Id, at, message, help, (use.Written.Side?.Value ?? use.Exercise.Id.Text).Length);
    }
}
