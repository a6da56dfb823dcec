using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DoseTooLong : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        let week = use.Weeks.FirstOrDefault(w => DoseBounds.IsTooLong(w.Dose, practice.Card.Settings.Dose))
        where week is not null
        select new Finding(
            RuleId.Of(GetType()),
            Level.Error,
            client.Id,
            week.At,
            $"'{use.Exercise.Title}' takes more than 4 hours in week {week.Week}: {DosePrinter.Print(week.Dose)}.",
            "Lower the sets, the time or the rest; what the line does not name comes from the exercise.",
            week.Line?.Line.Length ?? 1
        );
}
