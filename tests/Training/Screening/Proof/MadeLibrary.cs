namespace Gradus.Tests.Trainings;

/// <summary>A dose line with what it asks of somebody.</summary>
/// <param name="Effort">Per cent at most; 0 for work that has none, null where nobody stated how hard it is.</param>
/// <param name="Hold">Seconds on end; 0 where nothing is held. A carry takes 10 s for each 10 m.</param>
/// <param name="Contraction">Seconds on end of press, pull, raise or carry; 0 where there is none.</param>
internal sealed record MadeLine(string Text, int? Effort, int Hold, int Contraction = 0);

/// <summary>A kind of dose.</summary>
/// <param name="Terms">What stands behind the work.</param>
/// <param name="Lines">Inside the envelope; the first is the envelope of an exercise whose dose has no ranges.</param>
internal sealed record MadeDose(string Envelope, string Terms, MadeLine[] Lines)
{
    private static readonly string[] Verbs = ["press", "pull", "raise", "hold", "move", "carry", "breathe"];

    public string Verb => Envelope.Split(' ').First(Verbs.Contains);

    public bool NamesLoad => Terms.Contains("load", StringComparison.Ordinal);
}

/// <summary>One exercise of a made library.</summary>
/// <param name="Part">The region that its motion moves.</param>
/// <param name="Loads">As written: "knee", "other wrist"; null where nothing is written.</param>
/// <param name="IsFixed">Whether its dose has no ranges, so that it is the same in every week.</param>
internal sealed record MadeExercise(
    string Id,
    string Motion,
    string Part,
    bool IsPaired,
    string Stage,
    string Position,
    string[]? Loads,
    MadeDose Dose,
    bool IsFixed,
    string[] Properties,
    string[] NotWith,
    string[] ClearFirst,
    string? Easier,
    string? Harder
)
{
    public string Title => "Drill " + Id;

    public override string ToString() =>
        $"{Id}: {Stage} {Motion}, {Position}, loads [{string.Join(", ", Loads ?? ["not written"])}], "
        + $"[{string.Join(", ", Properties)}], {Dose.Envelope}{Dose.Terms}, not with [{string.Join(", ", NotWith)}], "
        + $"clear first [{string.Join(", ", ClearFirst)}]";
}

/// <param name="Where">The region; "whole body" for no one place.</param>
internal sealed record MadeCondition(string Id, string Where, bool IsSided);

/// <summary>What comes of a yes for every exercise that has something.</summary>
/// <param name="IsNotWith">Else it needs a clearance.</param>
/// <param name="Key">properties, stages, positions or loads.</param>
/// <param name="Value">Of positions several, with commas.</param>
internal sealed record MadeTrait(string Condition, bool IsNotWith, string Key, string Value);

/// <summary>The exercises and conditions that the clients of one made practice share.</summary>
internal sealed record MadeLibrary(MadeExercise[] Exercises, int AnswersLast, int YouthEffort, MadeTrait[] Traits)
{
    /// <summary>The practice's own questions, beside those that everybody is asked.</summary>
    public static readonly MadeCondition[] Own =
    [
        new("sore-ankle", "ankle", true),
        new("sore-wrist", "wrist", true),
        new("sore-knee", "knee", true),
        new("sore-shoulder", "shoulder", true),
        new("sore-elbow", "elbow", true),
        new("sore-calf", "calf", true),
        new("sore-groin", "groin", true),
        new("stiff-foot", "foot", false),
        new("faint-spells", "whole body", false),
    ];

    private static readonly MadeDose[] Doses =
    [
        new(
            "2 x press 10-20 s at 30-80%",
            ", rest 20 s",
            [
                new("2 x press 10 s at 30%", 30, 10, 10),
                new("2 x press 15 s at 60%", 60, 15, 15),
                new("2 x press 20 s at 80%", 80, 20, 20),
            ]
        ),
        new(
            "2 x press 8-10 s at 30-60%",
            ", rest 20 s",
            [new("2 x press 8 s at 30%", 30, 8, 8), new("2 x press 10 s at 60%", 60, 10, 10)]
        ),
        new(
            "2 x hold 20-60 s",
            ", rest 20 s",
            [new("2 x hold 20 s", 0, 20), new("2 x hold 45 s", 0, 45), new("2 x hold 60 s", 0, 60)]
        ),
        new("2 x hold 20-40 s", ", load a bottle", [new("2 x hold 20 s", null, 20), new("2 x hold 40 s", null, 40)]),
        new("2 x move 6-10 reps", ", leave 2", [new("2 x move 6 reps", 80, 0), new("2 x move 10 reps", 80, 0)]),
        new("2 x move 4-6 reps", "", [new("2 x move 4 reps", 0, 0), new("2 x move 6 reps", 0, 0)]),
        new(
            "2 x raise 5-12 s at effort 5",
            "",
            [new("2 x raise 5 s at effort 5", 50, 5, 5), new("2 x raise 12 s at effort 5", 50, 12, 12)]
        ),
        new("2 x 3 x press 5-8 s", ", pause 4 s", [new("2 x 3 x press 5 s", null, 5, 5), new("2 x 3 x press 8 s", null, 8, 8)]),
        new(
            "2 x 3 x pull 5-8 s at 20%",
            "",
            [new("2 x 3 x pull 5 s at 20%", 20, 15, 15), new("2 x 3 x pull 8 s at 20%", 20, 24, 24)]
        ),
        new(
            "2 x carry 20-40 m at effort 8",
            "",
            [new("2 x carry 20 m at effort 8", 80, 20, 20), new("2 x carry 40 m at effort 8", 80, 40, 40)]
        ),
        new("2 x carry 20-40 m", "", [new("2 x carry 20 m", null, 20, 20), new("2 x carry 40 m", null, 40, 40)]),
        new(
            "2 x carry 12-30 m at effort 4",
            "",
            [new("2 x carry 12 m at effort 4", 40, 12, 12), new("2 x carry 30 m at effort 4", 40, 30, 30)]
        ),
        new(
            "2 x carry 8-10 m at effort 4",
            "",
            [new("2 x carry 8 m at effort 4", 40, 8, 8), new("2 x carry 10 m at effort 4", 40, 10, 10)]
        ),
        new("2 x hold 2-4 breaths", "", [new("2 x hold 2 breaths", 0, 20), new("2 x hold 4 breaths", 0, 40)]),
        new("2 x breathe 4-6 breaths", "", [new("2 x breathe 4 breaths", 0, 0), new("2 x breathe 6 breaths", 0, 0)]),
        new("2 x move 8-9 reps", ", load a bottle", [new("2 x move 8 reps", null, 0), new("2 x move 9 reps", null, 0)]),
        new(
            "2 x move 8-9 reps at effort 4",
            ", load a bottle",
            [new("2 x move 8 reps at effort 4", 40, 0), new("2 x move 9 reps at effort 4", 40, 0)]
        ),
    ];

    private static readonly string[] Stages = ["prepare", "gain", "strengthen", "control", "load"];

    private static readonly (string Motion, string Part, bool IsPaired)[] Motions =
    [
        ("ankle dorsiflexion", "ankle", true),
        ("wrist extension", "wrist", true),
        ("knee flexion", "knee", true),
        ("shoulder flexion", "shoulder", true),
        ("hip extension", "hip", true),
        ("thoracolumbar flexion", "lower-back", false),
        ("thoracic rotation", "upper-back", true),
        ("cervical flexion", "neck", false),
    ];

    private static readonly string[] Positions =
    [
        "supine",
        "prone",
        "hands-and-knees",
        "half-kneeling",
        "kneeling",
        "standing",
        "sitting",
        "hanging",
        "split-stance",
        "squat",
    ];

    private static readonly string[]?[] Loads =
    [
        null,
        ["ankle"],
        ["other ankle"],
        ["knee", "other knee"],
        ["wrist"],
        ["other wrist", "shoulder"],
        ["foot", "ankle"],
        ["lower-back"],
        ["shoulder", "other shoulder"],
        ["hip", "knee"],
        ["neck"],
        ["upper-back"],
        ["chest", "belly"],
        ["calf"],
        ["thigh"],
    ];

    private static readonly string[][] Properties =
    [
        [],
        [],
        [],
        ["trunk-end-range"],
        ["jumping"],
        ["balance"],
        ["head-low"],
        ["weight-on-hands"],
        ["sits-on-heels"],
        ["mid-range"],
        ["mid-range", "worn-load"],
        ["worn-load"],
        ["mid-range", "jumping"],
    ];

    private static readonly string[] NamedOften =
    [
        .. Own.Select(c => c.Id),
        "hernia",
        "raised-blood-pressure",
        "bone-thinning",
        "heart-disease",
        "signs-or-symptoms",
        "falls",
        "joint-replacement",
        "fever",
        SecondFloor.From65,
    ];

    /// <summary>Six exercises: three whose doses have ranges, and three without, which are their easier and harder
    /// versions.</summary>
    public static MadeLibrary Of(Reading.Chance chance) =>
        new(
            [.. Enumerable.Range(0, 6).Select(i => One(chance, i))],
            chance.Of([180, 180, 60, 25]),
            chance.Of([60, 60, 40, 75]),
            [TraitOf(chance)]
        );

    private static MadeTrait TraitOf(Reading.Chance chance)
    {
        var (condition, key) = (chance.Of(Own).Id, chance.Of(["properties", "stages", "positions", "loads"]));
        return new(
            condition,
            chance.Below(2) == 0,
            key,
            chance.Of(
                key switch
                {
                    "properties" => ["trunk-end-range", "jumping", "balance", "weight-on-hands", "worn-load"],
                    "stages" => Stages,
                    "positions" => [string.Join(", ", Positions.Where(_ => chance.Below(2) == 0).DefaultIfEmpty("squat"))],
                    _ => new[] { "ankle", "knee", "wrist", "shoulder", "neck", "lower-back", "calf", "groin" },
                }
            )
        );
    }

    private static MadeExercise One(Reading.Chance chance, int index)
    {
        var motion = chance.Of(Motions);
        var named = Enumerable.Range(0, 3).Select(_ => chance.Of(NamedOften)).Distinct().ToArray();
        var isFixed = index >= 3;
        return new(
            "d" + index,
            motion.Motion,
            motion.Part,
            motion.IsPaired,
            chance.Of(Stages),
            chance.Of(Positions),
            chance.Of(Loads),
            chance.Of(Doses),
            isFixed,
            chance.Of(Properties),
            [.. named.Take(1)],
            [.. named.Skip(1)],
            isFixed ? null : "d" + (3 + chance.Below(3)),
            isFixed ? null : "d" + (3 + chance.Below(3))
        );
    }
}
