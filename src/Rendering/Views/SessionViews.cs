using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Plan → what the template of a session sees. <c>here</c> is what the ids on its page begin with.</summary>
internal static class SessionViews
{
    public static SessionView Of(Plan plan, PlannedSession session, string here) =>
        new(
            PageViews.Number(session.Number),
            session.Name,
            session.Days,
            PageViews.Lengths(session, plan.Words),
            session.Equipment,
            PageViews.Cautions(plan, session.Path, session.Exercises, here),
            [.. session.Uses.Select(u => Use(plan, session, u, here))],
            [.. session.AllWeeks.Select(PageViews.Number)],
            [.. session.Weeks.Select(w => Weeks(w, plan.Words))],
            Grid(plan, session),
            GuideViews.Of(plan, session),
            FigureHtml.Once(plan.Figures.Where(f => session.Exercises.Contains(f.Exercise)))
        );

    private static UseView Use(Plan plan, PlannedSession session, PlannedUse use, string here) =>
        new(
            use.Exercise.Text,
            use.Letter,
            PageId.Exercise(use.Letter),
            string.Join(' ', use.Loads),
            WeekData.Numbers(use.Weeks),
            use.BeginsLater(session) ? plan.Words.Say("from-week", ("week", use.Weeks.First()), ("exercise", use.Title)) : "",
            use.Title,
            plan.Exercise(use.Exercise).Path,
            use.Sides,
            use.Notes,
            use.MoveOn,
            [
                .. plan.SignsOn(session.Path, [use.Exercise])
                    .Kinds.Select(k => new SignNamesView(Kebab.Of(k.Kind.ToString()), k.Heading, k.Names(plan.Words))),
            ],
            PageViews.Pair(use.Text, here, plan.Words),
            ProseHtml.Of(use.Text.SetUp, 4, here, plan.Words),
            ProseHtml.Of(use.Text.Do, 4, here, plan.Words),
            ProseHtml.Of(use.Text.More, 3, here, plan.Words),
            PageViews.Rows(session, use),
            use.Unit,
            use.Unit.Length > 0 ? MeasureWords.OnPaper(use, plan.Words) : ""
        );

    private static WeeksView Weeks(PlannedWeeks weeks, Words words) =>
        new(
            PageId.Weeks(weeks.Weeks),
            WeekData.Numbers(weeks.Weeks),
            weeks.Heading,
            TimeView.Of(weeks.Total, weeks.About, words),
            [
                .. weeks.Steps.Select(s => new StepView(
                    s.Data(),
                    s.Kind.Use() is TimeUse.Work,
                    s.Words,
                    s.Detail,
                    TimeView.Of(s.Seconds, false, words)
                )),
            ]
        );

    /// <summary>A session before play has two rows a week, for as long as nobody knows how often that is.</summary>
    private static Series<GridWeekView> Grid(Plan plan, PlannedSession session)
    {
        return [.. session.AllWeeks.Select(w => new GridWeekView(PageViews.Number(w), Math.Max(TimesIn(w), 1)))];

        int TimesIn(int week) =>
            session.InsteadOf is not null
                ? 1
                : plan.Weeks.FirstOrDefault(w => w.Number == week)
                    ?.Sessions.FirstOrDefault(s => s.Session == session.Number)
                    ?.Times
                    ?? 2;
    }
}
