using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>Whether a coach is told of a side that is not known: SideUnresolved.md.</summary>
public sealed class SideUnresolvedTests
{
    private const string NoSide =
        "exercises/wall-calf-stretch.md\n- dose: 2-3 x hold 30-60 s, rest 20 s, each side\n+ dose: 2-3 x hold 30-60 s, rest 20 s";

    public static readonly Series<PlantedSourceFault> Faults =
    [
        new(
            "a side in week 1 alone",
            "error side-unresolved",
            NoSide,
            "clients/bram/programme.md\n- by-week: { 1: 3 x hold 30 s }\n"
                + "+ by-week: { 1: \"3 x hold 30 s, each side\", 2: 3 x hold 45 s }"
        ),
        new(
            "a side in every week",
            "",
            NoSide,
            "clients/bram/programme.md\n- by-week: { 1: 3 x hold 30 s }\n"
                + "+ by-week: { 1: \"3 x hold 30 s, each side\", 2: \"3 x hold 45 s, each side\" }"
        ),
        new(
            "a sport that is not there: of its sides nobody knows, and that is said once",
            "error id-unknown",
            "clients/tess/client.yaml\n- sport: epee\n+ sport: sabre"
        ),
        new(
            "a sport that cannot be read: of its sides nobody knows, and that is said once",
            "error value-wrong",
            "sports/epee.yaml\n- weapon arm: right\n+ weapon arm: up"
        ),
        new(
            "a sport of which nothing can be read: of its sides nobody knows, and that is said once",
            "error file-unreadable",
            "sports/epee.yaml\n- weapon arm: right\n+ weapon arm: ["
        ),
    ];

    public static TheoryData<PlantedSourceFault> All => new(Faults);

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_told_where_a_side_is_missing(PlantedSourceFault fault) => fault.MustBeFound();
}
