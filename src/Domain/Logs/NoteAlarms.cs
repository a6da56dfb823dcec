using System.Text.RegularExpressions;

namespace Gradus.Domain;

/// <summary>Words in what a client writes freely that are told of signs which cannot wait. Nobody is judged by them: they say
/// what somebody has to read today. English and German, the languages that pages come in; the words are common practice, no
/// source.</summary>
public static partial class NoteAlarms
{
    [GeneratedRegex(
        @"\b(chest|breathless|short of breath|(can.?t|could ?n.t|cannot|hard to) breathe|faint(ed|ing)?|(passed|blacked) out"
            + @"|collapsed?|numb(ness)?|pins and needles|slurred|double vision|snapp(ed|ing)|popped|swollen|swelling"
            + @"|(gave|gives|giving|given) way|bladder|worst headache"
            + @"|brust|brustkorb|atemnot|keine luft|ohn?mächtig|ohnmacht|umgekippt|taub|taubheit|gerissen|geschwollen"
            + @"|schwellung|weggeknickt|gelähmt)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Sign();

    /// <summary>The first such word, as it is written; null where there is none.</summary>
    /// <param name="exercises">What they are called says nothing: "the chest lift went well".</param>
    public static string? In(string note, IEnumerable<ExerciseId> exercises)
    {
        foreach (var exercise in exercises)
            note = note.Replace(exercise.Text.Replace('-', ' '), "", StringComparison.OrdinalIgnoreCase);
        return Sign().Match(note) is { Success: true } sign ? sign.Value : null;
    }
}
