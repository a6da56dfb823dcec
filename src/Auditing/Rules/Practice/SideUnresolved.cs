using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class SideUnresolved : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        var playing = Playing.Of(practice, client);
        if (playing.Sports.Count < client.Sports.Count)
            yield break;
        foreach (var use in uses)
        {
            if (Unknown(use, playing) is { } name)
                yield return playing.NamesFor(name) is { Count: > 1 } names
                    ? Doubtful(client, use, name, names)
                    : Nameless(client, use, name, playing);
            else if (use.Exercise.Trains.IsPaired && use.Weeks.Any(w => w.Dose.Terms.Side is null))
                yield return Wrong(
                    client,
                    use,
                    $"Nothing says on which side '{use.Exercise.Title}' is done.",
                    "Add 'side:' here, or a side to the dose of the exercise, as each side."
                );
        }
    }

    private static string? Unknown(Use use, Playing playing) =>
        use
            .Weeks.SelectMany(w => new[] { (w.Dose.Terms.Side as SideTerm.On)?.Name, w.Dose.Terms.Plus?.Side })
            .FirstOrDefault(name => name is not null && playing.Resolve(name) is null);

    private Finding Doubtful(Client client, Use use, string name, Series<string> names) =>
        Wrong(
            client,
            use,
            $"'{name}' may be more than one role that {client.Name} has.",
            $"Write which: {string.Join(" or ", names)}."
        );

    private Finding Nameless(Client client, Use use, string name, Playing playing) =>
        Wrong(
            client,
            use,
            $"'{name}' is no side that {string.Join(" or ", playing.Sports.Select(s => s.Sport.Name))} knows.",
            Nearest.Ask(name, playing.Names, $"Write one of: {string.Join(", ", playing.Names)}.")
        );

    private Finding Wrong(Client client, Use use, string message, string help)
    {
        var at = use.Written.Side?.At ?? use.At;
        return new(
            RuleId.Of(GetType()),
            Level.Error,
            client.Id,
            at,
            message,
            help,
            (use.Written.Side?.Value ?? use.Exercise.Id.Text).Length
        );
    }
}
