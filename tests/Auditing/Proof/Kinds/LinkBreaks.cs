using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>A link leads elsewhere than it says.</summary>
internal static class LinkBreaks
{
    private static readonly Place Sessions = new(
        "home, weeks",
        p => Home(p) || OfWeeks(p),
        s => s.All("a").Where(a => s.Plan.Sessions.Any(x => x.Name == a.TextContent.Trim()))
    );
    private static readonly Place Exercises = new("session", Session, s =>
        s.All("h2 > a, h3 > a").Where(a => s.Plan.Exercises.Any(x => x.Title == a.TextContent.Trim()))
    );
    private static readonly Place Navigation = new("navigation", Any, s =>
        s.Document.QuerySelectorAll("nav a, body > p > a").Where(a => a.GetAttribute("href") != s.To(s.Path))
    );

    public static readonly Series<Sketch> All =
    [
        At("session to another session", Sessions, (spot, e) => To(spot, e, spot.Plan.Sessions.Select(s => s.Path))),
        At("session to an exercise", Sessions, (spot, e) => To(spot, e, spot.Plan.Exercises.Select(s => s.Path))),
        At("exercise to another exercise", Exercises, (spot, e) => To(spot, e, spot.Plan.Exercises.Select(s => s.Path))),
        At("page that is not there", Navigation, (spot, e) => e.SetAttribute("href", spot.To("session-77.html"))),
        At("to elsewhere", Navigation, (_, e) => e.SetAttribute("href", "https://example.org/")),
        At("runs something", Navigation, (_, e) => e.SetAttribute("href", "javascript:document.body.remove()")),
        .. new[] { Sessions, Navigation }.Select(place => Pair("two links swapped", place, (one, other) =>
            {
                var address = one.GetAttribute("href")!;
                one.SetAttribute("href", other.GetAttribute("href")!);
                other.SetAttribute("href", address);
            })),
        At(
            "before you start leads elsewhere",
            Places.At("home", Home, "main a[href^='before'], main a[href='#before-you-start'], body > p > a[href^='before']"),
            (spot, e) => e.SetAttribute("href", spot.To("weeks.html"))
        ),
        At(
            "emergency leads elsewhere",
            Places.At("top", Any, "header .help a").With(s => s.Document.QuerySelectorAll("header .help a")),
            (_, e) => e.SetAttribute("href", "#content")
        ),
        At("calendar leads elsewhere", Places.At("home", Home, "a[download]"), (spot, e) =>
            e.SetAttribute("href", spot.To("weeks.html"))
        ),
        At("tells somebody that it was followed", Navigation, (_, e) => e.SetAttribute("ping", "https://example.org/")),
        At("opens elsewhere", Navigation, (_, e) => e.SetAttribute("target", "_blank")),
        At("fragment of another place", Places.At("term", Any, "a.term"), (_, e) => e.SetAttribute("href", "#content")),
        Pair("word behind a wrong explanation", Places.At("explanations", Any, "dl > dd"), CautionOrderBreaks.SwapInner),
    ];

    private static bool To(Spot spot, IElement link, IEnumerable<string> paths)
    {
        var others = paths.Select(spot.To).Where(a => a != link.GetAttribute("href")).ToList();
        if (others.Count == 0)
            return false;
        link.SetAttribute("href", spot.Chance.Of(others));
        return true;
    }

    private static Place With(this Place place, Func<Spot, IEnumerable<IElement>> find) => place with { Find = find };
}
