using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ConditionLeftOut : IPracticeRule, IClientRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises
        let left = practice
            .Conditions.Select(c => (Condition: c, Property: Omission.Of(c, exercise)))
            .Where(l => l.Property is not null)
            .ToArray()
        where left.Length > 0
        select Wrong(
            Level.Warning,
            null,
            exercise.At,
            $"'{exercise.Title}' does not say what comes of a yes to what matters with "
                + $"{string.Join(" and ", left.Select(l => l.Property).Distinct())}: "
                + $"{string.Join("; ", left.Select(l => l.Condition.Name))}.",
            $"Name under not-with or clear-first: {string.Join(", ", left.Select(l => l.Condition.Id))}."
        );

    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        from left in Screening.Of(practice, client, use).OfType<Objection.LeftOut>()
        select Wrong(
            Level.Error,
            client.Id,
            use.At,
            $"{client.Name} answered yes to {left.Condition.Name}, and '{use.Exercise.Title}', with which that matters "
                + $"({left.Property}), does not say what comes of it.",
            $"Take it out, or name {left.Condition.Id} under not-with or clear-first of the exercise. "
                + $"{left.Condition.Basis?.Because}",
            use.Exercise.Id.Text.Length
        );

    private Finding Wrong(Level level, ClientId? client, Location at, string message, string help, int length = 1) =>
        new(RuleId.Of(GetType()), level, client, at, message, help, length);
}
