using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class SourceFaultsTests(ITestOutputHelper output)
{
    /// <summary>Every condition that matters with some property, so that nothing is left out.</summary>
    private const string AllThoughtOf =
        "raised-blood-pressure, bone-thinning, joint-replacement, recent-surgery, recent-injury, pregnancy-or-birth, "
        + "blood-thinners, eye-pressure-or-retina, hernia, seizures, falls, numb-feet";

    private const string Thoughtful =
        "- not-with: [ankle-injury, recent-surgery, recent-injury, very-mobile-joints]\n+ not-with: [ankle-injury, "
        + "very-mobile-joints]\n+ clear-first: ["
        + AllThoughtOf
        + "]";

    private const string Programme = "clients/tess/programme.md\n";
    private const string Press = "exercises/calf-press.md\n";
    private const string Stretch = "exercises/wall-calf-stretch.md\n";
    private const string Second = "- 2: 2 x hold 45 s\n+ 2: 2 x hold 45 s, ";
    private const string Harder = "- harder: calf-press\n+ ";
    private const string Easier = "- easier: wall-calf-stretch\n+ ";
    private const string Signs = "- signs: [sharp-pain, keep-breathing, calf-pull]\n+ signs: [sharp-pain, calf-pull]";
    private const string Breathing =
        Stretch + "- signs: [sharp-pain, pinch, calf-pull]\n+ signs: [sharp-pain, pinch, keep-breathing, calf-pull]";

    private const string Ankle = "ankle dorsiflexion";

    private static readonly (string Family, Series<PlantedSourceFault> Faults)[] Families =
    [
        (
            "side said twice",
            [
                new("each side", "error side-said-twice", Programme + Second + "each side"),
                new("alternate sides", "error side-said-twice", Programme + Second + "alternate sides"),
                new("both sides", "error side-said-twice", Programme + Second + "both sides"),
                new("the other leg", "error side-said-twice", Programme + Second + "on right"),
                new("a side nobody knows", "error side-said-twice", Programme + Second + "on back leg"),
                new("the same name", "warning side-said-twice", Programme + Second + "on rear leg"),
                new("the same leg by another name", "warning side-said-twice", Programme + Second + "on left"),
            ]
        ),
        (
            "easier in a circle",
            [
                new("its own easier version", "error easier-in-a-circle", Press + Easier + "easier: calf-press"),
                new("its own harder version", "warning easier-in-a-circle", Press + Easier + "harder: calf-press"),
                new("easier both ways", "error easier-in-a-circle", Stretch + Harder + "easier: calf-press"),
                new("harder both ways", "warning easier-in-a-circle", Press + Easier + "harder: wall-calf-stretch"),
                new(
                    "easier and harder at once",
                    "warning easier-in-a-circle",
                    Press + Easier + "easier: wall-calf-stretch\n+ harder: wall-calf-stretch",
                    Stretch + "- harder: calf-press"
                ),
            ]
        ),
        (
            "property without caution",
            [
                .. new[] { "head-low", "weight-on-hands", "trunk-end-range", "balance", "jumping" }.Select(
                    p => new PlantedSourceFault(
                        p,
                        "warning property-without-caution",
                        Stretch + Thoughtful + $"\n- stage: gain\n+ stage: gain\n+ properties: [{p}]"
                    )
                ),
                new(
                    "hard effort",
                    "warning property-without-caution",
                    Press
                        + Signs
                        + "\n- clear-first: [raised-blood-pressure, eye-pressure-or-retina, hernia]\n+ clear-first: ["
                        + AllThoughtOf
                        + "]\n- dose: 2-3 x press 10-20 s at 40-60%, rest 30 s, each side\n+ dose: 2-3 x press 5-10 s at "
                        + "40-70%, rest 30 s, each side",
                    Breathing
                ),
                new("long contraction", "warning property-without-caution", Press + Signs, Breathing),
                new(
                    "a caution for another position",
                    "note caution-unused, warning property-without-caution",
                    Stretch + Thoughtful + "\n- stage: gain\n+ stage: gain\n+ properties: [balance]",
                    "cautions/hold-on.md\n+ ---\n+ title: Hold on\n+ kind: take-care\n+ attaches-to: { property: "
                        + "balance, position: squat }\n+ ---\n+ Stand beside the wall."
                ),
            ]
        ),
        (
            "the client's means",
            [
                new("no equipment", "warning equipment-missing", "clients/bram/client.yaml\n- equipment: [wall]"),
                new(
                    "other equipment",
                    "warning equipment-missing",
                    "clients/bram/client.yaml\n- equipment: [wall]\n+ equipment: [Wall]"
                ),
                new(
                    "a second less than needed",
                    "warning session-over-time",
                    "clients/tess/client.yaml\n- minutes: 15\n+ minutes: 2"
                ),
                new(
                    "too long by growing alone",
                    "warning session-over-time",
                    "clients/bram/client.yaml\n- minutes: 15\n+ minutes: 7"
                ),
            ]
        ),
        (
            "needed range",
            [
                new(
                    "less on either side",
                    "error range-below-need",
                    Needing(
                        Ankle,
                        "2026-11-21,ankle dorsiflexion,left,passive,12,deg,tape",
                        "2026-11-21,ankle dorsiflexion,right,passive,9.9,deg,tape"
                    )
                ),
                new(
                    "less since",
                    "error range-below-need",
                    Needing(
                        Ankle,
                        "2026-11-28,ankle dorsiflexion,left,active,9,deg,tape",
                        "2026-11-21,ankle dorsiflexion,left,passive,12,deg,tape",
                        "2026-11-21,ankle dorsiflexion,right,passive,12,deg,tape"
                    )
                ),
                new(
                    "less in one mode",
                    "error range-below-need",
                    Needing(
                        Ankle,
                        "2026-11-21,ankle dorsiflexion,left,active,9,deg,tape",
                        "2026-11-21,ankle dorsiflexion,left,passive,12,deg,tape",
                        "2026-11-21,ankle dorsiflexion,right,passive,12,deg,tape"
                    )
                ),
                new(
                    "enough only after today",
                    "error range-below-need",
                    Needing(
                        Ankle,
                        "2026-11-21,ankle dorsiflexion,left,passive,9,deg,tape",
                        "2199-12-31,ankle dorsiflexion,left,passive,12,deg,tape",
                        "2026-11-21,ankle dorsiflexion,right,passive,12,deg,tape"
                    )
                ),
                new(
                    "no side of its own",
                    "error range-below-need",
                    Needing("cervical flexion", "2026-11-21,cervical flexion,,active,9,deg,tape")
                ),
                new(
                    "one side not measured",
                    "note need-unmeasured",
                    Needing(Ankle, "2026-11-21,ankle dorsiflexion,left,passive,12,deg,tape")
                ),
                new(
                    "measured after today alone",
                    "note need-unmeasured",
                    Needing(
                        Ankle,
                        "2026-11-21,ankle dorsiflexion,left,passive,12,deg,tape",
                        "2199-12-31,ankle dorsiflexion,right,passive,12,deg,tape"
                    )
                ),
                new("never measured", "note need-unmeasured", Needing(Ankle)),
            ]
        ),
        (
            "answers",
            [
                new(
                    "no clearance",
                    "error clearance-missing",
                    "clients/tess/client.yaml\n- clearances:\n-   - condition: raised-blood-pressure\n-     by: her "
                        + "general practice\n-     on: 2026-11-16\n-     until: 2027-11-15\n-     limit: effort at most 60 %"
                ),
                new(
                    "forbidden, cleared or not",
                    "error contraindicated-exercise",
                    Press
                        + "- not-with: [ankle-injury]\n- clear-first: [raised-blood-pressure, eye-pressure-or-retina, "
                        + "hernia]\n+ not-with: [ankle-injury, raised-blood-pressure, eye-pressure-or-retina, hernia]"
                ),
                new(
                    "one that cannot be read",
                    "error value-wrong",
                    "clients/tess/client.yaml\n- ankle-injury: no\n+ ankle-injury: nope"
                ),
                new("one with no value", "error value-wrong", "clients/tess/client.yaml\n- ankle-injury: no\n+ ankle-injury:"),
                new(
                    "one whose condition is misspelt",
                    "error condition-unknown",
                    "clients/tess/client.yaml\n- ankle-injury: no\n+ ankle-injry: no"
                ),
                new(
                    "none that can be read",
                    "error value-wrong",
                    "clients/bram/client.yaml\n- answers:\n- ankle-injury: no\n+ answers: all no"
                ),
                new(
                    "no exercise asks",
                    "note answer-unused",
                    "conditions.yaml\n- - id: raised-blood-pressure\n+ - id: dizzy-spells\n+   name: dizzy spells\n+   "
                        + "question: Do you have dizzy spells?\n+   where: whole body\n+ - id: raised-blood-pressure",
                    "clients/bram/client.yaml\n- ankle-injury: no\n+ ankle-injury: no\n+ dizzy-spells: yes"
                ),
            ]
        ),
        (
            "unused",
            [
                new(
                    "a caution that nothing names",
                    "note caution-unused",
                    "cautions/cramp.md\n+ ---\n+ title: A cramp\n+ kind: ease-off\n+ ---\n+ Let go."
                ),
                new(
                    "an exercise that nobody does",
                    "note exercise-unused",
                    Programme + "- - use: calf-press\n-   side: rear leg\n-   by-week:\n-     1: 2 x press 10 s at 50%",
                    Press + Easier.Split("\n+ ")[0],
                    Stretch + Harder.Split("\n+ ")[0]
                ),
            ]
        ),
    ];

    private static readonly Series<PlantedSourceFault> Fine =
    [
        new(
            "a side in place of the exercise's own",
            "",
            Programme + "- side: rear leg\n- by-week:\n-   1: 2 x hold 30 s\n+ side: left\n+ by-week:\n+   1: 2 x hold 30 s"
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
                "2026-11-21,ankle dorsiflexion,left,passive,10,deg,tape",
                "2026-11-21,ankle dorsiflexion,right,passive,10.5,deg,tape",
                "2026-11-07,ankle dorsiflexion,right,passive,6,deg,tape"
            )
        ),
        new(
            "nobody does the harder version",
            "",
            Programme + "- - use: calf-press\n-   side: rear leg\n-   by-week:\n-     1: 2 x press 10 s at 50%"
        ),
        new(
            "a file that cannot be read may name what seems unused",
            "error key-unknown",
            Stretch + "- harder: calf-press\n+ hardest: calf-press",
            "cautions/cramp.md\n+ ---\n+ title: A cramp\n+ kind: ease-off\n+ ---\n+ Let go."
        ),
    ];

    public static TheoryData<PlantedSourceFault> All => new(Families.SelectMany(f => f.Faults).Concat(Fine));

    /// <summary>The stretch needs 10 degrees. Tess does it on the left and has them; Bram does it on both sides, and has these
    /// readings.</summary>
    private static string[] Needing(string motion, params string[] readings)
    {
        const string Columns = "+ date,motion,side,mode,value,unit,instrument";
        return
        [
            Stretch + $"- stage: gain\n+ stage: gain\n+ needs: {{ {motion}: 10 }}",
            "clients/tess/readings.csv\n- 2026-11-20,ankle dorsiflexion,left,passive,9,deg,inclinometer\n+ "
                + "2026-11-20,ankle dorsiflexion,left,passive,10,deg,tape\n+ 2026-11-20,cervical flexion,,active,10,deg,tape",
            $"clients/bram/readings.csv\n{string.Join("\n+ ", readings.Prepend(Columns))}",
        ];
    }

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
