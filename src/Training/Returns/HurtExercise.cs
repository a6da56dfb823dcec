using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>An exercise that hurt when it was last done with a word on pain.</summary>
/// <param name="Entry">The latest one that tells of it.</param>
/// <param name="Line">Its line of that exercise.</param>
/// <param name="Level">Pain, 0 to 10; null where no number was said.</param>
/// <param name="For">For what pain it was ended early; null where it was not, or nobody said why.</param>
/// <param name="IsStopped">Whether it was ended early for pain.</param>
public sealed record HurtExercise(
    ExerciseId Exercise,
    LogEntry Entry,
    LoggedExercise Line,
    PainPlace Place,
    int? Level,
    StopReason? For,
    bool IsStopped
)
{
    /// <summary>For so many days it is remembered, the day itself counted: twice the 14 days within which a second stop at one
    /// place is a clinician's, so that who rested for two weeks and then does it twice is still within them (common practice, no
    /// source).</summary>
    public const int Days = 28;

    /// <summary>Done so often with no more pain than one trains with, it is forgotten (common practice, no source).</summary>
    public const int QuietTimes = 2;

    /// <summary>Each exercise once that was ended early for pain, or hurt more than the ease-off, in the last days, and has not
    /// been done twice since without. It belongs to the person: whatever programme it was told in, it counts.</summary>
    public static Series<HurtExercise> Of(Client client, DayRules rules, DateOnly today)
    {
        if (client.Log.Count == 0)
            return [];
        var log = LogBook.Joined(client.Log).Where(e => e.Day <= today && e.Day > today.AddDays(-Days)).ToArray();
        return (
            from entry in log
            from line in entry.Exercises
            where Hurts(line, rules)
            select Of(entry, line) into hurt
            group hurt by hurt.Exercise into same
            let last = same.Last()
            where log.Where(e => e.Day > last.Entry.Day).Count(e => IsQuiet(e, last, rules)) < QuietTimes
            select last
        ).ToSeries();
    }

    private static HurtExercise Of(LogEntry entry, LoggedExercise line)
    {
        var place = line.Pain is { } pain ? EntryPains.PlaceOf(entry, pain) : EntryPains.OnlyPlace(entry);
        var isForPain = line.For is { } why ? IsPain(why) : line.IsStopped;
        return new(
            line.Exercise,
            entry,
            line,
            place,
            line.Pain?.Level ?? EntryPains.DuringAt(entry, place),
            isForPain ? line.For : null,
            isForPain
        );
    }

    private static bool Hurts(LoggedExercise line, DayRules rules) =>
        line.Pain?.Level > rules.EaseOffAbove
        || (line.For is { } why ? IsPain(why) : line is { IsStopped: true, Pain: { Level: null or > 0 } });

    private static bool IsPain(StopReason why) => why is not (StopReason.Tired or StopReason.Time);

    /// <summary>Whether it was done again with a word on pain, and that was no more than one trains with.</summary>
    private static bool IsQuiet(LogEntry entry, HurtExercise hurt, DayRules rules) =>
        entry.Outcome is not LogOutcome.NotToday
        && entry.Exercises.Any(l => l.Exercise == hurt.Exercise && l.Sets is null or > 0 && !Hurts(l, rules))
        && EntryPains.DuringAt(entry, hurt.Place) <= rules.EaseOffAbove
        && EntryPains.Of(entry, rules).All(p => !p.Place.Meets(hurt.Place));
}
