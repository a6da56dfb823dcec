using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class HoldShortForAge : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        where client.Born.IsIn(AgeBand.Over65, client.Programme) && use.Session <= client.Programme.Sessions.Count
        let longest = use
            .Weeks.SelectMany(w => w.Dose.Actions)
            .Where(a => a.Verb == Verb.Hold && a.Amount is Amount.Span)
            .Select(a => a.Amount.Number.High)
            .DefaultIfEmpty(0)
            .Max()
        where longest > 0 && longest < PublishedFigures.HoldOver65.Least
        select new Finding(
            RuleId.Of(GetType()),
            Level.Note,
            client.Id,
            use.At,
            $"'{use.Exercise.Title}' holds {longest} s at most, and {client.Name} is 65 or older in this programme.",
            $"Longer holds suit older people better. {PublishedFigures.HoldOver65.Cited}.",
            use.Exercise.Id.Text.Length
        );
}
