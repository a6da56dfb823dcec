using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ConditionNotAsked : IObjectionRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        foreach (var condition in practice.Conditions.Where(c => client.AnswerTo(c.Id) is null))
        {
            if (training.Uses.FirstOrDefault(u => Waits(practice.Of(u.Exercise.Id), u, condition)) is { } use)
                yield return Said(
                    client,
                    condition,
                    use.At,
                    use.Exercise.Id.Text.Length,
                    $"{client.Name} has not been asked about {condition.Name}, which matters for '{practice.TitleOf(use)}'."
                );
            else if (condition.IsAlwaysAsked)
                yield return Said(
                    client,
                    condition,
                    client.At,
                    1,
                    $"{client.Name} has not been asked about {condition.Name}, and everybody is asked that before any training."
                );
        }
    }

    /// <summary>Whether the use waits for that answer for its own sake, not only because everybody is asked.</summary>
    private static bool Waits(Exercise exercise, Use use, Condition condition) =>
        (exercise.Contraindications.Any(c => c.Value == condition.Id) || Screening.MayLoad(condition, exercise))
        && use.Against.OfType<Objection.NotAsked>().Any(o => o.Condition == condition.Id);

    private Finding Said(Client client, Condition condition, Location at, int length, string message) =>
        this.Found(
            Level.Error,
            client.Id,
            at,
            message,
            $"Ask: \"{condition.Question}\" Then write {Replies(condition.Id)} "
                + "under 'answers' in client.yaml, as it was answered.",
            length
        );

    private static string Replies(ConditionId id) =>
        id == AlwaysAsked.PainNow ? $"{id}: 0, or how much and where, as {id}: 4 left knee," : $"{id}: yes or {id}: no";
}
