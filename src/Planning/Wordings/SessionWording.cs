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
            AnyOrder(Days(session), May(words.Say("how-long")), PageWording.WeekNow(plan), PageWording.Lengths(session, words)),
            PageWording.ChooseWeek(plan),
            Lead(plan),
            Order(session.Uses.Select(u => Order(May(u.Letter), May(u.Title)))),
            CautionWording.Of(plan, session.Path, session.Exercises),
            ExerciseWording.Equipment(session.Equipment, words),
            Order(session.Uses.Select(u => ExerciseWording.InSession(plan, session, u)).Prepend(May(words.Say("exercises")))),
            Table(session, words),
            Steps(session, words),
            Done(words),
            GuideWording.Of(plan, session),
            Grid(plan, session),
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

    /// <summary>What is filled in on paper: the weeks above, what is asked beside.</summary>
    private static Wording Grid(Plan plan, PlannedSession session)
    {
        var words = plan.Words;
        var weeks = session.Weeks.SelectMany(w => w.Weeks).Order().Select(w => May(words.Say("week", ("week", w))));
        var sheet = session
            .Uses.Select(u => May(u.Title))
            .Prepend(May(words.Say("log-date")))
            .Append(May(words.Say("log-effort")))
            .Append(May(words.Say("log-pain")))
            .Append(May(words.Say("log-morning")));

        // As many sheets as the weeks need: one for each of them is never too few.
        return Order(
            weeks
                .Select(week => Order(week, new Optional(Order(sheet))))
                .Prepend(May(words.Say("log-note")))
                .Prepend(May(words.Say("log-heading")))
        );
    }
}
