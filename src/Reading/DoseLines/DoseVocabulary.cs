using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The words of the dose line, how each is used, and what people write instead of them.</summary>
internal static class DoseVocabulary
{
    public static readonly Series<string> Verbs = Gradus.Domain.Verbs.All.Select(v => v.Word()).ToSeries();

    public static readonly Series<string> TimeUnits = ["s", "min"];

    public static readonly Series<string> Units = ["s", "min", "breaths", "reps", "m"];

    public static readonly Series<string> Terms =
    [
        "rest",
        "pause",
        "switch",
        "each",
        "alternate",
        "both",
        "on",
        "plus",
        "tempo",
        "load",
        "leave",
        "per",
    ];

    public static readonly Series<string> All =
    [
        .. Verbs,
        .. Units,
        .. Terms,
        "side",
        "sides",
        "then",
        "at",
        "effort",
        "to",
        "in",
        "steps",
        "x",
    ];

    /// <summary>A run this long holds words that are not ours.</summary>
    private const int LongestRun = 64;

    /// <summary>Words that only seem to begin with <c>on</c> or <c>load</c>, after which any text may follow.</summary>
    private static readonly HashSet<string> Lookalikes = new(
        ["one", "ones", "once", "only", "onto", "loads", "loaded", "loading"],
        StringComparer.Ordinal
    );

    private static readonly Dictionary<string, string> Uses = new(StringComparer.Ordinal)
    {
        ["s"] = "hold 30 s",
        ["min"] = "hold 2 min",
        ["m"] = "carry 20 m",
        ["breaths"] = "hold 5 breaths",
        ["reps"] = "move 8 reps",
        ["hold"] = "hold 30 s",
        ["breathe"] = "breathe 5 breaths",
        ["press"] = "press 10 s",
        ["pull"] = "pull 10 s",
        ["raise"] = "raise 8 s",
        ["move"] = "move 8 reps",
        ["carry"] = "carry 20 m",
        ["rest"] = "rest 20 s",
        ["pause"] = "pause 5 s",
        ["switch"] = "switch 10 s",
        ["each"] = "each side",
        ["per"] = "per side",
        ["alternate"] = "alternate sides",
        ["both"] = "both sides",
        ["on"] = "on left",
        ["plus"] = "plus 1 x on left",
        ["tempo"] = "tempo 3-1-1-0",
        ["load"] = "load 8 kg",
        ["leave"] = "leave 2",
        ["side"] = "each side",
        ["sides"] = "both sides",
        ["then"] = "(press 10 s then hold 20 s)",
        ["at"] = "press 10 s at 50%",
        ["effort"] = "press 10 s at effort 5",
        ["to"] = "at 20 to 100% in 5 steps",
        ["in"] = "at 20 to 100% in 5 steps",
        ["steps"] = "at 20 to 100% in 5 steps",
        ["x"] = "3 x hold 30 s",
    };

    private static readonly Dictionary<string, string[]> Instead = new(StringComparer.Ordinal)
    {
        ["s"] = ["second", "seconds", "sec", "secs"],
        ["min"] = ["minute", "minutes", "mins"],
        ["m"] = ["metre", "metres", "meter", "meters"],
        ["breaths"] = ["breath", "inhales", "exhales"],
        ["reps"] = ["rep", "repetition", "repetitions", "times"],
        ["hold"] = ["stretch", "stay", "keep", "sit", "held"],
        ["breathe"] = ["breath", "breathing", "inhale", "exhale"],
        ["press"] = ["push", "squeeze", "contract", "tense", "isometric"],
        ["pull"] = ["draw"],
        ["raise"] = ["lift", "lifts", "lifting"],
        ["move"] = ["rock", "swing", "circle", "rotate", "repeat", "bend"],
        ["carry"] = ["walk", "march", "carries"],
        ["rest"] = ["break", "recover", "recovery"],
        ["switch"] = ["change", "swap"],
        ["alternate"] = ["alternating", "alternately"],
        ["on"] = ["left", "right", "one", "only"],
        ["plus"] = ["extra", "add"],
        ["then"] = ["and"],
        ["tempo"] = ["pace", "speed"],
        ["load"] = ["weight", "with", "loaded", "loading", "loads"],
        ["leave"] = ["rir", "reserve", "left"],
        ["x"] = ["sets", "set", "times", "by"],
        ["steps"] = ["stages", "stage"],
        ["side"] = ["leg", "arm", "legs", "arms"],
    };

    /// <summary>How a word is used, as <c>hold 30 s</c>.</summary>
    public static string Use(string word) => Uses[word];

    /// <summary>The word of these that was probably meant: what people write instead of it, one it begins with, or one few
    /// letters away.</summary>
    public static string? Meant(string written, IReadOnlyList<string> words) =>
        words.FirstOrDefault(w => Instead.TryGetValue(w, out var others) && others.Contains(written))
        ?? words.FirstOrDefault(w => w.Length > 3 && written.StartsWith(w.TrimEnd('e'), StringComparison.Ordinal))
        ?? Nearest.To(written, words.Where(w => w.Length > 1));

    /// <summary>Whether a word may end inside a run of letters: where the rest of the run is made of known words too, and after a
    /// sign that is no letter. After <c>x</c> the rest may also be a misspelt word, which is then the one to report.</summary>
    public static bool MayEnd(string word, string run, bool isSign) =>
        isSign
        || (
            word is "on" or "load"
                ? !Lookalikes.Contains(run)
                : IsMadeOfWords(run[word.Length..]) || (word == "x" && Meant(run[1..], All) is not null)
        );

    private static bool IsMadeOfWords(string run)
    {
        if (run.Length > LongestRun)
            return false;
        var reached = new bool[run.Length + 1];
        reached[0] = true;
        for (var at = 0; at < run.Length; at++)
        {
            if (!reached[at])
                continue;
            foreach (var word in All)
            {
                if (string.CompareOrdinal(run, at, word, 0, word.Length) != 0)
                    continue;
                if (word is "on" or "load")
                    return true;
                reached[at + word.Length] = true;
            }
        }

        return reached[^1];
    }
}
