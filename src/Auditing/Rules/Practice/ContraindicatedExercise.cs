using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ContraindicatedExercise : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        from objection in Screening.Of(practice, client, use)
        let finding = Judged(practice, client, use, objection)
        where finding is not null
        select finding;

    private static string? Instead(Practice practice, Client client, Use use) => Substitutes.For(practice, client, use) is { } other
        ? $"Take it out; '{other.Title}' ({other.Id}) would serve instead, and nothing stands against it. Read it before you choose it."
        : null;

    private Finding? Judged(Practice practice, Client client, Use use, Objection objection)
    {
        var (exercise, condition) = (use.Exercise.Title, objection.Condition.Name);
        return objection switch
        {
            Objection.Forbidden => Wrong(
                $"'{exercise}' is not done with {condition}, and {client.Name} answered yes.", Instead(practice, client, use) ?? "Take it out, or choose an exercise that does not name this condition."),
            Objection.BeyondLimit beyond => Wrong(
                $"'{exercise}' goes beyond the clearance for {condition} in week {beyond.Week.Week}: {beyond.Limit.Words}.",
                $"Write a dose within the limit; it is now '{DosePrinter.Print(beyond.Week.Dose)}'."),
            _ => null,
        };

        Finding Wrong(string message, string help) => new(RuleId.Of(GetType()), Level.Error, client.Id, use.At, message, help, use.Exercise.Id.Text.Length);
    }
}
