using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class WeekWithoutTraining : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (training.Uses.Any(u => u.Weeks.Count == 0))
            yield break;
        var trained = training
            .Uses.Where(u => u.Session <= client.Programme.Sessions.Count)
            .SelectMany(u => u.Weeks)
            .Select(w => w.Week)
            .ToHashSet();
        var empty = Enumerable.Range(1, client.Programme.Weeks).Where(w => !trained.Contains(w)).ToArray();
        if (empty.Length == 0 || trained.Count == 0)
            yield break;
        var weeks = empty.Length == 1 ? $"week {empty[0]}" : $"weeks {string.Join(", ", empty.SkipLast(1))} and {empty[^1]}";
        yield return this.Found(
            Level.Warning,
            client.Id,
            client.Programme.At,
            $"{client.Name} has nothing to do in {weeks}: no use reaches there.",
            "Let a use go on through these weeks, begin or end the programme without them, or accept this if the break is meant."
        );
    }
}
