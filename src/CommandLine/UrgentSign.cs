using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What a log says that cannot wait, one sentence each. No diagnosis: what was noted, and whom it needs.</summary>
internal static class UrgentSign
{
    /// <summary>Pain, 0 to 10, from which nobody waits for the week's review; common practice, no source.</summary>
    private const int Severe = 8;

    /// <param name="exercises">Those of the client's programme.</param>
    public static IEnumerable<string> In(LogEntry entry, IEnumerable<ExerciseId> exercises)
    {
        if (entry.IsSign())
            yield return $"{(entry.Alarm is { } alarm ? Words(alarm) : "pain in the chest")} was noted: ask at once whether a "
                + "doctor has seen it, and let nothing be done before a doctor's leave";
        else if (entry.Pains().Max(p => p.Level) is >= Severe and { } level)
            yield return FormattableString.Invariant($"pain of {level} out of 10 was noted: ask today what it is");
        if (entry.Outcome is LogOutcome.EndedEarly { For: { } why } && Words(why) is { } whole)
            yield return $"the session was stopped because {whole}: {Needs(why)}";
        foreach (var exercise in entry.Exercises)
            if (exercise.For is { } reason && Words(reason) is { } words)
                yield return $"{exercise.Exercise}{On(exercise)} was stopped because {words}: {Needs(reason)}";
        if (InNote(entry, exercises) is { } note)
            yield return $"{note}: read it, and ask today";
    }

    /// <summary>What a note says that tells of such a sign; null where it says none, or the entry is one anyway.</summary>
    public static string? InNote(LogEntry entry, IEnumerable<ExerciseId> exercises) =>
        !entry.IsSign() && NoteAlarms.In(entry.Note, exercises) is { } word
            ? $"the note has the word '{word}' in it: \"{entry.Note.Trim()}\""
            : null;

    private static string On(LoggedExercise exercise) => exercise.Side is { } side ? $" ({side.Word()})" : "";

    private static string Words(RedFlag alarm) =>
        alarm switch
        {
            RedFlag.Chest => "pain or pressure in the chest",
            RedFlag.Breath => "being short of breath",
            RedFlag.Faint => "fainting, or being close to it,",
            RedFlag.Weakness => "weakness or numbness of one side",
            RedFlag.Speech => "trouble with speaking",
            RedFlag.Sight => "trouble with seeing",
            RedFlag.Headache => "a sudden headache, worse than any before,",
            RedFlag.Saddle => "numbness between the legs, or trouble with bladder or bowels,",
            RedFlag.Other => "a sign that is not known here",
        };

    /// <summary>Null where it can wait until the coach looks at the week.</summary>
    private static string? Words(StopReason why) =>
        why switch
        {
            StopReason.Numb => "something went numb",
            StopReason.GivingWay => "something gave way",
            StopReason.Snap => "something snapped or tore",
            StopReason.Swollen => "something was hot, swollen or tender",
            StopReason.NoWeight => "an arm or a leg did not bear weight",
            StopReason.Sharp or StopReason.Dull or StopReason.Tired or StopReason.Time => null,
        };

    private static string Needs(StopReason why) =>
        why == StopReason.GivingWay
            ? "ask today, and let it not be done before you have"
            : "ask today; where it is still so, a clinician should see it today";
}
