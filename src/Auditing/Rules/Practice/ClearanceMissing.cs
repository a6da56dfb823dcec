using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ClearanceMissing : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        from objection in Screening.Of(practice, client, use).OfType<Objection.NotCleared>()
        select new Finding(
            RuleId.Of(GetType()), Level.Error, client.Id, use.At,
            $"'{use.Exercise.Title}' needs a clearance for {objection.Condition.Name}: {client.Name} answered yes, and there is none.",
            "Take it out until a clinician has cleared it; then write that under 'clearances' in client.yaml.", use.Exercise.Id.Text.Length);
}
