using System.Text;

namespace Gradus.Tests.Mutants;

/// <summary>What became of many mutants, by part.</summary>
/// <param name="found">How many there are in each part, also of those that were not drawn or would not compile.</param>
internal sealed class MutantReport(
    IReadOnlyList<Judged> judged,
    IReadOnlyDictionary<string, int> found,
    Sample sample,
    Survivors survivors
)
{
    /// <summary>The share of a part that is killed; one that no test runs is not.</summary>
    public IEnumerable<(string Part, double Share)> Killed() =>
        judged
            .GroupBy(j => sample.PartOf(j.Mutant.File))
            .Select(g => (g.Key, (double)g.Count(j => j.Fate == Fate.Killed) / g.Count()));

    /// <summary>Those that live and are not on the list.</summary>
    public IEnumerable<string> WithoutReason() =>
        judged
            .Where(j => j.Fate != Fate.Killed && survivors.ReasonFor(j.Mutant) is null)
            .Select(j => $"{j.Fate} {j.Mutant.Name} (line {j.Mutant.Line})");

    /// <summary>A line for each part: what was found there, what was judged, what became of it, the share that was killed and
    /// what that says about all that were found, with 95 in 100.</summary>
    public string Table()
    {
        var table = new StringBuilder();
        Line("part", "found", "judged", "killed", "survived", "not covered", "percent", "of all");
        foreach (var part in judged.GroupBy(j => sample.PartOf(j.Mutant.File)).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var drawn = part.Count();
            var killed = part.Count(j => j.Fate == Fate.Killed);
            // What was drawn and would not compile is no mutant: as much of the rest is not.
            var whole = found[part.Key] <= sample.MostOf(part.Key) ? drawn : found[part.Key];
            var (low, high) = Sample.Spread(killed, drawn, whole);
            Line(
                part.Key,
                found[part.Key],
                drawn,
                killed,
                part.Count(j => j.Fate == Fate.Survived),
                part.Count(j => j.Fate == Fate.NotCovered),
                FormattableString.Invariant($"{100.0 * killed / drawn:0.0}"),
                FormattableString.Invariant($"{100 * low:0}-{100 * high:0}")
            );
        }

        return table.ToString();

        void Line(params object[] c) =>
            table.Append(
                FormattableString.Invariant($"{c[0], -28}{c[1], 8}{c[2], 8}{c[3], 8}{c[4], 10}{c[5], 13}{c[6], 9}{c[7], 9}\n")
            );
    }
}
