using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What to say where a verb and its amount or effort do not go together: the verb that was meant.</summary>
internal static class VerbFaults
{
    public static Series<string> UnitsOf(Verb verb) =>
        verb switch
        {
            Verb.Hold or Verb.Breathe => ["s", "min", "breaths"],
            Verb.Move => ["reps", "s", "min"],
            Verb.Carry => ["m"],
            Verb.Press or Verb.Pull or Verb.Raise => DoseVocabulary.TimeUnits,
        };

    /// <summary>As <c>s, min or breaths</c>.</summary>
    public static string Or(IReadOnlyList<string> words) =>
        words.Count == 1 ? words[0] : $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}";

    public static WrittenAmount? WrongUnit(DoseScanner scanner, Verb verb, WrittenRange range, string unit)
    {
        var help = (verb, unit) switch
        {
            (Verb.Breathe, "reps") => $"For a repeated movement write move; to count breaths write breathe {range} breaths.",
            (_, "reps") => $"For a repeated movement write move: move {range} reps.",
            (Verb.Move, "m") => $"For a walk with a load write carry: carry {range} m.",
            (_, "m") => $"For minutes write {verb.Word()} {range} min; for a walk with a load write carry.",
            (Verb.Carry or Verb.Move, "breaths") => $"For slow breathing write breathe: breathe {range} breaths.",
            (_, "breaths") => $"For a relaxed stay write hold: hold {range} breaths.",
            _ => $"For a movement over time write move: move {range} {unit}.",
        };
        return scanner.Refuse<WrittenAmount>(
            scanner.Since(range.Place.Start),
            $"{verb.Word()} is {Meaning(verb)}, measured in {Measure(verb)}, not in {Measure(unit)}.",
            help
        );
    }

    /// <param name="place">The effort, from its <c>at</c>.</param>
    public static Effort? NoEffort(DoseScanner scanner, Verb verb, LinePlace place) =>
        scanner.Refuse<Effort>(
            place,
            $"{verb.Word()} is {Meaning(verb)} and has no effort.",
            verb == Verb.Hold
                ? "For a still push write press, as in press 10 s at 50%; otherwise leave out the effort."
                : "Leave out the effort; for a still push write press, as in press 10 s at 50%."
        );

    /// <param name="place">The effort, from its <c>at</c>.</param>
    public static Effort? NoPercentage(DoseScanner scanner, Verb verb, LinePlace place) =>
        scanner.Refuse<Effort>(
            place,
            $"{verb.Word()} is {Meaning(verb)} and has no percentage; only press, pull and raise have.",
            $"Write a felt effort from 0 to 10, as in {DoseVocabulary.Use(verb.Word())} at effort 5."
        );

    private static string Meaning(Verb verb) =>
        verb switch
        {
            Verb.Hold => "a relaxed stay",
            Verb.Breathe => "slow breathing",
            Verb.Press => "a still push",
            Verb.Pull => "a still pull",
            Verb.Raise => "a lift that is kept",
            Verb.Move => "a repeated movement",
            Verb.Carry => "a walk with a load",
        };

    private static string Measure(Verb verb) =>
        verb switch
        {
            Verb.Hold or Verb.Breathe => "time or breaths",
            Verb.Move => "reps or time",
            Verb.Carry => "metres",
            Verb.Press or Verb.Pull or Verb.Raise => "time",
        };

    private static string Measure(string unit) =>
        unit switch
        {
            "s" or "min" => "time",
            "m" => "metres",
            _ => unit,
        };
}
