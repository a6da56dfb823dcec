using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class AnswersStale : IStoppingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var (until, programme, days) = (
            Validity.AnswersUntil(practice, client),
            client.Programme,
            practice.Card.Settings.AnswersLast
        );
        if (client.Answered > today)
            yield return Said(
                Level.Error,
                $"{client.Name} is said to have answered on {client.Answered.Iso()}, which is still to come."
            );
        else if (until < programme.Start)
            yield return Said(
                Level.Error,
                $"{client.Name} answered on {client.Answered.Iso()}, and this practice takes answers to be good for "
                    + $"{days} days: not one day of the programme, which begins on {programme.Start.Iso()}, is covered."
            );
        else if (until < today && today <= programme.End)
            yield return Said(
                Level.Error,
                $"{client.Name} answered on {client.Answered.Iso()}, and this practice takes answers to be good for "
                    + $"{days} days: since {until.AddDays(1).Iso()} the programme, which goes on until "
                    + $"{programme.End.Iso()}, has none."
            );
        else if (until < programme.End)
            yield return Said(
                Level.Warning,
                $"{client.Name} answered on {client.Answered.Iso()}, and this practice takes answers to be good for "
                    + $"{days} days: from {until.AddDays(1).Iso()} on the programme has none."
            );

        Finding Said(Level level, string message) =>
            this.Found(
                level,
                client.Id,
                client.At,
                message,
                "Ask again, and write the new date under 'answered' and what is now true under 'answers' in client.yaml."
            );
    }
}
