using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what before-you-start says.</summary>
internal static class BeforeWording
{
    public static Wording Of(Plan plan)
    {
        var words = plan.Words;
        return AnyOrder(
            PageWording.News(plan, PagePath.BeforeYouStart),
            Order(Must(words.Say("before-you-start")), May(words.Say("read-before"))),
            Sides(plan),
            CautionWording.Of(plan, PagePath.BeforeYouStart, plan.Exercises.Select(e => e.Id)),
            Order(
                WholeOrNot(Must(words.Say("help")), Must(Prose.PlainOf(plan.Emergency.Sentence))),
                May(words.Say("coach-contact")),
                May(plan.Publisher.Coach),
                May(plan.Publisher.Contact.Phone),
                May(plan.Publisher.Contact.Email)
            ),
            Health(plan),
            Order(May(words.Say("scope")), Must(plan.Publisher.Scope, words.Say("clip-elsewhere"))),
            PageWording.Terms(plan, PagePath.BeforeYouStart)
        );
    }

    private static Wording Sides(Plan plan) =>
        Order(
            May(plan.Words.Say("which-side")),
            Order(
                plan.Stances.Select(s =>
                    Order(
                        plan.Stances.Count > 1 ? May(s.Sport) : Order(),
                        Must(s.Question),
                        Must(s.Answer),
                        Order(s.Roles.Select(r => Guarded(r.Sentence)))
                    )
                )
            ),
            May(plan.Words.Say("stance-check"))
        );

    private static Wording Health(Plan plan)
    {
        var words = plan.Words;
        return Order(
            May(words.Say("health")),
            Order(plan.Health.Agreed.Select(a => May(a))),
            Must(words.Say("health-on", ("date", words.Date(plan.Health.Answered)))),
            Order(plan.Health.Answers.Select(a => Order(Must(a.Question), Must(a.Reply)))),
            plan.Health.Elsewhere is { } elsewhere ? May(elsewhere) : Order(),
            Order(plan.Health.Clearances.Select(c => WholeOrNot(Clearance(c, words))))
        );
    }

    private static IEnumerable<Wording> Clearance(PlannedClearance clearance, Words words)
    {
        yield return Must(clearance.Condition);
        yield return Must(
            words.Say("cleared", ("by", clearance.By), ("from", words.Date(clearance.On)), ("until", words.Date(clearance.Until)))
        );
        foreach (var limit in clearance.Limits)
            yield return Must(words.Say("limit", ("limit", limit)));
    }
}
