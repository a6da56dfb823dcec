using System.Collections.Frozen;

namespace Gradus.Auditing;

/// <summary>The English words that tell a figure of the dose from another number.</summary>
internal static class SpokenWords
{
    public static readonly FrozenDictionary<string, int> Numbers = Numbered(
        "two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen "
            + "nineteen",
        2,
        1,
        ("one", 1)
    );

    public static readonly FrozenDictionary<string, int> Tens = Numbered(
        "twenty thirty forty fifty sixty seventy eighty ninety",
        20,
        10
    );

    /// <summary>What may stand between a number and its noun.</summary>
    public static readonly FrozenSet<string> Adjectives = Of(
        "slow full whole good clean long deep calm small easy quiet smooth steady careful big short gentle complete "
            + "controlled even light quick relaxed soft tiny long "
            + "proper honest single such"
    );

    /// <summary>What makes a number a part of the dose, or the name of something: "the last ten seconds", "week 3".</summary>
    public static readonly FrozenSet<string> Parts = Of(
        "last first next final another other within every past previous following further until before since even "
            + "remaining step steps week weeks page exercise point phase part number"
    );

    /// <summary>What may stand between those and the number.</summary>
    public static readonly FrozenSet<string> Fillers = Of(
        "the a an about around roughly nearly almost some full whole good for of only just or so than"
    );

    /// <summary>What begins a clause that says under which condition, and not what to do.</summary>
    public static readonly FrozenSet<string> Conditions = Of("if unless whenever when once until while whether should as");

    public static readonly FrozenSet<string> Negations = Of("not never no nor without don't neither");

    /// <summary>What ends a hold: "after 30 seconds, let go".</summary>
    public static readonly FrozenSet<string> Releases = Of(
        "let come relax lower change switch swap roll put stop return release stand rest bring ease lie sit"
    );

    /// <summary>Verbs that say how long something is, and not how long to do it.</summary>
    public static readonly FrozenSet<string> Measures = Of("takes lasts lasted took needs been is was");

    public static readonly FrozenSet<string> Periods = Of(
        "day days week weeks month year minute hour evening night bout training practice fortnight tournament morning season"
    );

    /// <summary>Ways of asking for the work itself.</summary>
    public static readonly FrozenSet<string> Asks = Of("stay hold keep remain hang linger settle");

    /// <summary>Ways of asking for repetitions.</summary>
    public static readonly FrozenSet<string> Repeats = Of("do repeat perform go again make same");

    public static readonly FrozenSet<string> Sets = Of("set sets round rounds lots goes");

    public static readonly FrozenSet<string> Repetitions = Of("repetition repetitions rep reps");

    /// <summary>One still effort: a set where the dose has no repetitions, otherwise a repetition.</summary>
    public static readonly FrozenSet<string> Efforts = Of("pushes presses pulls squeezes lifts raises holds ones");

    /// <summary>Movements, as nouns.</summary>
    public static readonly FrozenSet<string> Moves = Of(
        "turns rocks hops jumps squats lunges swings rolls slides reaches curls dips bends kicks tilts sweeps push-ups "
            + "twists extensions rotations rises"
    );

    /// <summary>The same as verbs.</summary>
    public static readonly FrozenSet<string> Moving = Of(
        "push press pull squeeze lift raise turn rock hop jump squat lunge swing roll slide reach curl dip bend kick "
            + "tilt sweep twist extend rotate rise lower"
    );

    /// <summary>What a dose gives a time to, as nouns.</summary>
    public static readonly FrozenSet<string> Timed = Of(
        "hold push press pull squeeze lift raise stretch lean rest pause repetition"
    );

    public static readonly FrozenSet<string> Limbs = Of(
        "side sides leg legs arm arms foot feet hand hands knee knees ankle ankles hip hips shoulder shoulders elbow "
            + "elbows wrist wrists heel heels calf calves thigh thighs forearm forearms "
            + "flank flanks"
    );

    /// <summary>What a share is a share of where it is an effort.</summary>
    public static readonly FrozenSet<string> Strengths = Of(
        "push press pull squeeze raise lift draw drive effort efforts strength force hard harder hardest best most power "
            + "maximum work could pushes presses pulls build begin start"
    );

    public static readonly FrozenSet<string> Pains = Of(
        "pain pains hurt hurts ache aches aching discomfort sore soreness tingling"
    );

    public static FrozenSet<string> Of(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);

    private static FrozenDictionary<string, int> Numbered(
        string words,
        int first,
        int step,
        params (string Word, int Value)[] more
    ) =>
        words
            .Split(' ')
            .Select((word, i) => (Word: word, Value: first + (i * step)))
            .Concat(more)
            .ToFrozenDictionary(n => n.Word, n => n.Value, StringComparer.Ordinal);
}
