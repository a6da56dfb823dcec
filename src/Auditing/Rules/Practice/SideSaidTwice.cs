using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class SideSaidTwice : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        let side = use.Written.Side
        where side is not null && use.Version is null
        from line in use.Written.ByWeek
        let terms = line.Dose.Dose?.Terms
        where terms is { Side: not null } or { Plus: not null }
        select Judged(client, use, side.Value, line, terms, IsSame(terms, side.Value, Playing.Of(practice, client)));

    private Finding Judged(Client client, Use use, string side, WeekLine line, DoseTerms terms, bool same) =>
        same
            ? new(
                RuleId.Of(GetType()),
                Level.Warning,
                client.Id,
                line.Dose.At,
                $"Week {line.Week} of '{use.Exercise.Title}' says its side, {Said(terms)}, which 'side' says already.",
                "Take it out of the line; 'side' holds for every week.",
                line.Dose.Line.Length
            )
            : new(
                RuleId.Of(GetType()),
                Level.Error,
                client.Id,
                line.Dose.At,
                $"Week {line.Week} of '{use.Exercise.Title}' says {Said(terms)}, but 'side' says {side}.",
                "Decide on one: take the side out of the line, or take 'side' out and write a side in every line.",
                line.Dose.Line.Length
            );

    /// <summary>Whether nothing of the line is lost when the programme's side takes its place.</summary>
    private static bool IsSame(DoseTerms terms, string side, Playing playing) =>
        terms.Plus is null
        && (terms.Side, SideNames.TermOf(side)) switch
        {
            (SideTerm.On(var one), SideTerm.On(var other)) => one == other
                || (playing.Resolve(one) is { } body && body == playing.Resolve(other)),
            var (one, other) => one == other,
        };

    private static string Said(DoseTerms terms)
    {
        var side = terms.Side switch
        {
            SideTerm.Each => "each side",
            SideTerm.Alternate => "alternate sides",
            SideTerm.Both => "both sides",
            SideTerm.On on => $"on {on.Name}",
            _ => null,
        };
        var more = terms.Plus is { } plus ? $"more sets on {plus.Side}" : null;
        return string.Join(" and ", new[] { side, more }.OfType<string>());
    }
}
