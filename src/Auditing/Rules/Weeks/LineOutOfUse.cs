using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class LineOutOfUse : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from session in client.Programme.Sessions.Concat(client.Programme.Alternates)
        from use in session.Do
        let first = use.FromWeek ?? 1
        let until = use.UntilWeek ?? client.Programme.Weeks
        from named in use.ByWeek.Select(l => (l.Week, l.Dose.At)).Concat(use.Versions.Select(v => (v.Week, v.At)))
        where named.Week > until || IsReplaced(use, named.Week, first)
        where !IsOtherwise(client.Programme.From, session, use, named.At)
        select this.Found(
            Level.Warning,
            client.Id,
            named.At,
            $"The line for week {named.Week} holds in no week: the use goes from week {first} to week {until}.",
            "Name a week in which it is done, or change 'from-week' and 'until-week'."
        );

    /// <summary>Whether a line of a shared programme is out of use because this client does otherwise from a week on: it is
    /// right for everybody else.</summary>
    private static bool IsOtherwise(SharedFrom? from, ProgrammeSession session, ProgrammeUse use, Location at) =>
        from is not null
        && at.File == SharedProgramme.PathOf(from.Programme.Value)
        && from.Differences.Any(d => d is not Difference.Add && d.FromWeek is not null && d.Use == use.Name && d.IsIn(session));

    /// <summary>Whether another entry takes the place of one from before the first week before that week comes.</summary>
    private static bool IsReplaced(ProgrammeUse use, int week, int first) =>
        use.ByWeek.Select(l => l.Week).Concat(use.Versions.Select(v => v.Week)).Any(other => other > week && other <= first);
}
