using System.Text;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Breaks of finished sites, made from the list of kinds: each is found. A tenth of them in <c>tests/run</c>, the same
/// ones every time.</summary>
[Trait("Slow", "yes")]
public sealed class ProofTests(ITestOutputHelper output)
{
    /// <summary>Breaks that are not found yet, each with why.</summary>
    private static readonly Series<string> KnownMissed = File.ReadAllLines(
            Repository.Path("tests", "Auditing", "Proof", "known-missed.txt")
        )
        .Where(line => line.Length > 0 && !line.StartsWith('#'))
        .Select(line => line.Split(" : ")[0].Trim())
        .ToSeries();

    [Fact]
    public void Every_operator_that_the_list_names_is_tried_and_no_other()
    {
        Assert.True(ProofKinds.Listed.Count >= 16);
        foreach (var (kind, operators) in ProofKinds.Listed)
            Assert.Equal(
                operators.Order(StringComparer.Ordinal),
                ProofKinds.Tried[kind].Select(s => s.Operator).Distinct().Order(StringComparer.Ordinal)
            );
        Assert.Equal(ProofKinds.Listed.Count, ProofKinds.Tried.Count);
    }

    [Fact]
    public void Every_break_is_found()
    {
        var all = Break.All;
        var table = new StringBuilder($"{"kind", -28}{"tried", 7}{"found", 7}{"missed", 8}{"by bytes alone", 16}\n");
        foreach (var kind in all.GroupBy(b => b.Kind))
            table.AppendLine(
                System.Globalization.CultureInfo.InvariantCulture,
                $"{kind.Key, -28}{kind.Count(), 7}{kind.Count(b => b.IsFound), 7}{kind.Count(b => !b.IsFound), 8}{kind.Count(b => b.ByBytes), 16}"
            );
        table.Append(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{"all", -28}{all.Count, 7}{all.Count(b => b.IsFound), 7}{all.Count(b => !b.IsFound), 8}{all.Count(b => b.ByBytes), 16}"
        );
        output.WriteLine(table.ToString());
        Assert.True(all.Count >= LongProof.Cases(400), $"{all.Count} breaks");
        Assert.Equal("", string.Join('\n', Break.WithoutPlace.Order(StringComparer.Ordinal)));
        Assert.Equal("", string.Join('\n', all.Where(b => !b.IsFound && !KnownMissed.Contains(b.Name)).Select(b => b.Name)));
    }
}
