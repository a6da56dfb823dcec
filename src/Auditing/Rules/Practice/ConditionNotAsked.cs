using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ConditionNotAsked : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        from objection in Screening.Of(practice, client, use).OfType<Objection.NotAsked>()
        group use by objection.Condition into asked
        select new Finding(
            RuleId.Of(GetType()), Level.Error, client.Id, asked.First().At,
            $"{client.Name} has not been asked about {asked.Key.Name}, which matters for '{asked.First().Exercise.Title}'.",
            $"Ask: \"{asked.Key.Question}\" Then write {asked.Key.Id}: yes or {asked.Key.Id}: no under 'answers' in client.yaml, as it was answered.", asked.First().Exercise.Id.Text.Length);
}
