using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ReadingInFuture : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from reading in client.Readings
        where reading.Date > today
        select this.Found(
            Level.Warning,
            client.Id,
            reading.At,
            $"This reading of {reading.Motion.Name} is of {reading.Date.Iso()}, a day that is still to come.",
            "Write the day on which it was taken; until then it counts for nothing.",
            reading.Date.Iso().Length
        );
}
