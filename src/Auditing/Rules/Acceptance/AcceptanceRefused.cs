using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class AcceptanceRefused : IAcceptanceRule
{
    public IEnumerable<Finding> Check(Series<Accepted> accepted, DateOnly today) =>
        accepted
            .Where(a => a.IsRefused)
            .Select(refused =>
            {
                var rule = refused.Acceptance.Rule.Text;
                return refused.Known is null
                    ? Wrong(
                        refused,
                        $"There is no rule '{rule}' to accept.",
                        refused.Nearest is { } near ? $"Did you mean '{near}'?" : "'gradus explain' lists all rules."
                    )
                    : Wrong(
                        refused,
                        $"'{rule}' is an error in {refused.Acceptance.File}, and an error cannot be accepted.",
                        "Put right what it finds, and take this entry out."
                    );
            });

    private Finding Wrong(Accepted refused, string message, string help) =>
        new(RuleId.Of(GetType()), Level.Error, null, refused.Acceptance.At, message, help, refused.Acceptance.Rule.Text.Length);
}
