using System.Globalization;
using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Training and texts → what an edition of them would hold.</summary>
public static class EditionContents
{
    /// <exception cref="ArgumentException">A text that is needed could not be read.</exception>
    public static EditionContent Of(Training training, Texts texts)
    {
        var programme = texts.Client.Programme;
        return new(
            CourseKey.Of(texts.Client),
            programme.Title,
            programme.Start,
            programme.Weeks,
            SessionsOf(training, programme),
            training.Exercises.Select(e => Exercise(e, texts.Of(e.Id))).ToSeries(),
            Cautions(training, texts),
            texts.Client.Clearances.Select(Line).ToSeries(),
            texts.Client.Restrictions.Select(Line).ToSeries(),
            EditionParts.Of(training, texts).ToSeries()
        )
        {
            Pauses = programme.Pauses.Select(p => new Pause(p.From, p.Until)).ToSeries(),
        };
    }

    /// <summary>What the weeks ask.</summary>
    /// <param name="programme">That of the training.</param>
    public static Series<EditionSession> SessionsOf(Training training, Programme programme)
    {
        var written = programme.AllSessions;
        return training.Sessions.Where(s => !s.IsShortened).Select(s => Session(s, written[s.Number - 1], training)).ToSeries();
    }

    private static EditionSession Session(TrainedSession session, ProgrammeSession written, Training training)
    {
        var rounds = new List<Location>();
        return new(
            written.Name,
            Days(written.Days),
            written.InsteadOf?.Value ?? "",
            training.Weeks.Select(w => w.Sessions.FirstOrDefault(s => s.Session == session.Number)?.Times ?? 0).ToSeries(),
            training
                .Uses.Where(u => u.Session == session.Number && u.Weeks.Count > 0)
                .Select(u => UseOf(u, written.Shortened is not null))
                .ToSeries()
        );

        EditionUse UseOf(Use use, bool hasShort) =>
            new(
                use.Exercise.Id,
                use.Written.Rounds is { } turns ? RoundsOf(turns) : "",
                hasShort && use.Written.KeepWhenShort,
                use.Written.MoveOn.Count == 0 ? "" : TextHash.Of(use.Written.MoveOn),
                Asked(use.Weeks).ToSeries()
            );

        string RoundsOf(Rounds turns)
        {
            if (!rounds.Contains(turns.At))
                rounds.Add(turns.At);
            return Text($"{rounds.IndexOf(turns.At) + 1}: {turns.Times} times")
                + (turns.Rest is { } rest ? Text($", rest {rest.Value} s") : "")
                + (turns.Change is { } change ? Text($", change {change.Value} s") : "");
        }
    }

    private static IEnumerable<EditionDose> Asked(Series<WeekDose> weeks)
    {
        EditionDose? open = null;
        foreach (var week in weeks)
        {
            var next = One(week);
            if (open is not null && open.To == next.From - 1 && (open.Side, open.Dose) == (next.Side, next.Dose))
            {
                open = open with { To = next.To };
                continue;
            }

            if (open is not null)
                yield return open;
            open = next;
        }

        if (open is not null)
            yield return open;
    }

    private static EditionDose One(WeekDose week)
    {
        var dose = week.Dose.AsDose;
        var (side, plus) = (dose.Terms.Side, dose.Terms.Plus);
        return new(
            week.Week,
            week.Week,
            side is null ? "" : side.Written + (plus is null ? "" : Text($", plus {plus.Sets} x on {plus.Side}")),
            DosePrinter.Print(dose with { Terms = dose.Terms with { Side = null, Plus = null } })
        );
    }

    private static string Days(SessionDays days) =>
        days switch
        {
            SessionDays.On on => string.Join(", ", on.Weekdays.Select(d => d.ToString()[..3])),
            SessionDays.EveryDays every => Text($"every {every.Days} days"),
            SessionDays.TimesAWeek times => Text($"{times.Times} times a week")
                + (times.DayBetween ? "" : ", on following days too"),
            SessionDays.BeforePlay => "before play",
            _ => throw new NotSupportedException(days.GetType().Name),
        };

    private static EditionExercise Exercise(TrainedExercise trained, Exercise exercise)
    {
        var (drill, text) = (trained.Drill, exercise.Text);
        return new(
            exercise.Id,
            exercise.Title,
            TextHash.Of([
                drill.Trains.Name,
                Kebab.Of(drill.Stage.ToString()),
                Kebab.Of(drill.Position.ToString()),
                Kebab.Of(exercise.Cue?.ToString() ?? ""),
                string.Join(',', drill.Equipment),
                string.Join(',', drill.Loads.Select(l => l.Other ? $"{l.Region.Name} other" : l.Region.Name)),
                string.Join(',', drill.Properties),
                string.Join(',', trained.NotWith),
                string.Join(',', trained.ClearFirst),
                .. text.Pair.Select(TextHash.Kind),
                .. new[] { text.Why, text.SetUp, text.Do, text.More }.SelectMany(TextHash.Parts),
            ])
        );
    }

    private static Series<EditionCaution> Cautions(Training training, Texts texts) =>
        training
            .Exercises.SelectMany(e => e.Cautions.Select(id => (Id: id, Exercise: e.Id)))
            .GroupBy(c => c.Id, c => c.Exercise)
            .Select(c => (Caution: texts.Of(c.Key), Exercises: c.ToSeries()))
            .OrderBy(c => c.Caution.Kind)
            .ThenBy(c => c.Caution.Id.Text, StringComparer.Ordinal)
            .Select(c => new EditionCaution(
                c.Caution.Id,
                c.Caution.Kind,
                c.Caution.Title,
                TextHash.Of(TextHash.Parts(c.Caution.Body)),
                c.Exercises
            ))
            .ToSeries();

    private static string Line(Clearance clearance) =>
        $"{clearance.Condition}: {clearance.By}, {clearance.On.Iso()} to {clearance.Until.Iso()}{Within(clearance.Limits)}";

    private static string Line(Restriction spared) =>
        $"{spared.Place}: {spared.By}, {spared.On.Iso()} to {spared.Until.Iso()}{Within(spared.Limits)}";

    private static string Within(Series<ClearanceLimit> limits) => string.Concat(limits.Select(l => "; " + l.Words));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
