using Gradus.Domain;

namespace Gradus.Auditing.Sources;

internal static class DoseFaults
{
    /// <summary>Every dose line of the practice with a fault of that kind.</summary>
    public static IEnumerable<Finding> Of(Practice practice, DoseFaultKind kind, RuleId rule)
    {
        var lines = practice
            .Exercises.Select(e => e.Dose)
            .Concat(
                from client in practice.Clients
                from session in client.Programme.Sessions.Concat(client.Programme.Alternates)
                from use in session.Do
                from week in use.ByWeek
                select week.Dose
            );
        return from line in lines
            let fault = (line.Reading as DoseLineResult.Refused)?.Fault
            where fault is not null && fault.Kind == kind
            select new Finding(
                rule,
                Level.Error,
                null,
                line.At with
                {
                    Column = line.At.Column + fault.Column,
                },
                fault.Message,
                fault.Help,
                fault.Length
            );
    }
}
