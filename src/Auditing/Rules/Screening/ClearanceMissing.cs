using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ClearanceMissing : IObjectionRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var missing = training
            .Uses.SelectMany(use => use.Against.OfType<Objection.NotCleared>().Select(objection => (use, objection)))
            // Of a sign that came back another rule tells once and for all.
            .Where(m => client.SignFor(m.objection.Condition) is null)
            .ToArray();
        foreach (var (use, objection) in missing.Where(m => m.objection.Need == ClearanceNeed.None))
        {
            yield return this.Found(
                Level.Error,
                client.Id,
                use.At,
                $"'{practice.TitleOf(use)}' needs a clearance for {practice.Of(objection.Condition).Name}"
                    + $"{(objection.With is { } with ? $", which matters with {WhatOf(with)}" : "")}: {client.Name} "
                    + $"{(objection.Condition == AlwaysAsked.Age ? "is" : "answered yes")}, and there is "
                    + $"{Older(client, objection.Condition)}.{ByTraits.Said(objection)}",
                "Take it out until a clinician has cleared it; then write that under 'clearances' in client.yaml."
                    + (objection.With is null ? "" : $" {practice.Of(objection.Condition).Basis?.Because}"),
                use.Exercise.Id.Text.Length
            );
        }

        foreach (
            var asked in missing
                .Where(m => m.objection.Need != ClearanceNeed.None)
                .GroupBy(m => (m.objection.Need, m.objection.Condition))
        )
        {
            var (need, (use, objection)) = (asked.Key.Need, asked.First());
            yield return need == ClearanceNeed.BeforeVigorous
                ? this.Found(
                    Level.Error,
                    client.Id,
                    use.At,
                    $"'{practice.TitleOf(use)}' is hard work: with {practice.Of(objection.Condition).Name} it needs a "
                        + "clearance of the "
                        + $"last {PreParticipation.VigorousMonths} months, and there is none.",
                    "Choose an effort below 70 % (7 of 10), and write it in the dose; or write the clearance of a "
                        + "clinician under 'clearances' in client.yaml.",
                    use.Exercise.Id.Text.Length
                )
                : this.Found(
                    Level.Error,
                    client.Id,
                    objection.Answer.Value.At,
                    $"{client.Name} answered yes to {practice.Of(objection.Condition).Name}: {Demand(need)}, and there is "
                        + $"{Older(client, objection.Condition)}.",
                    "Send nothing until a clinician has cleared it; then write that under 'clearances' in client.yaml."
                );
        }
    }

    /// <summary>"whatever is done", or what the work does as floor.yaml calls it.</summary>
    private static string WhatOf(string property) => property == WorkProperty.Everything ? "whatever is done" : property;

    private static string Older(Client client, ConditionId condition) =>
        client.Clearances.All(c => c.Condition != condition) ? "none"
        : client.ClearableFrom(condition) is var from && from == client.Answered
            ? $"none from {from.Iso()} on, the day of the answers"
        : $"none from {from.Iso()} on, the day after a sign that came back";

    private static string Demand(ClearanceNeed need) =>
        need == ClearanceNeed.StopUntilCleared
            ? "all training stops until a clinician has cleared it"
            : "a clinician's clearance comes before any training";
}
