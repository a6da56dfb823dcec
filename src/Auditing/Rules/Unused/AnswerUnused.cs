using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class AnswerUnused : IPracticeRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        var asked = Screening.Asked(practice).Select(c => c.Id).ToHashSet();
        return from client in practice.Clients
            from answer in client.Answers
            where !asked.Contains(answer.Condition)
            select this.Found(
                Level.Note,
                client.Id,
                answer.At,
                $"{client.Name} answered about {practice.Find(answer.Condition)?.Name ?? answer.Condition.Text}, which "
                    + "matters for no exercise of the library.",
                "Name it under 'not-with' or 'clear-first' of the exercises it matters for, or take the answer out: what "
                    + "nobody needs is not kept."
            );
    }
}
