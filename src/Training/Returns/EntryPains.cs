using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>The pain of one entry, place by place.</summary>
internal static class EntryPains
{
    /// <summary>Every row that applies, worst first.</summary>
    public static IEnumerable<ReturnedPain> Of(LogEntry entry, DayRules rules)
    {
        if (entry.IsSign())
            yield return new(PainKind.Now, SignAt(entry), entry, null, [], PainStep.Clinician);
        foreach (var at in StoppedFor(entry, IsSameDay).GroupBy(s => s.Place))
            yield return new(PainKind.SameDay, at.Key, entry, null, Exercises(at), PainStep.Clinician);
        foreach (var stopped in StoppedAt(entry, rules))
            yield return stopped;
        foreach (var place in PlacesOf(entry))
        {
            var (before, during, morning) = (
                LevelAt(entry, entry.Before, place),
                DuringAt(entry, place),
                LevelAt(entry, entry.Morning, place)
            );
            if ((before > rules.StopAbove || morning > rules.StopAbove) && !(during > rules.StopAbove) && !IsWorse(place))
                yield return new(PainKind.AboveStop, place, entry, Highest(before, morning), [], PainStep.First);
            if (IsWorse(place))
                yield return new(PainKind.NextMorning, place, entry, morning, [], PainStep.First);
        }

        if (entry.Worse == true && !PlacesOf(entry).Any(WorseAt(entry).Meets))
            yield return new(PainKind.NextMorning, WorseAt(entry), entry, null, [], PainStep.First);

        bool IsWorse(PainPlace place)
        {
            var (before, morning) = (LevelAt(entry, entry.Before, place), LevelAt(entry, entry.Morning, place));
            return morning > Math.Max(before ?? 0, rules.EaseOffAbove)
                || morning >= before + 2
                || (entry.Worse == true && WorseAt(entry).Meets(place));
        }
    }

    /// <summary>Those that the entry names, a side that was not said left out where it was said elsewhere; pain that names none
    /// is of the only one that is named.</summary>
    public static Series<PainPlace> PlacesOf(LogEntry entry)
    {
        var named = NamedBy(entry);
        var isOpen = named.Length != 1 && entry.Pains().Any(p => p is { Where: null, Level: > 0 });
        return isOpen ? [.. named, PainPlace.NotSaid] : [.. named];
    }

    private static PainPlace[] NamedBy(LogEntry entry)
    {
        var named = entry
            .Pains()
            .Where(p => p is { Where: not null, Level: null or > 0 })
            .Select(p => new PainPlace(p.Where, p.Side))
            .Distinct()
            .ToArray();
        return [.. named.Where(p => p.Side is not null || !named.Any(n => n != p && n.Meets(p)))];
    }

    /// <summary>0 where nothing hurt at all; null where nothing is said of that place.</summary>
    public static int? LevelAt(LogEntry entry, LoggedPain? pain, PainPlace place) =>
        pain?.Level is { } level && (level == 0 || PlaceOf(entry, pain).Meets(place)) ? level : null;

    /// <summary>The worst while it was done, at the end of an exercise too.</summary>
    public static int? DuringAt(LogEntry entry, PainPlace place) =>
        entry.Exercises.Select(e => e.Pain).Prepend(entry.During).Max(p => LevelAt(entry, p, place));

    private static IEnumerable<ReturnedPain> StoppedAt(LogEntry entry, DayRules rules)
    {
        var told = StoppedFor(entry, f => f is StopReason.Sharp or StopReason.GivingWay).ToLookup(s => s.Place);
        var places = PlacesOf(entry).Where(p => DuringAt(entry, p) > rules.StopAbove);
        foreach (var place in told.Select(t => t.Key).Concat(places).Distinct())
        {
            var ended = told[place]
                .Concat(
                    entry
                        .Exercises.Where(e => e.Pain is { } pain && LevelAt(entry, pain, place) > rules.StopAbove)
                        .Select(e => (Place: place, Exercise: (ExerciseId?)e.Exercise))
                );
            yield return new(PainKind.Stopped, place, entry, DuringAt(entry, place), Exercises(ended), PainStep.First);
        }
    }

    private static IEnumerable<(PainPlace Place, ExerciseId? Exercise)> StoppedFor(LogEntry entry, Func<StopReason, bool> wanted)
    {
        if (entry.Outcome is LogOutcome.EndedEarly { For: { } why } && wanted(why))
            yield return (entry.During is { } during ? PlaceOf(entry, during) : OnlyPlace(entry), null);
        foreach (var done in entry.Exercises.Where(e => e.For is { } f && wanted(f)))
            yield return (done.Pain is { } pain ? PlaceOf(entry, pain) : OnlyPlace(entry), done.Exercise);
    }

    private static bool IsSameDay(StopReason why) =>
        why is StopReason.Snap or StopReason.Swollen or StopReason.NoWeight or StopReason.Numb;

    private static Series<ExerciseId> Exercises(IEnumerable<(PainPlace, ExerciseId? Exercise)> stopped) =>
        stopped.Select(s => s.Exercise).OfType<ExerciseId>().Distinct().ToSeries();

    private static PainPlace SignAt(LogEntry entry) =>
        entry.Pains().FirstOrDefault(p => p.Where?.Name == "chest") is { } chest ? new(chest.Where, null) : PainPlace.NotSaid;

    /// <summary>Where it was worse on the morning after, as far as it was said.</summary>
    private static PainPlace WorseAt(LogEntry entry) =>
        new[] { entry.Morning, entry.During, entry.Before }.FirstOrDefault(p => p is { Where: not null }) is { } pain
            ? PlaceOf(entry, pain)
            : OnlyPlace(entry);

    public static PainPlace PlaceOf(LogEntry entry, LoggedPain pain) =>
        pain.Where is { } where ? new(where, pain.Side) : OnlyPlace(entry);

    public static PainPlace OnlyPlace(LogEntry entry) => NamedBy(entry) is [var only] ? only : PainPlace.NotSaid;

    private static int? Highest(int? one, int? other) => Math.Max(one ?? 0, other ?? 0);
}
