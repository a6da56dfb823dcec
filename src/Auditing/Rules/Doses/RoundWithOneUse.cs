using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RoundWithOneUse : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from session in client.Programme.Sessions.Concat(client.Programme.Alternates)
        from block in session.Do.Where(u => u.Rounds is not null).GroupBy(u => u.Rounds)
        // What is taken from rounds may be one of their uses, which somebody chose.
        where block.Count() == 1 && session.Taken is null
        let left = client.Programme.From?.Differences.FirstOrDefault(d => d is Difference.LeaveOut && d.IsIn(session))
        select this.Found(
            Level.Warning,
            client.Id,
            left?.At ?? block.First().Rounds?.At ?? session.At,
            "These rounds have one use, so there is nothing to take turns with.",
            "Add another use under 'of', or write the use by itself, with its sets in its dose."
        );
}
