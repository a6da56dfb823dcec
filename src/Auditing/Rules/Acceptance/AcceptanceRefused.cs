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
                    ? Said(
                        refused,
                        $"There is no rule '{rule}' to accept.",
                        refused.Nearest is { } near ? $"Did you mean '{near}'?" : "'gradus explain' lists all rules."
                    )
                    : Said(
                        refused,
                        $"'{rule}' is an error in {refused.Acceptance.File}, and an error cannot be accepted.",
                        "Fix what it reports, and take this entry out."
                    );
            });

    private Finding Said(Accepted refused, string message, string help) =>
        this.Found(Level.Error, null, refused.Acceptance.At, message, help, refused.Acceptance.Rule.Text.Length);
}
