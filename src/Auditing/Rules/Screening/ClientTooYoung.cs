using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ClientTooYoung : IStoppingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var (youngest, age) = (practice.Card.Settings.Youngest, client.Born.AtLeastOn(client.Programme.Start));
        if (age < youngest)
            yield return this.Found(
                Level.Error,
                client.Id,
                client.At,
                $"{client.Name} is {age} when the programme begins, and this practice trains nobody below {youngest} at a "
                    + "distance.",
                "Train children face to face. Where your rules allow it and you are trained for it, write 'youngest' under "
                    + "settings in practice.md, and the whole day under 'born'."
            );
    }
}
