using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class SideSaidTwice : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        let side = use.Written.Side
        where side is not null && use.Version is null
        from line in use.Written.ByWeek
        let terms = line.Dose.Dose?.Terms
        where terms is { Side: not null } or { Plus: not null }
        select Judged(practice, client, use, side.Value, line, terms, IsSame(terms, side.Value, training.Stances));

    private Finding Judged(Practice practice, Client client, Use use, SideTerm side, WeekLine line, DoseTerms terms, bool same) =>
        same
            ? this.Found(
                Level.Warning,
                client.Id,
                line.Dose.At,
                $"Week {line.Week} of '{practice.TitleOf(use)}' says its side, {Said(terms)}, which 'side' says already.",
                "Take it out of the line; 'side' holds for every week.",
                line.Dose.Line.Length
            )
            : this.Found(
                Level.Error,
                client.Id,
                line.Dose.At,
                $"Week {line.Week} of '{practice.TitleOf(use)}' says {Said(terms)}, but 'side' says {side.Written}.",
                "Decide on one: take the side out of the line, or take 'side' out and write a side in every line.",
                line.Dose.Line.Length
            );

    /// <summary>Whether nothing of the line is lost when the programme's side takes its place.</summary>
    private static bool IsSame(DoseTerms terms, SideTerm side, Stances stances) =>
        terms.Plus is null
        && (terms.Side, side) switch
        {
            (SideTerm.On(var one), SideTerm.On(var other)) => one == other
                || (stances.Resolve(one) is { } body && body == stances.Resolve(other)),
            var (one, other) => one == other,
        };

    private static string Said(DoseTerms terms)
    {
        var side = terms.Side is SideTerm.On on ? $"on {on.Side}" : terms.Side?.Written;
        var more = terms.Plus is { } plus ? $"more sets on {plus.Side}" : null;
        return string.Join(" and ", new[] { side, more }.OfType<string>());
    }
}
