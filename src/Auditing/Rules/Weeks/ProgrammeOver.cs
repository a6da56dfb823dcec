using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ProgrammeOver : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (client.Programme.End >= today)
            yield break;
        var end = client.Programme.End.Iso();
        yield return this.Found(
            Level.Note,
            client.Id,
            client.Programme.At,
            $"{client.Name}'s programme ended on {end}.",
            "Measure again and write the next one, or move the client's folder out of the practice."
        );
    }
}
