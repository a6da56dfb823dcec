using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Somebody trains on the wrong day, or too long.</summary>
internal static class DayBreaks
{
    public static readonly Series<Sketch> All =
    [
        Set("begin for the script", "data-start", "2026-01-05"),
        Set("good until for the script", "data-good-until", "2036-01-05"),
        At("good until in words", OtherWordBreaks.GoodUntil, (spot, e) => spot.Say(e, ("2027", "2028"), ("2026", "2028"))),
        At("weeks of a list", Weeks, (_, e) => e.SetAttribute("data-weeks", "9")),
        .. new[] { Home, Session }.Select(pages =>
            At("weeks of a length", Places.At(pages == Home ? "home" : "session", pages, ".lengths > li[data-weeks]"), (_, e) =>
                e.SetAttribute("data-weeks", "9")
            )
        ),
        At("days of a session for the script", Places.At("home", Home, "[data-weekdays]"), (_, e) =>
            e.SetAttribute("data-weekdays", "2 7")
        ),
        Set("breaks for the script", "data-back", "70 140"),
        Set("needs for the script", "data-needs", "1x7"),
        Set("in place of another", "data-instead", "1=2"),
        .. new[] { Session, OfWeeks }.Select(pages =>
            At(
                "heading of a week",
                Places.At(pages == Session ? "steps" : "weeks", pages, "section[data-weeks] > h3, section[data-weeks] > h2"),
                (spot, e) => spot.Say(e, ("Week 1", "Week 2"), ("Week 2", "Week 3"), ("Weeks 1", "Weeks 2"), ("Week", "Day"))
            )
        ),
        At("words of the week now", Places.At("page", p => Home(p) || Session(p), "[data-week-now]"), (spot, e) =>
            spot.Say(e, ("Week 1", "Week 2"), ("Week 2", "Week 1"), ("Week", "Day"))
        ),
        At("week to choose", Places.At("page", p => Home(p) || Session(p), "[data-choose-week]"), (_, e) =>
            e.SetAttribute("data-choose-week", e.GetAttribute("data-choose-week") == "2" ? "1" : "2")
        ),
        At(
            "words for past pages",
            Places.At("page", Any, "[data-good-until]").With(s => s.Document.QuerySelectorAll("[data-good-until]")),
            (spot, e) => spot.Say(e, ("Do not train", "Go on and train"), ("ask your coach first", "ask nobody"))
        ),
        At("day a session may be done", Places.At("home", Home, "[data-due]"), (_, e) =>
            e.SetAttribute("data-due", e.GetAttribute("data-due") == "1" ? "2" : "1")
        ),
    ];

    private static Sketch Set(string name, string attribute, string value) =>
        At(name, new("page", Any, s => s.Document.QuerySelectorAll($"[{attribute}]")), (_, e) =>
            e.SetAttribute(attribute, value)
        );

    private static Place With(this Place place, Func<Spot, IEnumerable<IElement>> find) => place with { Find = find };
}
