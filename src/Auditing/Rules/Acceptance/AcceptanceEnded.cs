using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class AcceptanceEnded : IAcceptanceRule
{
    public IEnumerable<Finding> Check(Series<Accepted> accepted, DateOnly today) =>
        from ended in accepted
        where !ended.IsRefused && !ended.IsTooLong(today) && !ended.Holds(today) && ended.Fits.Count > 0
        let acceptance = ended.Acceptance
        select this.Found(
            Level.Warning,
            null,
            acceptance.At,
            $"{acceptance.By} accepted '{acceptance.Rule}' in {acceptance.File} until {acceptance.Until.Iso()}; that day "
                + "is past.",
            "Look at it again: put it right, or write a later day and the reason that holds now.",
            acceptance.Rule.Text.Length
        );
}
