using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Browser;

/// <summary>One session in weeks that share its steps, and what it is an example of.</summary>
internal sealed record PlayedSession(Client Client, Plan Plan, PlannedSession Session, PlannedWeeks Weeks)
{
    public int Week => Weeks.Weeks[0];

    /// <summary>Ten in the morning on the first day of its first week.</summary>
    public string Now => $"{Plan.Programme.Start.AddDays(7 * (Week - 1)):yyyy-MM-dd}T10:00:00";

    public string PathIn(string folder) => Path.Combine(folder, Session.Path);

    public override string ToString() => $"{Client.Id} session {Session.Number} week {Week}";

    public IEnumerable<string> Kinds()
    {
        var written = Client.Programme.AllSessions[Session.Number - 1];
        var doses = Session.Uses.SelectMany(u => u.Doses).Where(d => d.Weeks.Contains(Week)).Select(d => d.Dose).ToArray();
        var actions = doses.SelectMany(d => d.Actions).ToArray();
        if (actions.Any(a => a.Effort is SettledEffort.Ramp))
            yield return "ramp";
        if (actions.Any(a => a is { Verb: Verb.Breathe, Unit: AmountUnit.Breaths }))
            yield return "breaths";
        if (actions.Any(a => a is { Verb: Verb.Hold, Unit: AmountUnit.Breaths }))
            yield return "hold in breaths";
        if (written.Do.Any(u => u.Rounds is not null))
            yield return "rounds";
        if (doses.Any(d => d.Sides.Order == SideOrder.Alternate))
            yield return "alternate sides";
        if (doses.Any(d => d.Sides.Order == SideOrder.Both))
            yield return "both sides";
        if (doses.Any(d => d.Sides.MoreOnFirst > 0))
            yield return "plus";
        if (actions.Length > doses.Length)
            yield return "then";
        if (doses.Any(d => d.Parts.Any(p => p.Times > 1)))
            yield return "group";
        if (Session.IsShortened)
            yield return "short version";
        if (Session.Kind is { } kind && !Session.IsShortened)
            yield return $"{kind} alternate".ToLowerInvariant();
    }
}
