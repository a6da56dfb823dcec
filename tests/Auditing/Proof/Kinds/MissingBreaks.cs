using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Something that must be there is not there.</summary>
internal static class MissingBreaks
{
    public static readonly Series<Sketch> All =
    [
        .. Each("caution", (".cautions .caution", Session), (".cautions .caution", Exercise), (".cautions .caution", Before)),
        At("caution's body", Body, (_, e) => e.Remove()),
        .. Each("all cautions", (".cautions", Session), (".cautions", Exercise), (".cautions", Before)),
        .. Each("who must leave it out", (".not-with .run li", Session), (".not-with", Exercise), (".not-with h4", Before)),
        .. Each("pain rule", (".pain-rule", Session), (".pain-rule li", Session)),
        At("emergency", Emergency, (_, e) => e.Remove()),
        At("scope", Scope, (_, e) => e.Remove()),
        At("good until", OtherWordBreaks.GoodUntil, (_, e) => e.Remove()),
        At("sides", Places.At("before you start", Before, "[aria-labelledby$=sides]"), (_, e) => e.Remove()),
        At("sides", new("before you start", Before, s => SideSaid.Find(s)), (_, e) => e.Remove()),
        .. new[] { Session, Exercise }.Select(pages => At("instruction", new("instruction", pages, s => Doing.Find(s)), Gone)),
        .. new[] { Session, Exercise }.Select(pages => At("set-up", new("set-up", pages, s => SetUp.Find(s)), Gone)),
        At("dose", Places.At("exercise", Exercise, "tbody > tr:has(td)"), Gone),
        At("change", Places.At("exercise", Exercise, "li[data-weeks]"), Gone),
        At("dose", DoseSaid, Gone),
        At(
            "move-on",
            Says("conditions", p => !Home(p), s => s.Plan.Exercises.SelectMany(e => e.Uses).SelectMany(u => u.MoveOn)),
            Gone
        ),
        At("week", Places.At("weeks", OfWeeks, "section[data-weeks], section[data-weeks] h2"), Gone),
        At("session", Cards, Gone),
        At("stop signs", Stops, Gone),
        At(
            "coach",
            new("foot", Any, s =>
                s.All("footer a[href^='tel:'], body > p > a").Where(a => a.TextContent.Trim() == s.Plan.Publisher.Contact.Phone)
            ),
            Gone
        ),
        .. Each("terms", (".terms", Session), (".terms dd", Any)),
        .. Each("answers about health", (".answers dd", Before), (".answers", Before)),
        .. Each("what you need", ("main > .run", Session), ("main > .run li", Session)),
    ];

    private static void Gone(Spot spot, IElement element) => element.Remove();

    private static IEnumerable<Sketch> Each(string name, params (string Selector, Func<string, bool> Pages)[] places) =>
        places.Select(p => At(name, Places.At(p.Selector, p.Pages, p.Selector), Gone));
}
