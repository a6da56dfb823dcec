using Gradus.Auditing.Sources;
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
        select Said(
            Level.Warning,
            null,
            exercise.At,
            $"'{exercise.Title}' does not say what comes of a yes to what matters with "
                + $"{string.Join(" and ", left.Select(l => l.Property).Distinct())}: "
                + $"{string.Join("; ", left.Select(l => l.Condition.Name))}.",
            $"Name under not-with or clear-first: {string.Join(", ", left.Select(l => l.Condition.Id))}."
        );

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        from left in use.Against.OfType<Objection.LeftOut>()
        let condition = practice.Of(left.Condition)
        select Said(
            Level.Error,
            client.Id,
            use.At,
            $"{client.Name} answered yes to {condition.Name}, and '{practice.TitleOf(use)}', with which that matters "
                + $"({left.Property}), does not say what comes of it.",
            $"Take it out, or name {condition.Id} under not-with or clear-first of the exercise. "
                + $"{condition.Basis?.Because}",
            use.Exercise.Id.Text.Length
        );

    private Finding Said(Level level, ClientId? client, Location at, string message, string help, int length = 1) =>
        this.Found(level, client, at, message, help, length);
}
