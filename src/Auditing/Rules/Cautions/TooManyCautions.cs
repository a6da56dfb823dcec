using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class TooManyCautions : IClientRule
{
    /// <summary>Stop signs that somebody still reads and keeps in mind; common practice, no source.</summary>
    private const int Most = 7;

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from session in client.Programme.AllSessions.Index()
        where !session.Item.IsShortened
        let own = training.Uses.Where(u => u.Session == session.Index + 1).Select(u => u.Exercise.Id).Distinct()
        let signs = own.SelectMany(id => practice.CautionsOf(practice.Of(id), client))
            .Distinct()
            .Count(id => practice.Find(id)?.Kind == CautionKind.Stop)
        where signs > Most
        select this.Found(
            Level.Warning,
            client.Id,
            session.Item.At,
            $"The session '{session.Item.Name}' has {signs} stop signs, and nobody keeps more than {Most} in mind.",
            "Let its exercises share their signs, make one of those that say nearly the same, or divide the session."
        );
}
