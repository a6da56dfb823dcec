using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Somebody calls the wrong number, or none.</summary>
internal static class HelpBreaks
{
    private static readonly Place InFoot = Calling("foot", Any, a => a.Closest("footer") is not null);
    private static readonly Place InCautions = Calling("cautions", Moves, a => a.Closest(".cautions") is not null);
    private static readonly Place OnHome = Calling("home", Home, a => a.Closest("footer") is null);
    private static readonly Series<Place> Everywhere = [InFoot, InCautions, OnHome, GuideCalls];

    private static readonly Place Coach = new("foot", Any, s =>
        s.All("a[href^='tel:']").Where(a => a.TextContent.Trim() == s.Plan.Publisher.Contact.Phone)
    );

    public static readonly Series<Sketch> All =
    [
        .. AtEach("number changed", Everywhere, (spot, e) => spot.Say(e, (spot.Plan.Emergency.Call, "998"))),
        .. AtEach("address changed", Everywhere, (_, e) => e.SetAttribute("href", "tel:998")),
        .. AtEach("both changed", Everywhere, (spot, e) =>
        {
            e.SetAttribute("href", "tel:998");
            return spot.Say(e, (spot.Plan.Emergency.Call, "998"));
        }),
        At("no link", InFoot, (_, e) => e.Replace([.. e.ChildNodes])),
        At("message instead of call", InFoot, (_, e) => e.SetAttribute("href", "sms:" + e.TextContent.Trim())),
        At("help is far away", Emergency, (spot, e) =>
            spot.Say(e, ("for chest pain", "for bad weather"), ("Call", "Write to"), ("Ring", "Write to"))
        ),
        At("coach's number changed", Coach, (spot, e) => spot.Say(e, text => text[..^1] + (text[^1] == '9' ? "8" : "9"))),
        At("coach's address changed", Coach, (_, e) => e.SetAttribute("href", e.GetAttribute("href") + "9")),
        At("coach's mail changed", Places.At("foot", Any, "a[href^='mailto:']"), (_, e) =>
            e.SetAttribute("href", "mailto:somebody@example.com")
        ),
        .. new[] { new Place("foot", Any, Emergency.Find), new Place("home", Home, Emergency.Find) }.Select(place =>
            At("sentence of help taken out", place, (_, e) => e.Remove())
        ),
        At("button of the guide calls elsewhere", GuideCalls, (spot, e) => e.SetAttribute("href", spot.To("index.html"))),
        At("words of the alarm changed", Places.At("guide", Session, "[data-panel=alarm] p, [data-panel=alarm] h2"), (spot, e) =>
            spot.Say(e, ("Stop", "Go on"), ("Do not", "You may"), ("doctor", "friend"))
        ),
        At("alarm without a number", Places.At("guide", Session, "[data-panel=alarm] a"), (_, e) => e.Remove()),
    ];

    private static Place Calling(string name, Func<string, bool> pages, Func<IElement, bool> fits) =>
        new(name, pages, spot => Calls.Find(spot).Where(a => a.TextContent.Trim() == spot.Plan.Emergency.Call).Where(fits));
}
