using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class YesWithoutEffect : IClientRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        foreach (var condition in practice.Conditions.Where(c => c.IsAlwaysAsked && c.Id != AlwaysAsked.RegularlyActive))
        {
            if (client.AnswerTo(condition.Id) is not { } answer)
                continue;
            if (
                answer.Reply is Reply.Yes
                && PreParticipation.For(client, condition.Id) == ClearanceNeed.None
                && !practice.NamedConditions.Contains(condition.Id)
                && !training.Uses.Any(u => Screening.RestsOnClearance(practice, client, u, condition))
            )
                yield return Said(
                    answer,
                    $"{client.Name} answered yes to {condition.Name}, and no exercise of the library names it.",
                    "See whether every exercise suits that, and name the condition where one does not."
                );
        }

        Finding Said(Answer answer, string message, string help) =>
            this.Found(Level.Warning, client.Id, answer.At, message, help);
    }
}
