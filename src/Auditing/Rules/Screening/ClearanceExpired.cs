using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ClearanceExpired : IObjectionRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var shorts = training
            .Uses.SelectMany(use => use.Against.OfType<Objection.ClearanceShort>().Select(objection => (use, objection)))
            .ToArray();
        foreach (var (use, objection) in shorts.Where(s => s.objection.Need == ClearanceNeed.None))
            yield return Said(
                practice,
                client,
                objection,
                $"{client.Name} does '{practice.TitleOf(use)}' from {objection.From.Iso()} to {objection.Until.Iso()}"
            );
        foreach (
            var asked in shorts
                .Where(s => s.objection.Need != ClearanceNeed.None)
                .GroupBy(s => (s.objection.Need, s.objection.Condition))
        )
        {
            var (from, until) = (asked.Min(a => a.objection.From), asked.Max(a => a.objection.Until));
            yield return Said(
                practice,
                client,
                asked.First().objection,
                asked.Key.Need == ClearanceNeed.BeforeVigorous
                    ? $"{client.Name} works hard in '{practice.TitleOf(asked.First().use)}' from {from.Iso()} to "
                        + $"{until.Iso()}, which needs one that is not older than {PreParticipation.VigorousMonths} months"
                    : $"{client.Name} trains from {from.Iso()} to {until.Iso()}, and needs one on every day"
            );
        }
    }

    private Finding Said(Practice practice, Client client, Objection.ClearanceShort objection, string against) =>
        this.Found(
            Level.Error,
            client.Id,
            objection.Clearance.Value.At,
            $"The clearance for {practice.Of(objection.Condition).Name} holds from {objection.Clearance.Value.On.Iso()} to "
                + $"{objection.Clearance.Value.Until.Iso()}, but {against}.",
            "Ask for a new clearance and write its dates here, or let the exercise end before the clearance does."
        );
}
