namespace Gradus.Tests.Benchmarks;

/// <param name="Limb">leg, arm, or empty where a role of the sport names no side of it.</param>
/// <param name="ByWeek">Doses of weeks 1 and 3 inside the envelope.</param>
internal sealed record MadeExercise(string Id, string Limb, string[] ByWeek, string Text);

/// <summary>Two hundred exercises over eighteen motions, with every verb of work that a programme of stretching and strength
/// has.</summary>
internal static class MadeExercises
{
    private static readonly (string Motion, string Limb, string[] Loads)[] Motions =
    [
        ("ankle dorsiflexion", "leg", ["ankle", "knee"]),
        ("hip external rotation", "leg", ["hip", "knee"]),
        ("shoulder external rotation", "arm", ["shoulder", "elbow"]),
        ("thoracic rotation", "", ["upper-back", "lower-back"]),
        ("hip internal rotation", "leg", ["hip", "knee"]),
        ("wrist extension", "arm", ["wrist", "hand"]),
        ("knee flexion", "leg", ["knee", "ankle"]),
        ("shoulder flexion", "arm", ["shoulder", "upper-back"]),
        ("hip extension", "leg", ["hip", "lower-back"]),
        ("cervical rotation", "", ["neck", "upper-back"]),
        ("elbow extension", "arm", ["elbow", "wrist"]),
        ("hip abduction", "leg", ["hip", "knee"]),
        ("ankle plantarflexion", "leg", ["ankle", "foot"]),
        ("shoulder abduction", "arm", ["shoulder", "chest"]),
        ("knee extension", "leg", ["knee", "hip"]),
        ("wrist flexion", "arm", ["wrist", "elbow"]),
        ("thoracolumbar rotation", "", ["lower-back", "chest"]),
        ("hip adduction", "leg", ["hip", "knee"]),
    ];

    private static readonly (string Stage, string Verb, string Dose, string Says, string[] ByWeek)[] Kinds =
    [
        (
            "gain",
            "stretch",
            "2-3 x hold 30-60 s, rest 20 s, each side",
            "Stay there for {hold} and keep the breath slow",
            ["2 x hold 30 s", "3 x hold 45 s"]
        ),
        (
            "strengthen",
            "press",
            "2-3 x press 20-40 s at 15-20 to 60-80% in 4 steps, rest 30 s, each side",
            "Push for {press}, each step harder than the last",
            ["2 x press 20 s at 20 to 80% in 4 steps", "3 x press 28 s at 20 to 80% in 4 steps"]
        ),
        (
            "load",
            "turn",
            "2-3 x move 6-10 reps, tempo 3-1-2-1, rest 45 s, each side, load a small water bottle",
            "Do {reps} turns, slower down than up",
            ["2 x move 6 reps", "3 x move 8 reps"]
        ),
        (
            "control",
            "raise",
            "1-2 x 3-4 x raise 5-8 s, rest 30 s, pause 3 s, each side",
            "Lift it off and keep it there for {raise}",
            ["1 x 3 x raise 5 s", "2 x 3 x raise 6 s"]
        ),
        (
            "gain",
            "round",
            "2-3 x (press 10-12 s at 50-60% then pull 10-12 s at 50-60% then hold 20-25 s), rest 20 s, each side",
            "Push for {press}, pull for {pull}, then stay for {hold}",
            [
                "2 x (press 10 s at 50% then pull 10 s at 50% then hold 20 s)",
                "3 x (press 12 s at 60% then pull 12 s at 60% then hold 25 s)",
            ]
        ),
        (
            "prepare",
            "rock",
            "1-2 x move 8-12 reps, tempo 2-0-2-0, rest 20 s, each side",
            "Go there and back {reps} times without a stop",
            ["1 x move 8 reps", "2 x move 10 reps"]
        ),
    ];

    private static readonly string[] Positions =
    [
        "half-kneeling",
        "side-lying",
        "sitting",
        "standing",
        "supine",
        "hands-and-knees",
        "floor-sitting",
    ];
    private static readonly string[] Equipment = ["[mat, wall]", "[mat]", "[mat, cushion]", "[wall]", "[mat, water bottle]"];
    private static readonly string[] Ways =
    [
        "quiet",
        "steady",
        "broad",
        "near",
        "high",
        "low",
        "open",
        "long",
        "short",
        "slow",
        "easy",
        "late",
    ];

    public static readonly IReadOnlyList<MadeExercise> All = [.. Enumerable.Range(0, 200).Select(Made)];

    private static MadeExercise Made(int number)
    {
        var (motion, limb, loads) = Motions[number % Motions.Length];
        var kind = Kinds[number % 7 % Kinds.Length];
        return new(
            IdOf(number),
            limb,
            kind.ByWeek,
            $"{Header(number, motion, loads, kind.Stage, kind.Dose)}\n{Body(number, loads, kind.Says)}"
        );
    }

    private static string TitleOf(int number) =>
        $"{Ways[number / Motions.Length]} {Motions[number % Motions.Length].Motion} {Kinds[number % 7 % Kinds.Length].Verb}";

    private static string IdOf(int number) => TitleOf(number).Replace(' ', '-');

    private static string Header(int number, string motion, string[] loads, string stage, string dose)
    {
        var (easier, harder) = (number - Motions.Length, number + Motions.Length);
        var title = TitleOf(number);
        return $"""
            ---
            title: {char.ToUpperInvariant(title[0])}{title[1..]}
            trains: {motion}
            stage: {stage}
            position: {Positions[number % Positions.Length]}
            equipment: {Equipment[number % Equipment.Length]}
            loads: [{string.Join(", ", loads)}]
            dose: {dose}
            signs: [{MadeCautions.Stop(loads[0])}, {string.Join(", ", loads.Select(MadeCautions.EaseOff))}, {MadeCautions.Expect(
                loads[0]
            )}]
            not-with: [{string.Join(", ", loads.Select(MadeConditions.InjuryOf))}, hot-swollen-joint]
            clear-first: [{MadeConditions.ClearedFirst}, {MadeConditions.Ids[number % Motions.Length]}]
            {(easier >= 0 ? $"easier: {IdOf(easier)}\n" : "")}{(harder < 200 ? $"harder: {IdOf(harder)}\n" : "")}---
            """;
    }

    private static string Body(int number, string[] loads, string says)
    {
        var (way, place, title) = (
            Ways[number / Motions.Length],
            Positions[number % Positions.Length].Replace('-', ' '),
            TitleOf(number)
        );
        return $"""
            A bout asks more of the {loads[
                0
            ]} than a day at a desk does. The {title} gives some of it back, and a little more each week: a lunge is *only as long* as
            what stands behind it.

            ## Set up
            Come into {place} for the {title}, with room around you. The working side here: {"{side}"}. Let the {loads[
                ^1
            ]} lie where it is at ease, and
            put what you need within reach.

            ## Do
            1. Begin the {title} with one slow breath out, and find the {way} path of the {loads[0]}.
            2. {says} in the {title}.
            3. Come back from the {title} as slowly as you went, and let the {loads[^1]} rest for {"{rest}"}. Do {"{sets}"} sets.
            4. End the {title} early if the {loads[0]} begins to shake more than it did in the first set.

            """;
    }
}
