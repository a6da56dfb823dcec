using System.Text;

namespace Gradus.Tests.Mutants;

/// <summary>What became of many mutants, by folder.</summary>
internal sealed class MutantReport(IReadOnlyList<Judged> judged, Survivors survivors)
{
    /// <summary>The share of all that are killed; one that no test runs is not.</summary>
    public double Killed => (double)judged.Count(j => j.Fate == Fate.Killed) / judged.Count;

    /// <summary>Those that live and are not on the list.</summary>
    public IEnumerable<string> WithoutReason() =>
        judged
            .Where(j => j.Fate != Fate.Killed && survivors.ReasonFor(j.Mutant) is null)
            .Select(j => $"{j.Fate} {j.Mutant.Name} (line {j.Mutant.Line})");

    public string Table()
    {
        var table = new StringBuilder();
        Line("folder", "mutants", "killed", "survived", "not covered", "percent");
        foreach (var folder in judged.GroupBy(j => j.Mutant.Folder).OrderBy(g => g.Key, StringComparer.Ordinal))
            Sum(folder.Key, [.. folder]);
        Sum("all", judged);
        return table.ToString();

        void Sum(string name, IReadOnlyList<Judged> of)
        {
            var killed = of.Count(j => j.Fate == Fate.Killed);
            Line(
                name,
                of.Count,
                killed,
                of.Count(j => j.Fate == Fate.Survived),
                of.Count(j => j.Fate == Fate.NotCovered),
                FormattableString.Invariant($"{100.0 * killed / of.Count:0.0}")
            );
        }

        void Line(object name, object mutants, object killed, object survived, object uncovered, object percent) =>
            table.Append(
                FormattableString.Invariant($"{name, -28}{mutants, 8}{killed, 8}{survived, 10}{uncovered, 13}{percent, 9}\n")
            );
    }
}
