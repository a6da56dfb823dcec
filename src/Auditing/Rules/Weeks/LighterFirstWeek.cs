using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class LighterFirstWeek : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (client.Programme.Lighter.Contains(1))
            yield return this.Found(
                Level.Warning,
                client.Id,
                client.Programme.LighterAt,
                "The first week is a lighter one, and there is nothing yet to be lighter than.",
                "Take week 1 out of 'lighter', and begin with the dose that you mean."
            );
    }
}
