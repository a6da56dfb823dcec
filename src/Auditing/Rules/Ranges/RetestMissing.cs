using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RetestMissing : IClientRule
{
    /// <summary>Weeks of gaining after which something can be seen of it; common practice, no source.</summary>
    private const int Weeks = 4;

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (client.Programme.Retest is not null || ClientRanges.AreVeryMobile(client))
            return [];
        var gained = PlannedWork
            .Of(client, training)
            .Where(w => w.Stage == Stage.Gain && practice.WaysToMeasure(w.Motion).Any())
            .GroupBy(w => w.Motion)
            .Where(motion => motion.Max(w => w.Week) - motion.Min(w => w.Week) + 1 >= Weeks)
            .Select(motion => motion.Key.Name)
            .ToArray();
        return gained.Length == 0
            ? []
            :
            [
                this.Found(
                    Level.Note,
                    client.Id,
                    client.Programme.At,
                    $"This programme gains {string.Join(" and ", gained)} for {Weeks} weeks or longer, and does not "
                        + "say when it is measured again.",
                    "Write retest: with a day, as 2026-12-07, or the number of a week."
                ),
            ];
    }
}
