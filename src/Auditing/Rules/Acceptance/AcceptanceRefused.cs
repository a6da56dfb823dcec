using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class AcceptanceRefused : IAcceptanceRule
{
    public IEnumerable<Finding> Check(Series<Accepted> accepted, DateOnly today) =>
        accepted
            .Where(a => a.IsRefused || a.IsTooLong(today))
            .Select(refused =>
            {
                var rule = refused.Acceptance.Rule.Text;
                if (!refused.IsRefused && refused.Days is { } days)
                    return Said(
                        refused,
                        FormattableString.Invariant($"'{rule}' can be accepted for {days} days at most, and here it is until ")
                            + $"{refused.Acceptance.Until.Iso()}.",
                        $"Write {today.AddDays(days).Iso()} or an earlier day, and put it right until then."
                    );
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
