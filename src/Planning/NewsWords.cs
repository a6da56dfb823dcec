using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>What is other than in an edition → what the client reads of it: a line for each kind of change in a session, and
/// nothing of what only the coach needs to know.</summary>
internal static class NewsWords
{
    /// <summary>Null where there is no edition to compare with, or nothing that concerns the client is other.</summary>
    public static PlannedNews? Of(
        EditionNow editions,
        Series<PlannedSession> sessions,
        Series<PlannedExercise> exercises,
        Words words
    )
    {
        if (editions.Before is not { } before)
            return null;
        var lines = editions
            .Changes.Select(c => (Key: KeyOf(c), c))
            .Where(c => c.Key.Phrase.Length > 0)
            .GroupBy(c => c.Key, c => c.c)
            .Select(same => Line(same.Key.Phrase, same.Key.Session, [.. same], sessions, exercises, words))
            .ToSeries();
        return lines.Count == 0 ? null : new(words.Say("news-since", ("date", words.PlainDate(before.Date))), lines);
    }

    /// <summary>The phrase of the catalogue that says it, empty where it is not for the client, and the session that it is about,
    /// empty where it is about none.</summary>
    private static (string Phrase, string Session) KeyOf(EditionChange change) =>
        change switch
        {
            EditionChange.Lasts => ("news-length", ""),
            EditionChange.Pauses => ("news-pauses", ""),
            EditionChange.SessionIn(var session) => ("news-session-in", session),
            EditionChange.SessionOut(var session) => ("news-session-out", session),
            EditionChange.SessionNamed(_, var session) => ("news-session-named", session),
            EditionChange.Days(var session, _, _) => ("news-days", session),
            EditionChange.Order(var session) => ("news-order", session),
            EditionChange.Rounds(var session, _, _, _) => ("news-order", session),
            EditionChange.Kept(var session, _, _) => ("news-short", session),
            EditionChange.ExerciseIn(var session, _) => ("news-in", session),
            EditionChange.ExerciseOut(var session, _) => ("news-out", session),
            EditionChange.Doses(var session, _, _) => ("news-doses", session),
            EditionChange.Sides(var session, _, _) => ("news-sides", session),
            EditionChange.DoneIn(var session, _, _, _) => ("news-weeks", session),
            EditionChange.MoveOn => ("news-move-on", ""),
            EditionChange.Words => ("news-words", ""),
            EditionChange.CautionIn or EditionChange.CautionWords => ("news-signs", ""),
            EditionChange.CautionFor => ("news-signs", ""),
            EditionChange.CautionOut => ("news-signs-out", ""),
            EditionChange.ClearanceIn or EditionChange.ClearanceOut => ("news-clinician", ""),
            EditionChange.RestrictionIn or EditionChange.RestrictionOut => ("news-clinician", ""),
            EditionChange.Other(EditionParts.Letter) => ("news-letter", ""),
            EditionChange.Other(EditionParts.Contact) => ("news-contact", ""),
            EditionChange.Other(EditionParts.Stages) => ("news-move-on", ""),
            EditionChange.Other(EditionParts.Retest) => ("news-retest", ""),
            EditionChange.Other or EditionChange.Titled or EditionChange.Begins => ("", ""),
            _ => throw new NotSupportedException(change.GetType().Name),
        };

    private static PlannedNewsLine Line(
        string phrase,
        string session,
        EditionChange[] same,
        Series<PlannedSession> sessions,
        Series<PlannedExercise> exercises,
        Words words
    )
    {
        var (about, signs) = (same.SelectMany(ExercisesOf).ToSeries(), same.SelectMany(SignsOf).ToSeries());
        var things = about.Select(e => e.Title).Concat(signs.Select(s => s.Title)).Distinct(StringComparer.Ordinal).ToArray();
        var said = words.Say(phrase, ("session", session), ("things", words.Joined(things, "comma")));
        var touched = about.Select(e => e.Id).Concat(signs.SelectMany(s => s.Exercises)).ToHashSet();
        return new(said, Pages().Distinct(StringComparer.Ordinal).ToSeries());

        IEnumerable<string> Pages()
        {
            foreach (var planned in sessions)
                if (planned.Name == session || (session.Length == 0 && planned.Exercises.Any(touched.Contains)))
                    yield return planned.Path;
            foreach (var exercise in exercises.Where(e => touched.Contains(e.Id)))
                yield return exercise.Path;
            if (
                phrase
                is "news-length"
                    or "news-pauses"
                    or "news-days"
                    or "news-session-in"
                    or "news-session-out"
                    or "news-retest"
            )
                yield return PagePath.Weeks;
            if (phrase is "news-signs" or "news-signs-out" or "news-clinician" or "news-contact")
                yield return PagePath.BeforeYouStart;
        }
    }

    private static IEnumerable<EditionExercise> ExercisesOf(EditionChange change) =>
        change switch
        {
            EditionChange.ExerciseIn(_, var exercise) => [exercise],
            EditionChange.ExerciseOut(_, var exercise) => [exercise],
            EditionChange.Doses(_, var exercise, _) => [exercise],
            EditionChange.Sides(_, var exercise, _) => [exercise],
            EditionChange.DoneIn(_, var exercise, _, _) => [exercise],
            EditionChange.Words(var exercise) => [exercise],
            _ => [],
        };

    private static IEnumerable<EditionCaution> SignsOf(EditionChange change) =>
        change switch
        {
            EditionChange.CautionIn(var caution) => [caution],
            EditionChange.CautionWords(var caution, _) => [caution],
            EditionChange.CautionFor(var caution, var added, var removed) =>
            [
                caution with
                {
                    Exercises = added.Concat(removed).Select(e => e.Id).ToSeries(),
                },
            ],
            EditionChange.CautionOut(var caution) => [caution],
            _ => [],
        };
}
