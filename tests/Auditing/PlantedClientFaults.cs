using Gradus.Domain;
using static Gradus.Tests.Auditing.PlantedExerciseFaults;

namespace Gradus.Tests.Auditing;

/// <summary>Faults planted in what a client has, measures and answers.</summary>
internal static class PlantedClientFaults
{
    public const string Ankle = "lying ankle dorsiflexion";

    public static readonly (string Family, Series<PlantedSourceFault> Faults)[] Families =
    [
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
                    "note growth-unfinished, warning session-over-time",
                    "clients/bram/client.yaml\n- minutes: 15\n+ minutes: 3",
                    "clients/bram/programme.md\n- by-week: { 1: 3 x hold 30 s }\n+ keep-when-short: no"
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
                        "2026-11-21,lying ankle dorsiflexion,left,passive,12,deg,tape",
                        "2026-11-21,lying ankle dorsiflexion,right,passive,9.9,deg,tape"
                    )
                ),
                new(
                    "less since",
                    "error range-below-need",
                    Needing(
                        Ankle,
                        "2026-11-28,lying ankle dorsiflexion,left,active,9,deg,tape",
                        "2026-11-21,lying ankle dorsiflexion,left,passive,12,deg,tape",
                        "2026-11-21,lying ankle dorsiflexion,right,passive,12,deg,tape"
                    )
                ),
                new(
                    "less in one mode",
                    "error range-below-need",
                    Needing(
                        Ankle,
                        "2026-11-21,lying ankle dorsiflexion,left,active,9,deg,tape",
                        "2026-11-21,lying ankle dorsiflexion,left,passive,12,deg,tape",
                        "2026-11-21,lying ankle dorsiflexion,right,passive,12,deg,tape"
                    )
                ),
                new(
                    "enough only after today",
                    "error range-below-need, warning reading-in-future",
                    Needing(
                        Ankle,
                        "2026-11-21,lying ankle dorsiflexion,left,passive,9,deg,tape",
                        "2199-12-31,lying ankle dorsiflexion,left,passive,12,deg,tape",
                        "2026-11-21,lying ankle dorsiflexion,right,passive,12,deg,tape"
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
                    Needing(Ankle, "2026-11-21,lying ankle dorsiflexion,left,passive,12,deg,tape")
                ),
                new(
                    "measured after today alone",
                    "note need-unmeasured, warning reading-in-future",
                    Needing(
                        Ankle,
                        "2026-11-21,lying ankle dorsiflexion,left,passive,12,deg,tape",
                        "2199-12-31,lying ankle dorsiflexion,right,passive,12,deg,tape"
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
                    "conditions.yaml\n- - id: raised-blood-pressure\n+ - id: sea-legs\n+   name: seasickness\n+   "
                        + "question: Do you get seasick?\n+   where: whole body\n+ - id: raised-blood-pressure",
                    "clients/bram/client.yaml\n- ankle-injury: no\n+ ankle-injury: no\n+ sea-legs: yes"
                ),
            ]
        ),
    ];

    /// <summary>The stretch needs 10 degrees. Tess does it on the left and has them; Bram does it on both sides, and has these
    /// readings.</summary>
    public static string[] Needing(string motion, params string[] readings)
    {
        const string Columns = "+ date,motion,side,mode,value,unit,instrument";
        return
        [
            Stretch + $"- stage: gain\n+ stage: gain\n+ needs: {{ {motion}: 10 }}",
            "clients/tess/readings.csv\n- 2026-11-20,lying ankle dorsiflexion,left,passive,9,deg,inclinometer\n"
                + "+ 2026-11-20,lying ankle dorsiflexion,left,passive,10,deg,tape\n"
                + "+ 2026-11-20,cervical flexion,,active,10,deg,tape",
            $"clients/bram/readings.csv\n{string.Join("\n+ ", readings.Prepend(Columns))}",
        ];
    }
}
