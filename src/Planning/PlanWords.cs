using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Training and texts → plan.</summary>
internal static class PlanWords
{
    private const int Letters = 26;

    public static Plan Of(Training training, Texts texts, ClientRanges ranges)
    {
        var (client, words, card) = (texts.Client, texts.Words, texts.Card);
        if (training.Refusals is [var refusal, ..])
            throw new ArgumentException($"Nothing can be planned: {refusal}.", nameof(training));
        var emergency = EmergencyWords.Of(texts);
        var filled = new FilledTexts(texts, training.Exercises.Select(e => e.Id).ToHashSet(), training.Stances, ranges);
        var sessions = training.Sessions.Select(s => Session(s, training.Uses, texts, filled)).ToSeries();
        var pages = sessions.Select(s => s.Path).ToArray();
        var retest = RetestWords.Of(client.Programme, ranges, texts);
        var concerns = ConcernWords.Of(training, texts);
        var exercises = training.Exercises.Select(e => ExerciseOf(e, training, sessions, texts, filled)).ToSeries();
        var editions = EditionNow.Of(training, texts);
        return new(
            training.Client,
            client.Name,
            words,
            new(card.Name, card.Coach, card.Contact, filled.Linked(card.Scope)),
            emergency,
            End(training.GoodUntil, words),
            Programme(client, words, filled),
            PlannedCourse.Of(training, client, editions.Number),
            StanceWords.Of(training.Stances, texts).ToSeries(),
            HealthWords.Of(training, texts),
            sessions,
            training.Weeks.Select(w => WeekWords.Of(w, texts)).ToSeries(),
            DateWords.Of(training, editions.ProgrammesBefore, pages, retest, words),
            exercises,
            Cautions(training, texts, filled),
            ConcernWords.Restrictions(texts),
            concerns,
            ConcernWords.Asked(concerns, texts),
            ConcernWords.PainRule(training.Rules, texts),
            ProgressWords.Of(ranges, texts),
            retest,
            filled.Pictures,
            filled.Clips
        )
        {
            News = NewsWords.Of(editions, sessions, exercises, words),
            Edition = editions.Number,
            Figures = FigureWords.Planned(training.Exercises.Select(e => texts.Of(e.Id))),
        };
    }

    private static PlannedEnd End(DateOnly day, Words words) =>
        new(day, words.Say("good-until", ("date", words.Date(day))), words.Say("good-until-past", ("date", words.Date(day))));

    private static PlannedProgramme Programme(Client client, Words words, FilledTexts filled)
    {
        var programme = client.Programme;
        return new(
            programme.Title,
            programme.Start,
            programme.End,
            programme.Weeks,
            client.Minutes,
            programme.MoveOn.Select(c => StageCheck(c, words)).ToSeries(),
            filled.Linked(programme.Letter)
        );
    }

    private static PlannedSession Session(TrainedSession session, Series<Use> uses, Texts texts, FilledTexts filled)
    {
        var (written, words) = (texts.Session(session.Number), texts.Words);
        var own = uses.Where(u => u.Session == session.Number && u.Weeks.Count > 0).ToArray();
        var name = session.IsShortened ? words.Say("short-version", ("session", written.Name)) : written.Name;
        return new(
            session.Number,
            name,
            PagePath.Session(session.Number),
            session.InsteadOf,
            session.Kind,
            session.IsShortened,
            filled.Days(written),
            session is { InsteadOf: null, Days: SessionDays.On on } ? on.Weekdays : [],
            own.SelectMany(u => u.Exercise.Equipment).Distinct(StringComparer.Ordinal).ToSeries(),
            own.Select((u, i) => filled.Use(u, Letter(i), name, own)).ToSeries(),
            session.Weeks.Select(w => Weeks(w, own, texts)).ToSeries()
        );
    }

    /// <summary>A to Z, then AA, AB.</summary>
    private static string Letter(int number) =>
        number < Letters ? $"{(char)('A' + number)}" : Letter((number / Letters) - 1) + Letter(number % Letters);

    /// <param name="own">The uses of the session, in its order.</param>
    private static PlannedWeeks Weeks(TimedWeeks timed, Use[] own, Texts texts)
    {
        return new(timed.Weeks, texts.Words.Weeks(timed.Weeks), timed.Steps.Select(Planned).ToSeries(), timed.About);

        Step Planned(SessionStep step)
        {
            var use = Array.FindIndex(own, u => u.Written == step.Source.Value && u.Exercise.Id == step.Exercise);
            var letter = Letter(use);
            return new(step, letter, StepWords.Of(step, letter, texts), StepWords.Detail(step.Work, texts.Words));
        }
    }

    private static PlannedCheck StageCheck(StageCheck check, Words words) =>
        new(
            words.Say("move-on-stage", ("stage", words.Say("stage-name-" + check.Stage.ToString().ToLowerInvariant()))),
            check.Conditions
        );

    private static PlannedExercise ExerciseOf(
        TrainedExercise trained,
        Training training,
        Series<PlannedSession> sessions,
        Texts texts,
        FilledTexts filled
    )
    {
        var (drill, words, exercise) = (trained.Drill, texts.Words, texts.Of(trained.Id));
        return new(
            trained.Id,
            exercise.Title,
            PagePath.Exercise(trained.Id),
            words.SayOr("motion-" + Kebab.OfWords(drill.Trains.Name), drill.Trains.Name),
            words.Say("stage-" + drill.Stage.ToString().ToLowerInvariant()),
            words.Say("position-" + Kebab.Of(drill.Position.ToString())),
            drill.Equipment,
            filled.Filled(exercise, [.. training.Uses.Where(u => u.Exercise.Id == trained.Id)]),
            sessions.Where(s => !s.IsShortened).SelectMany(s => s.Uses).Where(u => u.Exercise == trained.Id).ToSeries(),
            Planned(trained.Easier),
            Planned(trained.Harder)
        );

        ExerciseId? Planned(ExerciseId? version) => training.Exercises.FirstOrDefault(e => e.Id == version)?.Id;
    }

    private static Series<PlannedCaution> Cautions(Training training, Texts texts, FilledTexts filled) =>
        training
            .Exercises.SelectMany(e => e.Cautions.Select(id => (id, exercise: e.Id)))
            .GroupBy(c => c.id, c => c.exercise)
            .Select(c => (caution: texts.Of(c.Key), belongs: c.ToSeries()))
            .OrderBy(c => c.caution.Kind)
            .ThenBy(c => c.caution.Id.Text, StringComparer.Ordinal)
            .Select(c => new PlannedCaution(
                c.caution.Id,
                c.caution.Kind,
                c.caution.Title,
                filled.Linked(c.caution.Body),
                c.belongs
            ))
            .ToSeries();
}
