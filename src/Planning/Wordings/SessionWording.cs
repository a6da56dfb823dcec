using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what the page of a session says.</summary>
internal static class SessionWording
{
    public static Wording Of(Plan plan, PlannedSession session)
    {
        var words = plan.Words;
        return AnyOrder(
            Must(session.Name),
            PageWording.News(plan, session.Path),
            AnyOrder(Days(session), May(words.Say("how-long")), PageWording.WeekNow(plan), PageWording.Lengths(session, words)),
            PageWording.ChooseWeek(plan),
            Order(session.Uses.Select(u => Order(May(u.Letter), May(u.Title)))),
            // The button below the cautions says that they were read.
            Order(
                May(words.Say("guide-cautions-note"), PageMark.Of(("lead-unread", ""))),
                CautionWording.Of(plan, session.Path, session.Exercises),
                Lead(plan)
            ),
            ExerciseWording.Equipment(session.Equipment, words),
            Order(session.Uses.Select(u => ExerciseWording.InSession(plan, session, u)).Prepend(May(words.Say("exercises")))),
            Table(session, words),
            Steps(session, words),
            Done(words),
            GuideWording.Of(plan, session),
            Grid(session, words),
            PageWording.Terms(plan, session.Path)
        );
    }

    /// <summary>In place of which session it is done must be there: who does both does too much.</summary>
    private static Wording Days(PlannedSession session) => session.InsteadOf is null ? May(session.Days) : Must(session.Days);

    private static Wording Lead(Plan plan) =>
        Order(
            May(plan.Words.Say("guide-open"), PageMark.Of(("lead-in", ""))),
            May(plan.Words.Say("guide-none"), PageMark.Of(("lead-none", ""))),
            May(plan.GoodUntil.Past, PageMark.Of(("lead-past", "")))
        );

    /// <summary>Every week once, as figures: a group of rows for each exercise, a column for each week.</summary>
    private static Wording Table(PlannedSession session, Words words) =>
        Order(
            May(words.Say("weeks-table")),
            May(words.Say("effort-note")),
            TableWording.Weeks(session, words),
            Order(session.Uses.Select(u => Order(Must(u.Letter), Must(u.Title), TableWording.Rows(session, u))))
        );

    private static Wording Steps(PlannedSession session, Words words) =>
        Order(
            May(words.Say("step-by-step")),
            May(words.Say("step-by-step-note")),
            May(words.Say("all-weeks"), PageMark.Of(("all-weeks", ""))),
            session.Weeks.Count > 0 ? Order(session.Weeks.Select(w => Weeks(w, words))) : Must(words.Say("nothing-planned"))
        );

    private static Wording Done(Words words) =>
        Order(
            May(words.Say("session-done"), PageMark.Of(("do", ""))),
            May(words.Say("session-undo"), PageMark.Of(("undo", ""))),
            May(words.Say("print"), PageMark.Of(("print", "")))
        );

    private static Wording Weeks(PlannedWeeks weeks, Words words) =>
        Order(
            weeks
                .Steps.Select(s =>
                    Order(Guarded(s.Words, s.Exercise), Guarded(s.Detail), PageWording.Time(s.Seconds, false, words))
                )
                .Prepend(Guarded(words.ShortSpan(weeks.Total)))
                .Prepend(weeks.About ? MustOnScreen(words.Say("about")) : Order())
                .Prepend(May(words.Say("total")))
                .Prepend(Guarded(weeks.Heading))
        );

    /// <summary>What is filled in on paper: what is asked above, the weeks beside.</summary>
    private static Wording Grid(PlannedSession session, Words words) =>
        Order(
            session
                .AllWeeks.Select(w => May(FormattableString.Invariant($"{w}")))
                .Prepend(May(words.Say("log-pain")))
                .Prepend(May(words.Say("log-morning")))
                .Prepend(May(words.Say("log-effort")))
                .Prepend(Order(session.Uses.Select(u => May(u.Letter))))
                .Prepend(May(words.Say("log-date")))
                .Prepend(May(words.Say("weeks-column")))
                .Prepend(May(words.Say("log-note")))
                .Prepend(May(words.Say("log-heading")))
                .Append(Order(session.Uses.Where(u => u.Unit.Length > 0).Select(u => Measured(u, words))))
        );

    private static Wording Measured(PlannedUse use, Words words) =>
        Order(May(MeasureWords.OnPaper(use, words)), May(words.Say("log-date")), May(words.Say("left")), May(words.Say("right")));
}
