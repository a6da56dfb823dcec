using System.Globalization;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ClearanceExpired : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        from objection in Screening.Of(practice, client, use).OfType<Objection.ClearanceShort>()
        select new Finding(
            RuleId.Of(GetType()), Level.Error, client.Id, objection.Clearance.At,
            $"The clearance for {objection.Condition.Name} holds from {Day(objection.Clearance.On)} to {Day(objection.Clearance.Until)}, "
            + $"but {client.Name} does '{use.Exercise.Title}' from {Day(objection.From)} to {Day(objection.Until)}.",
            "Ask for a new clearance and write its dates here, or let the exercise end before the clearance does.");

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
