using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Whether one client may do one exercise, on every day of its use.</summary>
public static class Screening
{
    /// <summary>The use with everything that stands against it.</summary>
    public static Use Screened(Practice practice, Client client, Use use) =>
        use with
        {
            Against = Of(practice, client, use).ToSeries(),
            Restricted = RestrictionBreach
                .Of(practice.Card.Settings.Dose, client, use, practice.Find(use.Exercise.Id))
                .ToSeries(),
        };

    /// <summary>Every reason against that use, in the order in which the conditions are asked; none where it is allowed. Answers
    /// and clearances are judged for the programme's own dates.</summary>
    public static IEnumerable<Objection> Of(Practice practice, Client client, Use use) =>
        use.Weeks.Count > 0 && practice.Find(use.Exercise.Id) is { } exercise
            ? practice.Conditions.SelectMany(condition => Against(practice.Card.Settings, client, use, exercise, condition))
            : [];

    /// <summary>Whether the answer to a condition is needed before that exercise is done: everybody is asked it, the exercise
    /// names it, or it concerns one side of a region that the exercise loads.</summary>
    public static bool Matters(Condition condition, Exercise exercise) =>
        condition.IsAlwaysAsked || exercise.Contraindications.Any(c => c.Value == condition.Id) || MayLoad(condition, exercise);

    /// <summary>The conditions of a practice that somebody must be asked about: those that matter for any exercise of its
    /// library, and those that everybody is asked. What follows from the day of birth is not asked.</summary>
    public static Series<Condition> Asked(Practice practice) =>
        practice
            .Conditions.Where(c => c.IsAlwaysAsked || (c.Id != AlwaysAsked.Age && practice.Exercises.Any(e => Matters(c, e))))
            .ToSeries();

    /// <summary>Whether some side of the condition's region is loaded.</summary>
    public static bool MayLoad(Condition condition, Exercise exercise) => condition.IsSided && exercise.MayLoad(condition.Where);

    /// <summary>Whether the use rests on a clearance of that condition.</summary>
    public static bool RestsOnClearance(Practice practice, Client client, Use use, Condition condition) =>
        client.AnswerTo(condition.Id)?.Reply is Reply.Yes yes
        && (
            (practice.Find(use.Exercise.Id) is { } e && AsksFirst(e, condition, use) && Concerns(yes, condition, use))
            || InNeed(client, use, condition).Count > 0
        );

    private static IEnumerable<Objection> Against(
        PracticeSettings settings,
        Client client,
        Use use,
        Exercise exercise,
        Condition condition
    )
    {
        var at = Aside.Of(Names(exercise.NotWith, condition) ?? Names(exercise.ClearFirst, condition) ?? exercise.At);
        var answer = client.AnswerTo(condition.Id);
        return answer?.Reply switch
        {
            null => Matters(condition, exercise) ? [new Objection.NotAsked(condition.Id, at)] : [],
            Reply.Unread => Matters(condition, exercise) ? [new Objection.Unread(condition.Id, at)] : [],
            Reply.Pains pains => Since(settings, client, use, condition, at)
                .Concat(OfPains(settings, use, pains, new(condition.Id, answer, at))),
            Reply.Yes yes => OfYes(client, use, exercise, condition, yes, answer, at)
                .Concat(LimitsOf(settings, client, use, exercise, condition, yes, at)),
            _ when condition.Id == AlwaysAsked.PainNow => Since(settings, client, use, condition, at),
            _ => condition.Id == AlwaysAsked.RegularlyActive
                ? Hardness.TooEarly(use) is { } week
                    ? [new Objection.TooEarly(condition.Id, Aside.Of(answer), week, at)]
                    : []
                : [],
        };
    }

    /// <summary>What came back since the answer about pain, and the limits of a clinician's leave for it.</summary>
    private static IEnumerable<Objection> Since(
        PracticeSettings settings,
        Client client,
        Use use,
        Condition condition,
        Aside<Location> at
    ) => CameBack.Against(settings, client, use, at).Concat(ClearanceCheck.Limits(client, condition, use, settings.Dose, at));

    /// <summary>Above the stop nothing is trained. Above the ease-off no hard, loaded or jumped work is done on the place, and
    /// for the spine none anywhere.</summary>
    private static IEnumerable<Objection> OfPains(PracticeSettings settings, Use use, Reply.Pains pains, Hurting hurting)
    {
        foreach (var pain in pains.Places)
        {
            var isTooMuch = pain.Level > settings.StopAbove;
            if (
                isTooMuch
                || (
                    pain.Level > settings.EaseOffAbove
                    && (pain.Where.IsSpine || use.Bears(pain.Where, pain.Side))
                    && use.Weeks.Any(w => IsHeavy(use.Exercise, w.Dose.AsDose))
                )
            )
                yield return new Objection.Painful(hurting.Condition, Aside.Of(hurting.Answer), pain, isTooMuch, hurting.At);
        }
    }

    private static bool IsHeavy(Drill drill, Dose dose) =>
        Hardness.IsVigorous(drill, dose) || WorkProperties.IsLoaded(drill, dose);

    private static IEnumerable<Objection> OfYes(
        Client client,
        Use use,
        Exercise exercise,
        Condition condition,
        Reply.Yes yes,
        Answer answer,
        Aside<Location> at
    )
    {
        var (isNotWith, isClearFirst) = (
            Names(exercise.NotWith, condition) is not null,
            Names(exercise.ClearFirst, condition) is not null
        );
        if (isNotWith && Concerns(yes, condition, use))
            return [new Objection.Forbidden(condition.Id, Aside.Of(answer), at)];
        if (!isNotWith && !isClearFirst && condition.IsSided && use.Loads(condition.Where, yes.Side))
            return [new Objection.Loaded(condition.Id, Aside.Of(answer), yes.Side, at)];
        var asExerciseAsks = ClearanceCheck
            .Of(
                client,
                condition,
                answer,
                use,
                AsksFirst(exercise, condition, use) && Concerns(yes, condition, use) ? use.Weeks : [],
                ClearanceNeed.None,
                isClearFirst ? null : With(condition, use),
                at
            )
            .ToSeries();
        return asExerciseAsks.Count > 0
            ? asExerciseAsks
            : ClearanceCheck.Of(
                client,
                condition,
                answer,
                use,
                InNeed(client, use, condition),
                PreParticipation.For(client, condition.Id),
                null,
                at
            );
    }

    /// <summary>A limit for one side holds where that side is at work; any other for everything.</summary>
    private static IEnumerable<Objection> LimitsOf(
        PracticeSettings settings,
        Client client,
        Use use,
        Exercise exercise,
        Condition condition,
        Reply.Yes yes,
        Aside<Location> at
    ) =>
        yes.Side is null
        || use.Loads(condition.Where, yes.Side)
        || (AsksFirst(exercise, condition, use) && Concerns(yes, condition, use))
            ? ClearanceCheck.Limits(client, condition, use, settings.Dose, at)
            : [];

    /// <summary>The weeks for which the decision before training asks for a clearance of that condition.</summary>
    private static Series<WeekDose> InNeed(Client client, Use use, Condition condition) =>
        PreParticipation.For(client, condition.Id) switch
        {
            ClearanceNeed.None => [],
            ClearanceNeed.BeforeVigorous => use.Weeks.Where(w => Hardness.IsVigorous(use.Exercise, w.Dose.AsDose)).ToSeries(),
            _ => use.Weeks,
        };

    /// <summary>Whether a yes waits for a clearance: the exercise says so, or what it does matters with the condition and it
    /// says nothing of it.</summary>
    private static bool AsksFirst(Exercise exercise, Condition condition, Use use) =>
        Names(exercise.ClearFirst, condition) is not null
        || (Names(exercise.NotWith, condition) is null && With(condition, use) is not null);

    private static string? With(Condition condition, Use use) =>
        WorkProperties.MattersWith(condition, use.Exercise, use.Weeks.Select(w => w.Dose.AsDose));

    private static Location? Names(Series<Mention<ConditionId>> named, Condition condition) =>
        named.FirstOrDefault(n => n.Value == condition.Id)?.At;

    /// <summary>A yes for one side concerns what loads the condition's region on that side, also by standing or resting on it;
    /// where nothing of that is said, a yes for either side concerns it.</summary>
    private static bool Concerns(Reply.Yes yes, Condition condition, Use use) =>
        yes.Side is null || !use.Bears(condition.Where, null) || use.Bears(condition.Where, yes.Side);

    private sealed record Hurting(ConditionId Condition, Answer Answer, Aside<Location> At);
}
