using System.Diagnostics;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

[Trait("Slow", "yes")]
public sealed class MutationTests(ITestOutputHelper output)
{
    private static readonly int Rounds = LongProof.Cases(2000);

    /// <summary>What an accident inside a file can bring about.</summary>
    private static readonly RuleId[] Expected =
    [
        Faults.FileUnreadable,
        Faults.KeyUnknown,
        Faults.KeyMissing,
        Faults.ValueWrong,
        Faults.IdUnknown,
        Faults.AddressRefused,
    ];

    /// <summary>And once in two thousand accidents this.</summary>
    private static readonly RuleId[] Rare = [Faults.HtmlInText];

    /// <summary>Seed 20261207, on every run the same.</summary>
    [Fact]
    public void Damaged_practices_are_read_to_the_end()
    {
        var chance = new Chance(20261207);
        var paths = LittlePractice.Golden.Files.Select(f => f.Key).ToArray();
        var outcomes = new SortedDictionary<string, int>(StringComparer.Ordinal);
        var slowest = TimeSpan.Zero;
        for (var round = 0; round < Rounds; round++)
        {
            var path = chance.Of(paths);
            var damaged = LittlePractice.Golden.With(
                path,
                Mutation.Of(LittlePractice.Golden.Files.First(f => f.Key == path).Value, chance)
            );
            var watch = Stopwatch.StartNew();
            foreach (var outcome in OutcomesOf(damaged))
                outcomes[outcome] = outcomes.GetValueOrDefault(outcome) + 1;
            if (watch.Elapsed > slowest)
                slowest = watch.Elapsed;
        }

        output.WriteLine($"{Rounds} rounds, slowest {slowest.TotalMilliseconds:0} ms");
        foreach (var (outcome, times) in outcomes)
            output.WriteLine($"{times, 6}  {outcome}");
        Assert.True(slowest < TimeSpan.FromSeconds(10), $"One round took {slowest}.");
        Assert.All(LongProof.Whole ? [.. Expected, .. Rare] : Expected, fault =>
            Assert.True(outcomes.GetValueOrDefault(fault.Text) > 0, $"{fault} never came.")
        );
        Assert.True(outcomes["nothing found, planned"] > Rounds / 20);
    }

    /// <summary>The rules that speak; and what is not blocked can be planned.</summary>
    private static IEnumerable<string> OutcomesOf(LittlePractice damaged)
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(damaged.Folder, findings).Practice;
        foreach (var finding in findings)
            HasItsPlace(damaged, finding);
        var said = findings.Select(f => f.Rule.Text).Distinct().ToArray();
        if (practice is null)
            return [.. said, "no practice"];
        findings.AddRange(RuleBook.Check(practice, Planned.Trainings(practice), new(2027, 1, 4)));
        var planned = 0;
        foreach (var client in practice.Clients.Where(c => !findings.Block(c.Id, Reach.Of(practice))))
        {
            Assert.NotEmpty(Planned.For(practice, client).Sessions);
            planned++;
        }

        return said.Length == 0 ? [planned > 0 ? "nothing found, planned" : "nothing found by reading, blocked by a rule"] : said;
    }

    private static void HasItsPlace(LittlePractice practice, Finding finding)
    {
        Assert.InRange(finding.Message.Length, 1, 300);
        Assert.DoesNotContain('\n', finding.Message + finding.Help);
        if (finding.At.Line == 0)
            return;
        var lines = practice[finding.At.File]
            .TrimStart('\uFEFF')
            .Replace("\r\n", "\n", StringComparison.Ordinal)
            .Split('\n', '\r');
        Assert.InRange(finding.At.Line, 1, lines.Length);
        var line = lines[finding.At.Line - 1];
        var isOnIt = finding.At.Column <= line.Length + 1 && finding.Length <= Math.Max(1, line.Length - finding.At.Column + 1);
        Assert.True(isOnIt, $"{finding.At} +{finding.Length} {finding.Message} is not on '{line}'.");
    }
}
