using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>Pain is held against what loads the place: PainWhereLoaded.md.</summary>
public sealed class PainWhereLoadedTests
{
    private const string Neck = "clients/bram/answers.yaml\n- pain-now: 0\n+ pain-now: 4 neck";
    private const string LoadsNeck = "exercises/wall-calf-stretch.md\n- loads: [ankle]\n+ loads: [ankle, neck]";
    private const string Use = "clients/bram/programme.md\n- - use: wall-calf-stretch\n+ - use: wall-calf-stretch\n+   ";

    public static readonly Series<PlantedSourceFault> Faults =
    [
        new("a sore neck, and nothing that loads it", "", Neck),
        new("a sore neck, and a stretch that loads it", "warning pain-where-loaded", Neck, LoadsNeck),
        new(
            "the same for one week",
            "warning pain-where-loaded",
            Neck,
            LoadsNeck,
            "clients/bram/programme.md\n- weeks: 2\n+ weeks: 1"
        ),
        new(
            "the same, and a side that nobody knows: nothing can be planned",
            "error side-unresolved",
            Neck,
            LoadsNeck,
            Use + "side: parry arm"
        ),
    ];

    public static TheoryData<PlantedSourceFault> All => new(Faults);

    [Theory]
    [MemberData(nameof(All))]
    public void What_is_planned_is_held_against_what_hurts(PlantedSourceFault fault) => fault.MustBeFound();
}
