using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Two editions → what is other in the second.</summary>
public static class EditionComparison
{
    /// <summary>In the order in which a coach asks: the programme, its sessions, the exercises, the signs, what a clinician said,
    /// the rest. What comes with an exercise that is new, or goes with one that is out, is not named beside it.</summary>
    public static Series<EditionChange> Of(EditionContent before, EditionContent after) =>
        Whole(before, after)
            .Concat(EditionSessions.Compare(before, after))
            .Concat(WordsOf(before, after))
            .Concat(Cautions(before, after))
            .Concat(Lines(before, after))
            .Concat(Others(before, after))
            .ToSeries();

    private static IEnumerable<EditionChange> Whole(EditionContent before, EditionContent after)
    {
        if (before.Title != after.Title)
            yield return new EditionChange.Titled(before.Title, after.Title);
        if (before.Start != after.Start)
            yield return new EditionChange.Begins(before.Start, after.Start);
        if (before.Weeks != after.Weeks)
            yield return new EditionChange.Lasts(before.Weeks, after.Weeks);
        if (!before.Pauses.Equals(after.Pauses))
            yield return new EditionChange.Pauses(before.Pauses, after.Pauses);
    }

    private static IEnumerable<EditionChange> WordsOf(EditionContent before, EditionContent after) =>
        from exercise in after.Exercises
        let earlier = before.Exercises.FirstOrDefault(e => e.Id == exercise.Id)
        where earlier is not null && earlier != exercise
        select new EditionChange.Words(exercise);

    private static IEnumerable<EditionChange> Cautions(EditionContent before, EditionContent after)
    {
        var both = before.Exercises.Select(e => e.Id).Intersect(after.Exercises.Select(e => e.Id)).ToHashSet();
        foreach (var caution in after.Cautions)
        {
            if (before.Cautions.FirstOrDefault(c => c.Id == caution.Id) is not { } earlier)
            {
                if (caution.Exercises.Any(both.Contains))
                    yield return new EditionChange.CautionIn(caution);
                continue;
            }

            if ((earlier.Kind, earlier.Title, earlier.Words) != (caution.Kind, caution.Title, caution.Words))
                yield return new EditionChange.CautionWords(caution, earlier.Kind);
            var added = Named(caution.Exercises.Except(earlier.Exercises));
            var removed = Named(earlier.Exercises.Except(caution.Exercises));
            if (added.Count + removed.Count > 0)
                yield return new EditionChange.CautionFor(caution, added, removed);
        }

        foreach (var caution in before.Cautions.Where(c => after.Cautions.All(other => other.Id != c.Id)))
            if (caution.Exercises.Any(both.Contains))
                yield return new EditionChange.CautionOut(caution);

        Series<EditionExercise> Named(IEnumerable<ExerciseId> ids) =>
            ids.Where(both.Contains).Select(id => after.Exercises.First(e => e.Id == id)).ToSeries();
    }

    private static IEnumerable<EditionChange> Lines(EditionContent before, EditionContent after) =>
        [
            .. before.Clearances.Except(after.Clearances).Select(c => new EditionChange.ClearanceOut(c)),
            .. after.Clearances.Except(before.Clearances).Select(c => new EditionChange.ClearanceIn(c)),
            .. before.Restrictions.Except(after.Restrictions).Select(r => new EditionChange.RestrictionOut(r)),
            .. after.Restrictions.Except(before.Restrictions).Select(r => new EditionChange.RestrictionIn(r)),
        ];

    private static IEnumerable<EditionChange> Others(EditionContent before, EditionContent after) =>
        from name in before.Others.Concat(after.Others).Select(o => o.Name).Distinct()
        where Find(before, name) != Find(after, name)
        select new EditionChange.Other(name);

    private static string? Find(EditionContent content, string name) => content.Others.FirstOrDefault(o => o.Name == name)?.Words;
}
