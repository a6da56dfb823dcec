using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class LongInOnePosition : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var settings = practice.Card.Settings;
        if (practice.Words.In(client.Language) is not { } words)
            return [];
        return from session in training.Sessions
            where !session.IsShortened
            let written = client.Programme.AllSessions[session.Number - 1]
            let longest = session
                .Weeks.SelectMany(w => w.Unbroken.Select(t => (t.Position, t.Seconds, Week: w.Weeks[0])))
                .DefaultIfEmpty()
                .MaxBy(t => t.Seconds)
            where longest.Seconds > settings.OnePosition
            select this.Found(
                Level.Note,
                client.Id,
                written.At,
                $"'{written.Name}' keeps {client.Name} "
                    + $"{words.Say("position-" + Kebab.Of(longest.Position.ToString()))} for {words.Span(longest.Seconds)} "
                    + $"without a change of position in week {longest.Week}.",
                "Put something in between that is done in another position. This practice notes more than "
                    + $"{words.Span(settings.OnePosition)} (rule of thumb); 'one-position' in "
                    + "practice.md changes it."
            );
    }
}
