using System.Text.RegularExpressions;

namespace Gradus.Domain;

/// <summary>Words in what a client writes freely that are told of signs which cannot wait. Nobody is judged by them: they say
/// what somebody has to read today. English and German, the languages that pages come in; the words are common practice, no
/// source.</summary>
public static partial class NoteAlarms
{
    [GeneratedRegex(
        @"\b(chest|breathless|short of breath|(can.?t|could ?n.t|cannot|hard to) breathe|faint(ed|ing)?"
            + @"|(passed|blacked) out|collapsed?|numb(ness)?|pins and needles|tripp?(ed|ing)? over my|slurred"
            + @"|(face|mouth) droop(s|ed|ing)?|(double vision|(seeing|saw|see) double)|curtain (coming|down|over)"
            + @"|snapp(ed|ing)|(felt|heard) a pop|popped|swollen|swell(s|ed|ing)?|(gave|gives|giving|given) way"
            + @"|bladder|not pee|worst headache|seizure|had a fit|hit my head|skipp(ed|ing) beats?"
            + @"|heart (was|is|kept|keeps) (racing|pounding|skipping|fluttering)|palpitations|jaw (ache|pain)"
            + @"|hot and (thick|red|tender)|(red|thick) and hot|fracture|pregnant|am expecting|spotting|bleeding"
            + @"|night sweats|fever|a temperature|without trying|a lump|a hypo|my( \w+)? inhaler|warfarin"
            + @"|blood thinners?|new (tablets?|medicine|medication|pills?)|(put|started) me on|diagnos(ed|is)|brust"
            + @"|brustkorb|atemnot|keine luft|ohn?mächtig|ohnmacht|umgekippt|schwarz vor( den)? augen|taub|taubheit"
            + @"|gerissen|geschwollen|schwellung|(dick|rot) und heiß|dick und heiss|weggeknickt|gelähmt"
            + @"|kein wasser lassen|krampfanfall|herzrasen|herzstolpern|blutverdünner|schwanger|gebrochen|fieber"
            + @"|neue tabletten)\b",
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
