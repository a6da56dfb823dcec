using System.Globalization;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class AnswersStale : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        var (until, programme, days) = (Validity.AnswersUntil(practice, client), client.Programme, practice.Card.Settings.AnswersLast);
        if (until < programme.Start)
            yield return Wrong(Level.Error, $"{client.Name} answered on {Day(client.Answered)}, and this practice takes answers to be good for {days} days: not one day of the programme, which begins on {Day(programme.Start)}, is covered.");
        else if (until < programme.End)
            yield return Wrong(Level.Warning, $"{client.Name} answered on {Day(client.Answered)}, and this practice takes answers to be good for {days} days: from {Day(until.AddDays(1))} on the programme has none.");

        Finding Wrong(Level level, string message) => new(
            RuleId.Of(GetType()), level, client.Id, client.At, message, "Ask again, and write the new date under 'answered' and what is now true under 'answers' in client.yaml.");
    }

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
