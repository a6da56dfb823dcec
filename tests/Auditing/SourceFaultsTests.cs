using Gradus.Domain;
using static Gradus.Tests.Auditing.PlantedClientFaults;
using static Gradus.Tests.Auditing.PlantedExerciseFaults;

namespace Gradus.Tests.Auditing;

public sealed class SourceFaultsTests(ITestOutputHelper output)
{
    private static readonly (string Family, Series<PlantedSourceFault> Faults)[] Families =
    [
        .. PlantedExerciseFaults.Families,
        .. PlantedClientFaults.Families,
    ];

    private static readonly Series<PlantedSourceFault> Fine =
    [
        new(
            "a side in place of the exercise's own",
            "",
            TessProgramme + "- side: rear leg\n- by-week:\n-   1: 2 x hold 30 s\n+ side: left\n+ by-week:\n+   1: 2 x hold 30 s"
        ),
        new(
            "an attached caution, at whatever age",
            "",
            Stretch + Thoughtful + "\n- stage: gain\n+ stage: gain\n+ properties: [balance]",
            "cautions/hold-on.md\n+ ---\n+ title: Hold on\n+ kind: take-care\n+ attaches-to: { property: balance, age: "
                + "over-65 }\n+ ---\n+ Stand beside the wall."
        ),
        new(
            "as much as is needed, and less before",
            "",
            Needing(
                Ankle,
                "2026-11-21,lying ankle dorsiflexion,left,passive,10,deg,tape",
                "2026-11-21,lying ankle dorsiflexion,right,passive,10.5,deg,tape",
                "2026-11-07,lying ankle dorsiflexion,right,passive,6,deg,tape"
            )
        ),
        new(
            "nobody does the harder version",
            "",
            TessProgramme + "- - use: calf-press\n-   side: rear leg\n-   by-week:\n-     1: 2 x press 10 s at 50%"
        ),
        new(
            "a file that cannot be read may name what seems unused",
            "error key-unknown",
            Stretch + "- harder: calf-press\n+ hardest: calf-press",
            "cautions/cramp.md\n+ ---\n+ title: A cramp\n+ kind: ease-off\n+ ---\n+ Let go."
        ),
    ];

    public static TheoryData<PlantedSourceFault> All => new(Families.SelectMany(f => f.Faults).Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_by_its_own_rule_at_its_own_level(PlantedSourceFault fault) => fault.MustBeFound();

    [Fact]
    public void Every_planted_fault_is_found()
    {
        output.WriteLine($"{"planted in sources", -26}{"kinds", 6}{"found", 7}{"by the right rules alone", 27}");
        foreach (var (family, faults) in Families)
        {
            var (found, rightly) = (faults.Count(f => f.Found().Length > 0), faults.Count(f => f.Found() == f.Rules));
            output.WriteLine($"{family, -26}{faults.Count, 6}{found, 7}{rightly, 27}");
            Assert.Equal((faults.Count, faults.Count), (found, rightly));
            Assert.All(faults, f => Assert.NotEmpty(f.Rules));
        }
    }
}
