using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what page one says.</summary>
internal static class HomeWording
{
    public static Wording Of(Plan plan)
    {
        var words = plan.Words;
        return AnyOrder([
            Must(plan.Programme.Title),
            Sides(plan),
            PageWording.News(plan, PagePath.Home),
            Order(plan.Weeks.Select(w => New(plan, w.Number))),
            May(words.Say("days-done"), PageMark.Of((PageData.DaysDone, ""))),
            May(words.Say("last-week"), PageMark.Of((PageData.LastWeek, ""))),
            May(words.Say("list-done"), PageMark.Of((PageData.ListDone, ""))),
            Watch(plan),
            Order(May(words.Say("letter")), Must(plan.Programme.Letter, words.Say("clip-elsewhere"))),
            Order(May(words.Say("calendar-heading")), May(words.Say("calendar")), May(words.Say("calendar-note-on-page"))),
            PageWording.Terms(plan, PagePath.Home),
            .. Sessions(plan),
        ]);
    }

    private static Wording Sides(Plan plan) =>
        Order(
            May(plan.Words.Say("which-side")),
            Order(
                plan.Stances.Select(s =>
                    Order(plan.Stances.Count > 1 ? May(s.Sport) : Order(), Order(s.Sentences.Select(t => Guarded(t))))
                )
            ),
            Guarded(plan.Words.Say("stance-check"))
        );

    /// <summary>What is due, and what else there is: each a part of its own, because a theme may set what to stop for
    /// between.</summary>
    private static IEnumerable<Wording> Sessions(Plan plan)
    {
        var words = plan.Words;
        return
        [
            May(words.Say("sessions")),
            PageWording.WeekNow(plan),
            AnyOrder(May(words.Say("before-first")), May(words.Say("before-you-start"))),
            May(words.Say("nothing-today"), PageMark.Of(("nothing-today", ""))),
            Order(plan.Sessions.Where(s => s.InsteadOf is null && s.Weeks.Count > 0).Select(s => Card(plan, s))),
            May(words.Say("other-sessions"), PageMark.Of((PageData.Others, ""))),
            PageWording.ChooseWeek(plan),
            AnyOrder(
                May(words.Say("weeks-count", ("n", plan.Programme.Weeks))),
                Order(May(words.Date(plan.Programme.Start)), May(words.Say("to")), May(words.Date(plan.Programme.End)))
            ),
            May(words.Say("your-weeks")),
            plan.Progress is null ? Order() : May(words.Say("progress")),
        ];
    }

    private static Wording Card(Plan plan, PlannedSession session)
    {
        var words = plan.Words;
        return Order(
            Must(session.Name),
            AnyOrder(
                Saying("today", "today"),
                Saying("any-day", "any-day"),
                Saying("next", "next-session"),
                Saying("stopped", "guide-why-alarm"),
                Saying("done", "done-today"),
                Saying("not-this-week", "not-this-week")
            ),
            AnyOrder(May(session.Days), PageWording.Lengths(session, words), Order(session.Equipment.Select(e => May(e)))),
            May(words.Say("guide-start"), PageMark.Of((PageData.Go, ""))),
            May(words.Say("print")),
            Order(
                plan.Sessions.Where(s => s.InsteadOf == session.Number && s.Weeks.Count > 0)
                    .Select(s => WholeOrNot(Must(s.Name), Must(s.Days), PageWording.Lengths(s, words)))
            )
        );

        Wording Saying(string when, string key) => May(words.Say(key), PageMark.Of(("say", when)));
    }

    private static Wording New(Plan plan, int week) =>
        WeekNews.Of(plan, week) is { } news
            ? May(news, PageMark.Of((PageData.WeekNew, FormattableString.Invariant($"{week}"))))
            : Order();

    /// <summary>When to call whom, and what to stop for. What cannot wait may stand first.</summary>
    private static Wording Watch(Plan plan)
    {
        var words = plan.Words;
        return AnyOrder(
            Order(
                May(words.Say("watch-for")),
                Order(plan.Cautions.Where(c => c.Kind == CautionKind.Stop).Select(c => Must(c.Title)))
            ),
            Order(May(words.Say("emergency")), Must(plan.Emergency.Sentence)),
            May(words.Say("watch-others")),
            Order(
                May(words.Say("written-by", ("coach", plan.Publisher.Coach), ("practice", plan.Publisher.Practice))),
                Must(plan.Publisher.Contact.Phone)
            ),
            Order(
                May(words.Say("emergency-press", ("call", plan.Emergency.Call))),
                May(words.Say("call-coach", ("coach", plan.Publisher.Coach)))
            ),
            Order(May(words.Say("all-signs")), May(words.Say("letter")))
        );
    }
}
