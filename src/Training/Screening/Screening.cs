using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Whether one client may do one exercise, on every day of its use.</summary>
public static class Screening
{
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
    /// library, and those that everybody is asked.</summary>
    public static Series<Condition> Asked(Practice practice) =>
        practice.Conditions.Where(c => c.IsAlwaysAsked || practice.Exercises.Any(e => Matters(c, e))).ToSeries();

    /// <summary>Whether some side of the condition's region is loaded.</summary>
    public static bool MayLoad(Condition condition, Exercise exercise) =>
        condition.IsSided && (exercise.Trains.Region == condition.Where || exercise.Loads.Any(l => l.Region == condition.Where));

    /// <summary>Whether the use rests on a clearance of that condition.</summary>
    public static bool RestsOnClearance(Practice practice, Client client, Use use, Condition condition) =>
        client.AnswerTo(condition.Id)?.Reply is Reply.Yes yes
        && (
            (
                practice.Find(use.Exercise.Id) is { } e
                && Names(e.ClearFirst, condition) is not null
                && Concerns(yes, condition, use)
            )
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
        if (!Matters(condition, exercise))
            return client.AnswerTo(condition.Id)?.Reply is Reply.Yes { Side: null }
                ? ClearanceCheck.Limits(client, condition, use, settings.Dose, Aside.Of(exercise.At))
                : [];
        var (notWith, clearFirst) = (Names(exercise.NotWith, condition), Names(exercise.ClearFirst, condition));
        var at = Aside.Of(notWith ?? clearFirst ?? exercise.At);
        if (client.AnswerTo(condition.Id) is not { } answer)
            return [new Objection.NotAsked(condition.Id, at)];
        switch (answer.Reply)
        {
            case Reply.Unread:
                return [new Objection.Unread(condition.Id, at)];
            case Reply.Pains pains:
                return pains
                    .Places.Where(p => p.Level > settings.StopAbove && use.Hurts(p))
                    .Select(p => new Objection.Painful(condition.Id, Aside.Of(answer), p, at));
            case Reply.Yes yes:
                var against = OfYes(
                    client,
                    use,
                    exercise,
                    condition,
                    answer,
                    yes,
                    notWith is not null,
                    clearFirst is not null,
                    at
                );
                return against
                    .Concat(
                        IsWhereItConcerns(yes, condition, use, clearFirst is not null)
                            ? ClearanceCheck.Limits(client, condition, use, settings.Dose, at)
                            : []
                    )
                    .ToSeries();
            default:
                return [];
        }
    }

    private static IEnumerable<Objection> OfYes(
        Client client,
        Use use,
        Exercise exercise,
        Condition condition,
        Answer answer,
        Reply.Yes yes,
        bool isNotWith,
        bool isClearFirst,
        Aside<Location> at
    )
    {
        if (isNotWith && Concerns(yes, condition, use))
            return [new Objection.Forbidden(condition.Id, Aside.Of(answer), at)];
        if (!isNotWith && !isClearFirst && condition.IsSided && use.Loads(condition.Where, yes.Side))
            return [new Objection.Loaded(condition.Id, Aside.Of(answer), yes.Side, at)];
        if (!isNotWith && !isClearFirst && Omission.Of(condition, exercise) is { } property)
            return [new Objection.LeftOut(condition.Id, Aside.Of(answer), property, at)];
        var asExerciseAsks = ClearanceCheck
            .Of(
                client,
                condition,
                answer,
                use,
                isClearFirst && Concerns(yes, condition, use) ? use.Weeks : [],
                ClearanceNeed.None,
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
                at
            );
    }

    /// <summary>A limit for one side holds where that side is at work; any other for everything.</summary>
    private static bool IsWhereItConcerns(Reply.Yes yes, Condition condition, Use use, bool isClearFirst) =>
        yes.Side is null || use.Loads(condition.Where, yes.Side) || (isClearFirst && Concerns(yes, condition, use));

    /// <summary>The weeks for which the decision before training asks for a clearance of that condition.</summary>
    private static Series<WeekDose> InNeed(Client client, Use use, Condition condition) =>
        PreParticipation.For(client, condition.Id) switch
        {
            ClearanceNeed.None => [],
            ClearanceNeed.BeforeVigorous => use.Weeks.Where(w => Hardness.IsVigorous(use.Exercise, w.Dose.AsDose)).ToSeries(),
            _ => use.Weeks,
        };

    private static Location? Names(Series<Mention<ConditionId>> named, Condition condition) =>
        named.FirstOrDefault(n => n.Value == condition.Id)?.At;

    /// <summary>A yes for one side concerns what loads the condition's region on that side; where the exercise does not say that
    /// it loads that region, a yes for either side concerns it.</summary>
    private static bool Concerns(Reply.Yes yes, Condition condition, Use use) =>
        yes.Side is null || use.Exercise.Loads.All(l => l.Region != condition.Where) || use.Loads(condition.Where, yes.Side);
}
