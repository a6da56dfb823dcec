using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what the page of the weeks says.</summary>
internal static class WeeksWording
{
    public static Wording Of(Plan plan)
    {
        var words = plan.Words;
        return AnyOrder(
            PageWording.News(plan, PagePath.Weeks),
            Order(
                Must(words.Say("your-weeks")),
                May(words.Say("weeks-note")),
                May(words.Say("minutes-you-have", ("n", plan.Programme.Minutes)))
            ),
            Order(
                plan.Weeks.Select(w => Week(w, Retest(plan, w.Number), words))
                    .Prepend(May(words.Say("week-by-week")))
                    .Append(Retest(plan, null))
            ),
            Order(
                plan.Programme.MoveOn.Select(c => Order(c.Conditions.Select(t => Must(t)).Prepend(Must(c.Heading))))
                    .Prepend(plan.Programme.MoveOn.Count > 0 ? May(words.Say("move-on")) : Order())
            ),
            Log(words),
            Shares(plan)
        );
    }

    private static Wording Retest(Plan plan, int? week) => plan.RetestIn(week) is { } said ? Must(said) : Order();

    private static Wording Week(PlannedWeek week, Wording retest, Words words) =>
        Order(
            Must(week.Heading),
            Order(week.Pauses.Select(p => Must(p.Sentence))),
            Order(
                week.Sessions.Select(s => Order(Must(s.Name), Must(s.When), PageWording.Roughly(s.Seconds, words)))
                    .Prepend(May(words.Say("once-column")))
                    .Prepend(May(words.Say("session-column")))
            ),
            week.Sessions.Count > 0
                ? Order(May(words.Say("week-total")), PageWording.Roughly(week.Total, words))
                : May(words.Say("nothing-this-week")),
            week.Sessions.Any(s => s.Times is null) ? May(words.Say("on-top")) : Order(),
            retest
        );

    private static Wording Shares(Plan plan)
    {
        var words = plan.Words;
        return Order(
            plan.Sessions.SelectMany(s => s.Weeks.Select(w => Share(s, w, words)))
                .Prepend(Order(May(words.Say("work")), May(words.Say("rest")), May(words.Say("moving")), May(words.Say("all"))))
                .Prepend(May(words.Say("moving")))
                .Prepend(May(words.Say("rest")))
                .Prepend(May(words.Say("work")))
                .Prepend(May(words.Say("where-time-goes-note")))
                .Prepend(May(words.Say("where-time-goes")))
        );
    }

    private static Wording Share(PlannedSession session, PlannedWeeks weeks, Words words)
    {
        var shares = weeks.Shares;
        return WholeOrNot(
            May(session.Name),
            May(weeks.Heading),
            May(words.Say("work")),
            Guarded(words.ShortSpan(shares.Work)),
            May(words.Say("rest")),
            Guarded(words.ShortSpan(shares.Rest)),
            May(words.Say("moving")),
            Guarded(words.ShortSpan(shares.Moving)),
            May(words.Say("all")),
            PageWording.Time(weeks.Total, weeks.About, words)
        );
    }

    private static Wording Log(Words words) =>
        Order(
            May(words.Say("log-heading")),
            May(words.Say("log-count")),
            May("0"),
            LogTools(words, ""),
            May(words.Say("log-open")),
            May(words.Say("log-wipe"), PageMark.Of(("log", "wipe"))),
            May(words.Say("log-wipe-really"), PageMark.Of(("log", "wipe-really")))
        );

    /// <summary>How the log leaves the page.</summary>
    /// <param name="panel">The mark of what it stands in.</param>
    internal static Wording LogTools(Words words, string panel) =>
        Order(
            May(words.Say("log-home"), panel),
            May(words.Say("log-save"), PageMark.Of(("log", "save"))),
            May(words.Say("log-message"), PageMark.Of(("log", "message"))),
            May(words.Say("log-message-text"), panel),
            May(words.Say("log-not-secret"), panel)
        );
}
