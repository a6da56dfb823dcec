using Gradus.Tests.House;

namespace Gradus.Tests.Domain;

/// <summary>Made series: what is said of them is what a second implementation says, which was written from the page of the rules
/// alone. Each planted slip is seen.</summary>
[Trait("Slow", "yes")]
public sealed class RangesProofTests(ITestOutputHelper output)
{
    private const int Series = 5_000;

    /// <summary>Seven measures on two sides for each client, and some of another mode or instrument.</summary>
    private const int SeriesInOne = MadeRanges.ClientsInOne * 14;

    private static readonly string[] Kinds =
    [
        " Gain",
        " More",
        " NotShown",
        " Less",
        " NotJudged",
        " sudden",
        ": none ",
        " Differ",
        " changed",
        " not shown",
        " no error",
        ": Enough",
        ": Short",
        ": NotTold",
        ": NotJudged",
        ": Old",
        ": NotMeasured",
        ": ModeNotWritten",
    ];

    private static IEnumerable<MadeRanges> Cases(int series) =>
        Enumerable.Range(0, (series + SeriesInOne - 1) / SeriesInOne).Select(MadeRanges.Of);

    [Fact]
    public void Both_implementations_say_the_same()
    {
        var spread = Kinds.ToDictionary(k => k, _ => 0, StringComparer.Ordinal);
        var second = new SecondRanges();
        var lines = 0;
        foreach (var one in Cases(LongProof.Cases(Series)))
        {
            var said = one.Said();
            foreach (var (expected, actual) in one.SaidBy(second).Zip(said))
                Assert.Equal((Lines(expected.Except(actual)), expected.Length), (Lines(actual.Except(expected)), actual.Length));
            foreach (var line in said.SelectMany(s => s))
            {
                lines +=
                    line.StartsWith("sides", StringComparison.Ordinal) || line.StartsWith("demand", StringComparison.Ordinal)
                        ? 0
                        : 1;
                foreach (var kind in Kinds.Where(k => line.Contains(k, StringComparison.Ordinal)))
                    spread[kind]++;
            }
        }

        output.WriteLine($"{lines} series: {string.Join(", ", spread.Select(s => $"{s.Key.Trim(' ', ':')} {s.Value}"))}");
        Assert.True(lines >= LongProof.Cases(Series));
        Assert.All(spread, s => Assert.True(s.Value > 0, s.Key));
    }

    private static string Lines(IEnumerable<string> lines) => string.Join("; ", lines);

    public static TheoryData<string> Slips => new(Enum.GetNames<RangeSlip>().Where(n => n != nameof(RangeSlip.None)));

    [Theory, MemberData(nameof(Slips))]
    public void A_planted_slip_is_seen(string slip)
    {
        var second = new SecondRanges(Enum.Parse<RangeSlip>(slip));
        var seen = Cases(Series / 10)
            .Sum(one => one.SaidBy(new()).Zip(one.SaidBy(second)).Sum(c => c.First.Except(c.Second).Count()));
        output.WriteLine($"{slip}: {seen} lines");
        Assert.True(seen > 0, $"Nobody notices {slip}.");
    }
}
