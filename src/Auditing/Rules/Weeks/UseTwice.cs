using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class UseTwice : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from session in client.Programme.Sessions.Concat(client.Programme.Alternates)
        where session.Taken is null
        from later in session.Do.Index()
        where session.Do.Take(later.Index).Any(earlier => IsSame(earlier, later.Item))
        select this.Found(
            Level.Warning,
            client.Id,
            later.Item.Exercise.At,
            $"'{later.Item.Name}' stands twice in '{session.Name}', and nothing tells one from the other.",
            "Take one of them out; or, where it is done twice, give the second a name of its own, as 'as: once more'.",
            later.Item.Exercise.Value.Text.Length
        );

    /// <summary>Whether they are one thing in some week: what has another name or side, or goes around in rounds, is meant as it
    /// stands.</summary>
    private static bool IsSame(ProgrammeUse one, ProgrammeUse other) =>
        one.Name == other.Name
        && one.Side?.Value.Written == other.Side?.Value.Written
        && one.Rounds is null
        && other.Rounds is null
        && !IsOver(one, other)
        && !IsOver(other, one);

    private static bool IsOver(ProgrammeUse one, ProgrammeUse before) => one.UntilWeek < (before.FromWeek ?? 1);
}
