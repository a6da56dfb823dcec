using Gradus.Domain;

namespace Gradus.Rendering;

/// <summary>Plan → what templates see.</summary>
internal static class Viewing
{
    public static SiteView Site(Plan plan) => new(
        plan.Words.Language,
        plan.Words.Say("site-of", ("name", plan.ClientName)),
        plan.ClientName,
        plan.Publisher.Practice,
        plan.Publisher.Coach,
        plan.Publisher.Contact.Email,
        plan.Publisher.Contact.Phone,
        string.Concat(plan.Publisher.Contact.Phone.Where(c => char.IsAsciiDigit(c) || c == '+')),
        plan.Words.Say("written-by", ("coach", plan.Publisher.Coach), ("practice", plan.Publisher.Practice)),
        plan.Emergency,
        plan.GoodUntil,
        ProseHtml.Of(plan.Publisher.Scope, 3),
        [
            new(Plan.HomePath, plan.Words.Say("home")),
            new(Plan.BeforeYouStartPath, plan.Words.Say("before-you-start")),
            .. plan.Sessions.Select(s => new LinkView(s.Path, s.Name)),
            new(Plan.WeeksPath, plan.Words.Say("your-weeks")),
        ]);

    public static HomeView Home(Plan plan) => new(
        plan.Programme.Title,
        plan.Words.Say("weeks-count", ("n", plan.Programme.Weeks)),
        DateView.Of(plan.Programme.Start, plan.Words),
        DateView.Of(plan.Programme.End, plan.Words),
        plan.Dates.Count > 0 ? Plan.CalendarPath : "",
        ProseHtml.Of(plan.Programme.Letter, 3),
        [.. plan.Sessions.Where(s => s.InsteadOf is null && s.Weeks.Count > 0).Select(s => Card(plan, s))]);

    public static BeforeView Before(Plan plan)
    {
        var words = plan.Words;
        return new(
            plan.Stance.Sport,
            plan.Stance.Question,
            plan.Stance.Answer,
            [.. plan.Stance.Roles.Select(r => words.Say("role-is", ("role", r.Role), ("side", r.Side)))],
            DateView.Of(plan.Health.Answered, words),
            words.Say("health-on", ("date", words.Date(plan.Health.Answered))),
            [.. plan.Health.Answers.Select(a => new AnswerView(a.Question, a.Reply))],
            [.. plan.Health.Clearances.Select(c => Clearance(c, words))],
            Cautions(plan, plan.Exercises.Select(e => e.Id)));
    }

    public static SessionView Session(Plan plan, PlannedSession session) => new(
        plan.Words.Say("session-number", ("number", session.Number)),
        session.Name,
        session.Days,
        session.Equipment,
        Cautions(plan, session.Exercises),
        [.. session.Uses.Select(u => Use(plan, u))],
        [.. session.Weeks.Select(w => Weeks(w, plan.Words))]);

    public static ExerciseView Exercise(Plan plan, PlannedExercise exercise) => new(
        exercise.Title,
        exercise.Trains,
        exercise.Stage,
        exercise.Position,
        exercise.Equipment,
        ProseHtml.Of(exercise.Text.Why, 3),
        ProseHtml.Of(exercise.Text.SetUp, 3),
        ProseHtml.Of(exercise.Text.Do, 3),
        ProseHtml.Of(exercise.Text.More, 2),
        Cautions(plan, [exercise.Id]),
        [.. exercise.Uses.Select(u => new ExerciseUseView(
            new(plan.Sessions[u.Session - 1].Path, u.SessionName), u.Sides, u.Notes, u.MoveOn, Doses(u, plan.Words)))]);

    /// <summary>The cautions of those exercises, worst first under their kinds, and who must leave which exercise out.</summary>
    private static CautionsView Cautions(Plan plan, IEnumerable<ExerciseId> shown)
    {
        var exercises = shown.ToArray();
        var notWith = exercises.Distinct().Select(plan.Exercise).Select(e => new NotWithView(e.Title, e.Notes));
        return new(Groups(plan, exercises), [.. notWith]);
    }

    private static Series<CautionGroupView> Groups(Plan plan, IEnumerable<ExerciseId> exercises) => plan.CautionsFor(exercises)
        .GroupBy(c => c.Kind)
        .Select(kind => new CautionGroupView(
            Kebab.Of(kind.Key.ToString()),
            plan.Words.Say("kind-" + Kebab.Of(kind.Key.ToString())),
            [.. kind.Select(c => new CautionView(c.Id.Text, c.Title, ProseHtml.Of(c.Body, 5), BelongsTo(plan, c)))]))
        .ToSeries();

    private static string BelongsTo(Plan plan, PlannedCaution caution) =>
        plan.Words.Say("belongs-to", ("exercises", string.Join(", ", caution.Exercises.Select(e => plan.Exercise(e).Title))));

    private static SessionCardView Card(Plan plan, PlannedSession session)
    {
        var words = plan.Words;
        var (shortest, longest) = (session.Weeks.MinBy(w => w.Total.Value) ?? session.Weeks[0], session.Weeks.MaxBy(w => w.Total.Value) ?? session.Weeks[0]);
        return new(
            session.Path, words.Say("session-number", ("number", session.Number)), session.Name, session.Days,
            TimeView.Of(shortest.Total, shortest.About, words), TimeView.Of(longest.Total, longest.About, words), shortest.Total != longest.Total,
            [.. plan.Sessions.Where(s => s.InsteadOf == session.Number && s.Weeks.Count > 0).Select(s => Card(plan, s))]);
    }

    private static ClearanceView Clearance(PlannedClearance clearance, Words words) => new(
        clearance.Condition,
        words.Say("cleared", ("by", clearance.By), ("from", words.Date(clearance.On)), ("until", words.Date(clearance.Until))),
        [.. clearance.Limits.Select(l => words.Say("limit", ("limit", l)))]);

    private static UseView Use(Plan plan, PlannedUse use) => new(
        use.Title, plan.Exercise(use.Exercise).Path, use.Sides, use.Notes, use.MoveOn, Groups(plan, [use.Exercise]), ProseHtml.Of(use.Text.SetUp, 5), ProseHtml.Of(use.Text.Do, 5), ProseHtml.Of(use.Text.More, 4), Doses(use, plan.Words));

    private static Series<DoseView> Doses(PlannedUse use, Words words) =>
        [.. use.Doses.Select(d => new DoseView(words.Weeks(d.Weeks), d.Words, d.Change, TimeView.Of(d.Seconds, d.About, words)))];

    private static WeeksView Weeks(PlannedWeeks weeks, Words words) => new(
        "weeks-" + string.Join('-', weeks.Weeks),
        weeks.Heading,
        TimeView.Of(weeks.Total, weeks.About, words),
        [.. weeks.Steps.Select(s => new StepView(Kebab.Of(s.Kind.ToString()), s.Words, s.Detail, TimeView.Of(s.Seconds, false, words)))]);
}
