namespace Gradus.Domain;

/// <summary>The words that a coach can write in braces in an exercise's text, and which of them somebody meant who wrote another
/// one.</summary>
public static class PlaceholderNames
{
    /// <summary>Without braces, in the order in which they are told.</summary>
    public static readonly Series<string> All =
    [
        "hold",
        "press",
        "pull",
        "raise",
        "rest",
        "effort",
        "sets",
        "reps",
        "breaths",
        "side",
    ];

    /// <summary>What coaches call the same things.</summary>
    private static readonly Dictionary<string, string> OtherNames = new(StringComparer.Ordinal)
    {
        ["time"] = "hold",
        ["duration"] = "hold",
        ["seconds"] = "hold",
        ["secs"] = "hold",
        ["stay"] = "hold",
        ["push"] = "press",
        ["lift"] = "raise",
        ["pause"] = "rest",
        ["break"] = "rest",
        ["intensity"] = "effort",
        ["percent"] = "effort",
        ["percentage"] = "effort",
        ["rounds"] = "sets",
        ["repeats"] = "reps",
        ["repeat"] = "reps",
        ["repetitions"] = "reps",
        ["repetition"] = "reps",
        ["times"] = "reps",
        ["breathing"] = "breaths",
        ["leg"] = "side",
        ["arm"] = "side",
        ["left"] = "side",
        ["right"] = "side",
    };

    /// <summary>The placeholder that is meant by what stands between two braces; null where none is near.</summary>
    public static string? Meant(string written)
    {
        var words = new string([.. written.Select(c => char.IsLetter(c) ? char.ToLowerInvariant(c) : ' ')]).Split(
            ' ',
            StringSplitOptions.RemoveEmptyEntries
        );
        return words.FirstOrDefault(w => All.Contains(w, StringComparer.Ordinal))
            ?? words.Select(w => OtherNames.GetValueOrDefault(w)).OfType<string>().FirstOrDefault()
            ?? Nearest.To(string.Concat(words), All)
            ?? words.Select(w => Nearest.To(w, All)).OfType<string>().FirstOrDefault();
    }
}
