using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Practice and client → plan.</summary>
internal static class Planning
{
    public static Plan Plan(Practice practice, Client client)
    {
        var words = practice.Words.In(client.Language)
            ?? throw new ArgumentException($"No catalogue for '{client.Language}'.", nameof(client));
        var playing = Playing.Of(practice, client);
        if (playing.Sports.Count < client.Sports.Count)
            throw new ArgumentException("A sport could not be read.", nameof(client));
        var emergency = practice.Card.EmergencyIn(client.Country.Value)
            ?? throw new ArgumentException("No emergency text.", nameof(client));
        var uses = Uses.Of(practice, client);
        var exercises = uses.Where(u => u.Weeks.Count > 0).Select(u => u.Exercise).DistinctBy(e => e.Id).ToSeries();
        var text = new TextPlanning(practice, words, exercises.Select(e => e.Id).ToHashSet());
        var programme = client.Programme;
        var sessions = programme
            .AllSessions.Index()
            .Select(s => Session(s.Index + 1, s.Item, uses, programme, practice.Card.Settings, text))
            .ToSeries();
        var weeks = Enumerable
            .Range(1, programme.Weeks)
            .Select(week => WeekPlanning.Of(week, programme, sessions, words))
            .ToSeries();
        return new(
            client.Id,
            client.Name,
            words,
            new(practice.Card.Name, practice.Card.Coach, practice.Card.Contact, text.Linked(practice.Card.Scope)),
            emergency,
            End(Validity.Of(practice, client, uses), words),
            new(
                programme.Title,
                programme.Start,
                programme.End,
                programme.Weeks,
                client.Minutes,
                programme.MoveOn.Select(c => StageCheck(c, words)).ToSeries(),
                text.Linked(programme.Letter)
            ),
            PlannedCourse.Of(client, practice.Card.Settings, sessions, weeks),
            StancePlanning.Of(playing, words).ToSeries(),
            HealthPlanning.Of(practice, client, exercises, words),
            sessions,
            weeks,
            DatePlanning.Of(client, sessions, weeks, words).ToSeries(),
            exercises.Select(e => ExerciseOf(practice, e, uses, exercises, sessions, text)).ToSeries(),
            Cautions(practice, client, exercises, text),
            text.Pictures,
            text.Clips
        );
    }

    private static PlannedEnd End(DateOnly day, Words words) =>
        new(day, words.Say("good-until", ("date", words.Date(day))), words.Say("good-until-past", ("date", words.Date(day))));

    private static PlannedSession Session(
        int number,
        ProgrammeSession session,
        Series<Use> uses,
        Programme programme,
        PracticeSettings settings,
        TextPlanning text
    )
    {
        var own = uses.Where(u => u.Session == number && u.Weeks.Count > 0).ToArray();
        var whole = session.InsteadOf is { } other
            ? programme.Sessions.Index().First(s => s.Item.Name == other.Value).Index + 1
            : (int?)null;
        var name = session.IsShortened ? text.Words.Say("short-version", ("session", session.Name)) : session.Name;
        return new(
            number,
            name,
            $"session-{number}.html",
            whole,
            session.Kind,
            session.IsShortened,
            text.Days(session),
            session is { InsteadOf: null, Days: SessionDays.On on } ? on.Weekdays : [],
            own.SelectMany(u => u.Exercise.Equipment).Distinct(StringComparer.Ordinal).ToSeries(),
            own.Select(u => text.Use(u, name, own, settings)).ToSeries(),
            SessionPlanning.WeeksOf(own, programme.Weeks, settings, text.Words)
        );
    }

    private static PlannedCheck StageCheck(StageCheck check, Words words) =>
        new(
            words.Say("move-on-stage", ("stage", words.Say("stage-name-" + check.Stage.ToString().ToLowerInvariant()))),
            check.Conditions
        );

    private static PlannedExercise ExerciseOf(
        Practice practice,
        Exercise exercise,
        Series<Use> uses,
        Series<Exercise> planned,
        Series<PlannedSession> sessions,
        TextPlanning text
    ) =>
        new(
            exercise.Id,
            exercise.Title,
            TextPlanning.PathOf(exercise.Id),
            text.Words.SayOr("motion-" + Kebab.OfWords(exercise.Trains.Name), exercise.Trains.Name),
            text.Words.Say("stage-" + exercise.Stage.ToString().ToLowerInvariant()),
            text.Words.Say("position-" + Kebab.Of(exercise.Position.ToString())),
            exercise.Equipment,
            Notes(practice, exercise, text.Words).ToSeries(),
            text.Filled(exercise, [.. uses.Where(u => u.Exercise.Id == exercise.Id)]),
            sessions.Where(s => !s.IsShortened).SelectMany(s => s.Uses).Where(u => u.Exercise == exercise.Id).ToSeries(),
            planned.FirstOrDefault(e => e.Id == exercise.Easier?.Value)?.Id,
            planned.FirstOrDefault(e => e.Id == exercise.Harder?.Value)?.Id
        );

    private static IEnumerable<string> Notes(Practice practice, Exercise exercise, Words words)
    {
        var clearFirst = exercise.ClearFirst.Where(c => exercise.NotWith.All(n => n.Value != c.Value));
        foreach (var (key, named) in new[] { ("not-with", exercise.NotWith), ("clear-first", clearFirst) })
        {
            var names = named.Select(c => practice.Find(c.Value)?.Name).OfType<string>().ToArray();
            if (names.Length > 0)
                yield return words.Say(key, ("conditions", words.Joined(names, "semicolon")));
        }
    }

    private static Series<PlannedCaution> Cautions(
        Practice practice,
        Client client,
        Series<Exercise> exercises,
        TextPlanning text
    ) =>
        exercises
            .SelectMany(e => practice.CautionsOf(e, client).Select(id => (id, exercise: e.Id)))
            .GroupBy(c => c.id, c => c.exercise)
            .Select(c =>
                (
                    caution: practice.Find(c.Key) ?? throw new ArgumentException($"No caution '{c.Key}'.", nameof(practice)),
                    belongs: c.ToSeries()
                )
            )
            .OrderBy(c => c.caution.Kind)
            .ThenBy(c => c.caution.Id.Text, StringComparer.Ordinal)
            .Select(c => new PlannedCaution(
                c.caution.Id,
                c.caution.Kind,
                c.caution.Title,
                text.Linked(c.caution.Body),
                c.belongs
            ))
            .ToSeries();
}
