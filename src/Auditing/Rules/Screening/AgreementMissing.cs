using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class AgreementMissing : IStoppingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var start = client.Programme.Start;
        if (client.Born.IsIn(AgeBand.Under18, client.Programme) && client.Agreed.Guardian is null)
        {
            yield return Said(
                $"{client.Name} is under 18 when the programme begins, and no parent or guardian has agreed to it.",
                "Ask a parent or guardian, and write the day under 'agreed' in client.yaml: guardian: 2026-12-07."
            );
        }

        if (client.Agreed.Training > today || client.Agreed.Guardian > today)
            yield return Said("A day under 'agreed' is still to come.", "Write the day on which it was agreed.");
        if (client.Agreed.Training > start || client.Agreed.Guardian > start)
        {
            yield return Said(
                $"The programme begins on {start.Iso()}, before "
                    + $"{(client.Agreed.Training > start ? client.Name : "a parent or guardian")} agreed to it.",
                "Correct the day under 'agreed' in client.yaml, or the start of the programme."
            );
        }

        Finding Said(string message, string help) => this.Found(Level.Error, client.Id, client.At, message, help);
    }
}
