using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Plan → what templates see. <c>here</c> is what the ids on a page begin with.</summary>
internal static class PageViews
{
    /// <param name="policy">What a page may load.</param>
    /// <param name="at">How a page is addressed.</param>
    public static SiteView Site(Plan plan, string policy, IEnumerable<string> scripts, Func<string, string> at, string here) =>
        new(
            policy,
            plan.Words.Language,
            plan.Words.Direction,
            plan.Words.Say("site-of", ("name", plan.ClientName)),
            plan.ClientName,
            plan.Publisher.Practice,
            plan.Publisher.Coach,
            plan.Publisher.Contact.Email,
            plan.Publisher.Contact.Phone,
            PhoneAddress.Digits(plan.Publisher.Contact.Phone),
            plan.Words.Say("written-by", ("coach", plan.Publisher.Coach), ("practice", plan.Publisher.Practice)),
            Emergency(plan.Emergency, here, plan.Words),
            plan.GoodUntil.Sentence,
            DateView.Of(plan.GoodUntil.Day, plan.Words).Iso,
            plan.GoodUntil.Past,
            ProseHtml.Of(plan.Publisher.Scope, 3, here, plan.Words),
            [
                new(at(PagePath.Home), plan.Words.Say("home")),
                new(at(PagePath.BeforeYouStart), plan.Words.Say("before-you-start")),
                new(at(PagePath.Weeks), plan.Words.Say("your-weeks")),
                .. plan.Progress is null ? [] : new[] { new LinkView(at(PagePath.Progress), plan.Words.Say("progress")) },
            ],
            plan.Course.Attributes().Select(a => new AttributeView(a.Name, a.Value)).ToSeries(),
            plan.Weeks.Select(w => WeekNow(w.Number, plan)).ToSeries(),
            plan.Words.Say("begins-on", ("date", plan.Words.Date(plan.Programme.Start))),
            plan.Words.Say("after-break", ("n", plan.Course.DaysBackOneWeek)),
            plan.Words.Say("after-long-break", ("n", plan.Course.DaysBackToFirst)),
            plan.Weeks.SelectMany(w => w.Pauses).Select(p => new PauseView(p.Days, p.Now)).ToSeries(),
            SpokenByScripts.InLog(plan).Select(p => new AttributeView(p.Name, p.Said)).ToSeries(),
            scripts.ToSeries()
        );

    private static EmergencyView Emergency(PlannedEmergency emergency, string here, Words words) =>
        new(
            emergency.Call,
            emergency.Address,
            words.Say("emergency-press", ("call", emergency.Call)),
            words.Say("guide-alarm", ("call", emergency.Call)),
            ProseHtml.Of(emergency.Sentence, here, words),
            ProseHtml.Of(emergency.ChestFirst, here, words)
        );

    private static WeekNowView WeekNow(int week, Plan plan)
    {
        var name = plan.Words.Say("week", ("week", week));
        return new(Number(week), plan.Words.Say("week-of", ("week", name), ("weeks", plan.Course.Weeks)), name);
    }

    internal static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    public static HomeView Home(Plan plan, Func<string, string> at, string here) =>
        new(
            at(PagePath.BeforeYouStart),
            at(PagePath.Weeks),
            plan.Progress is null ? "" : at(PagePath.Progress),
            plan.Cautions.Where(c => c.Kind == CautionKind.Stop).Select(c => c.Title).ToSeries(),
            plan.Programme.Title,
            plan.Words.Say("weeks-count", ("n", plan.Programme.Weeks)),
            DateView.Of(plan.Programme.Start, plan.Words),
            DateView.Of(plan.Programme.End, plan.Words),
            Stances(plan),
            plan.Dates.Count > 0 ? at(PagePath.Calendar) : "",
            ProseHtml.Of(plan.Programme.Letter, 3, here, plan.Words),
            [.. plan.Sessions.Where(s => s.InsteadOf is null && s.Weeks.Count > 0).Select(s => Card(plan, s))],
            [
                .. plan
                    .Weeks.Select(w => (w.Number, Said: WeekNews.Of(plan, w.Number)))
                    .Where(w => w.Said is not null)
                    .Select(w => new NewsView(Number(w.Number), w.Said ?? "")),
            ],
            plan.Words.Say("call-coach", ("coach", plan.Publisher.Coach))
        );

    public static BeforeView Before(Plan plan, string here)
    {
        var words = plan.Words;
        return new(
            Stances(plan),
            plan.Health.Agreed,
            DateView.Of(plan.Health.Answered, words),
            words.Say("health-on", ("date", words.Date(plan.Health.Answered))),
            [.. plan.Health.Answers.Select(a => new AnswerView(a.Question, a.Reply))],
            plan.Health.Elsewhere,
            [.. plan.Health.Clearances.Select(c => Clearance(c, words))],
            Cautions(plan, PagePath.BeforeYouStart, plan.Exercises.Select(e => e.Id), here)
        );
    }

    private static Series<StanceView> Stances(Plan plan) =>
        [
            .. plan.Stances.Select(s => new StanceView(
                s.Sport,
                s.Question,
                s.Answer,
                [.. s.Roles.Select(r => r.Sentence)],
                s.Sentences
            )),
        ];

    public static ExerciseView Exercise(Plan plan, PlannedExercise exercise, string here) =>
        new(
            exercise.Title,
            exercise.Trains,
            exercise.Stage,
            exercise.Position,
            exercise.Equipment,
            Pair(exercise.Text, here, plan.Words),
            ProseHtml.Of(exercise.Text.Why, 3, here, plan.Words),
            ProseHtml.Of(exercise.Text.SetUp, 3, here, plan.Words),
            ProseHtml.Of(exercise.Text.Do, 3, here, plan.Words),
            ProseHtml.Of(exercise.Text.More, 2, here, plan.Words),
            Cautions(plan, exercise.Path, [exercise.Id], here),
            [.. exercise.Uses.Select(u => Use(plan.Sessions[u.Session - 1], u, plan.Words))],
            [.. Version(exercise.Easier, "easier-version", plan), .. Version(exercise.Harder, "harder-version", plan)],
            FigureHtml.Once(plan.Figures.Where(f => f.Exercise == exercise.Id))
        );

    private static ExerciseUseView Use(PlannedSession session, PlannedUse use, Words words) =>
        new(
            new(session.Path, use.SessionName),
            use.Sides,
            use.Notes,
            use.MoveOn,
            [.. session.AllWeeks.Select(Number)],
            Rows(session, use),
            Doses(use, words)
        );

    /// <summary>What each week asks.</summary>
    internal static Series<RowView> Rows(PlannedSession session, PlannedUse use) =>
        [.. use.Rows.Select(r => new RowView(r.What, [.. session.Cells(r).Select(c => new CellView(c.Weeks, c.Said))]))];

    private static IEnumerable<LinkView> Version(ExerciseId? id, string key, Plan plan) =>
        id is null ? [] : [new(plan.Exercise(id).Path, plan.Words.Say(key, ("exercise", plan.Exercise(id).Title)))];

    /// <summary>The cautions of those exercises, worst first under their kinds, how much pain is all right, and who must leave
    /// something out.</summary>
    internal static CautionsView Cautions(Plan plan, string path, IEnumerable<ExerciseId> shown, string here)
    {
        var signs = plan.SignsOn(path, shown);
        return new(
            [
                .. signs.Kinds.Select(kind => new CautionGroupView(
                    Kebab.Of(kind.Kind.ToString()),
                    kind.Heading,
                    [.. kind.Signs.Select(s => Caution(s, plan.Words, here))]
                )),
            ],
            signs.Pain is { } pain ? new(pain.Title, pain.Sentences) : null,
            signs.Asked,
            [.. signs.Notes.Select(n => new NoteView(n.Title, n.Sentences))]
        );
    }

    private static CautionView Caution(PageSign sign, Words words, string here) =>
        new(sign.Caution.Id.Text, sign.Caution.Title, ProseHtml.Of(sign.Caution.Body, 5, here, words), sign.Where);

    private static SessionCardView Card(Plan plan, PlannedSession session) =>
        new(
            session.Path,
            Number(session.Number),
            session.Name,
            session.Days,
            session.WeekdayNumbers(),
            Lengths(session, plan.Words),
            session.Equipment,
            [.. plan.Sessions.Where(s => s.InsteadOf == session.Number && s.Weeks.Count > 0).Select(s => Card(plan, s))]
        );

    internal static Series<LengthView> Lengths(PlannedSession session, Words words) =>
        session
            .Weeks.Select(w => new LengthView(WeekData.Numbers(w.Weeks), w.Heading, TimeView.Roughly(w.Total, words)))
            .ToSeries();

    private static ClearanceView Clearance(PlannedClearance clearance, Words words) =>
        new(
            clearance.Condition,
            words.Say(
                "cleared",
                ("by", clearance.By),
                ("from", words.Date(clearance.On)),
                ("until", words.Date(clearance.Until))
            ),
            [.. clearance.Limits.Select(l => words.Say("limit", ("limit", l)))]
        );

    internal static Series<PictureView> Pair(ExerciseText text, string here, Words words)
    {
        return [.. Of("picture-start", text.Start), .. Of("picture-end", text.End)];

        IEnumerable<PictureView> Of(string label, Inline? picture) =>
            picture is null
                ? []
                :
                [
                    new(
                        words.Say(label),
                        ProseHtml.Of([picture], here, words),
                        picture is Inline.Drawn drawn && FigureHtml.IsWide(drawn)
                    ),
                ];
    }

    private static Series<DoseView> Doses(PlannedUse use, Words words) =>
        [
            .. use.Doses.Select(d => new DoseView(
                WeekData.Numbers(d.Weeks),
                words.Weeks(d.Weeks),
                d.Change,
                TimeView.Of(d.Seconds, d.About, words)
            )),
        ];
}
