using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>Faults planted in exercises and in how the programme uses them.</summary>
internal static class PlantedExerciseFaults
{
    /// <summary>Every condition that matters with some property, so that nothing is left out.</summary>
    private const string AllThoughtOf =
        "raised-blood-pressure, bone-thinning, joint-replacement, recent-surgery, recent-injury, pregnancy-or-birth, "
        + "blood-thinners, eye-pressure-or-retina, hernia, seizures, falls, numb-feet";

    public const string Thoughtful =
        "- not-with: [ankle-injury, recent-surgery, recent-injury, very-mobile-joints]\n+ not-with: [ankle-injury, "
        + "very-mobile-joints]\n+ clear-first: ["
        + AllThoughtOf
        + "]";

    public const string TessProgramme = "clients/tess/programme.md\n";
    public const string Press = "exercises/calf-press.md\n";
    public const string Stretch = "exercises/wall-calf-stretch.md\n";
    private const string Second = "- 2: 2 x hold 45 s\n+ 2: 2 x hold 45 s, ";
    private const string Harder = "- harder: calf-press\n+ ";
    private const string Easier = "- easier: wall-calf-stretch\n+ ";
    private const string Signs = "- signs: [sharp-pain, keep-breathing, calf-pull]\n+ signs: [sharp-pain, calf-pull]";
    private const string Breathing =
        Stretch + "- signs: [sharp-pain, pinch, calf-pull]\n+ signs: [sharp-pain, pinch, keep-breathing, calf-pull]";

    public static readonly (string Family, Series<PlantedSourceFault> Faults)[] Families =
    [
        (
            "side said twice",
            [
                new("each side", "error side-said-twice", TessProgramme + Second + "each side"),
                new("alternate sides", "error side-said-twice", TessProgramme + Second + "alternate sides"),
                new("both sides", "error side-said-twice", TessProgramme + Second + "both sides"),
                new("the other leg", "error side-said-twice", TessProgramme + Second + "on right"),
                new("a side nobody knows", "error side-said-twice", TessProgramme + Second + "on back leg"),
                new("the same name", "warning side-said-twice", TessProgramme + Second + "on rear leg"),
                new("the same leg by another name", "warning side-said-twice", TessProgramme + Second + "on left"),
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
                    TessProgramme + "- - use: calf-press\n-   side: rear leg\n-   by-week:\n-     1: 2 x press 10 s at 50%",
                    Press + Easier.Split("\n+ ")[0],
                    Stretch + Harder.Split("\n+ ")[0]
                ),
            ]
        ),
    ];
}
