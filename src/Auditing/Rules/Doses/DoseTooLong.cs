using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DoseTooLong : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        let week = use.Weeks.FirstOrDefault(w => w.Counted is null)
        where week is not null
        select this.Found(
            Level.Error,
            client.Id,
            week.At,
            $"'{practice.TitleOf(use)}' takes more than 4 hours in week {week.Week}: {week.Dose}.",
            "Lower the sets, the time or the rest; what the line does not name comes from the exercise.",
            week.Line?.Line.Length ?? 1
        );
}
