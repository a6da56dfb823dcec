using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ConditionNotAsked : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        foreach (var condition in practice.Conditions.Where(c => client.AnswerTo(c.Id) is null))
        {
            if (uses.FirstOrDefault(u => Waits(practice, client, u, condition)) is { } use)
                yield return Wrong(
                    client,
                    condition,
                    use.At,
                    use.Exercise.Id.Text.Length,
                    $"{client.Name} has not been asked about {condition.Name}, which matters for '{use.Exercise.Title}'."
                );
            else if (condition.IsAlwaysAsked)
                yield return Wrong(
                    client,
                    condition,
                    client.At,
                    1,
                    $"{client.Name} has not been asked about {condition.Name}, and everybody is asked that before any training."
                );
        }
    }

    /// <summary>Whether the use waits for that answer for its own sake, not only because everybody is asked.</summary>
    private static bool Waits(Practice practice, Client client, Use use, Condition condition) =>
        (use.Exercise.Contraindications.Any(c => c.Value == condition.Id) || Screening.MayLoad(condition, use.Exercise))
        && Screening.Of(practice, client, use).OfType<Objection.NotAsked>().Any(o => o.Condition == condition);

    private Finding Wrong(Client client, Condition condition, Location at, int length, string message) =>
        new(
            RuleId.Of(GetType()),
            Level.Error,
            client.Id,
            at,
            message,
            $"Ask: \"{condition.Question}\" Then write "
                + $"{(condition.Id == AlwaysAsked.PainNow ? $"{condition.Id}: 0, or how much and where, as {condition.Id}: 4 left knee," : $"{condition.Id}: yes or {condition.Id}: no")} under 'answers' in client.yaml, as it was answered.",
            length
        );
}
