using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class HoldShortForAge : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        where client.Born.IsIn(AgeBand.Over65, client.Programme) && use.Session <= client.Programme.Sessions.Count
        let longest = use
            .Weeks.SelectMany(w => w.Dose.Actions)
            .Where(a => a is { Verb: Verb.Hold, Unit: AmountUnit.Seconds })
            .Select(a => a.Amount)
            .DefaultIfEmpty(0)
            .Max()
        where longest > 0 && longest < DoseReferences.HoldOver65.Least
        select this.Found(
            Level.Note,
            client.Id,
            use.At,
            $"'{practice.TitleOf(use)}' holds {longest} s at most, and {client.Name} is 65 or older in this programme.",
            $"Longer holds suit older people better. {DoseReferences.HoldOver65.Cited}.",
            use.Exercise.Id.Text.Length
        );
}
