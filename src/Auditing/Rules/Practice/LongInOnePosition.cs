using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class LongInOnePosition : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        var (programme, settings) = (client.Programme, practice.Card.Settings);
        if (practice.Words.In(client.Language) is not { } words)
            return [];
        return from session in programme.AllSessions.Index()
            where !session.Item.IsShortened
            let longest = SessionTimes
                .Of([.. uses.Where(u => u.Session == session.Index + 1)], programme.Weeks, settings)
                .SelectMany(w => UnbrokenTimes.Of(w.Steps, practice).Select(t => (t.Position, t.Seconds, Week: w.Weeks[0])))
                .DefaultIfEmpty()
                .MaxBy(t => t.Seconds)
            where longest.Seconds > settings.OnePosition
            select new Finding(
                RuleId.Of(GetType()),
                Level.Note,
                client.Id,
                session.Item.At,
                $"'{session.Item.Name}' keeps {client.Name} "
                    + $"{words.Say("position-" + Kebab.Of(longest.Position.ToString()))} for {words.Span(longest.Seconds)} "
                    + $"on end in week {longest.Week}.",
                "Put something in between that is done in another position. This practice notes more than "
                    + $"{words.Span(settings.OnePosition)}, which is common practice, with no source; 'one-position' in "
                    + "practice.md changes it."
            );
    }
}
