using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class AnswerUnused : IClientRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        var asked = practice.Exercises.SelectMany(e => e.Contraindications).Select(c => c.Value).ToHashSet();
        return from answer in client.Answers
               where !asked.Contains(answer.Condition)
               select new Finding(
                   RuleId.Of(GetType()), Level.Note, client.Id, answer.At,
                   $"{client.Name} answered about {practice.Find(answer.Condition)?.Name ?? answer.Condition.Text}, which matters for no exercise of the library.",
                   "Name it under 'not-with' or 'clear-first' of the exercises it matters for, or take the answer out: what nobody needs is not kept.");
    }
}
