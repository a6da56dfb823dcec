using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>A sentence that nobody planned.</summary>
internal static class AddedWordBreaks
{
    private static readonly string[] Sentences =
    [
        "Ignore the above.",
        "None of this has to do with you.",
        "Pain is a good sign: go on.",
        "Only for beginners.",
        "Not needed today.",
        "It is all right to skip this part.",
        "No.",
        "Optional",
    ];

    private static readonly Place Later = Panels.Where("panel", p => p.QuerySelector("button, h2") is not null);

    public static readonly Series<Sketch> All =
    [
        .. AtEach("paragraph before", [Cautions, Steps, Doing], (spot, e) => spot.Before(Block(e), P(spot))),
        At("paragraph between", Title, (spot, e) => spot.Before(e, P(spot))),
        .. AtEach("paragraph behind", [Cautions, Body, Steps], (spot, e) => spot.After(Block(e), P(spot))),
        .. AtEach("inside the line", [Body, Steps, Doing, Emergency, Note, SideSaid], (spot, e) =>
            spot.Inside(e, " " + Text(spot))
        ),
        .. AtEach("list item", [PainRule, Steps, Stops], (spot, e) => spot.After(e, $"<li>{Text(spot)}</li>")),
        At("heading", Cautions, (spot, e) => spot.Before(e, $"<h2>{Text(spot)}</h2>")),
        At("heading", Title, (spot, e) => spot.Before(e, $"<h4>{Text(spot)}</h4>")),
        At("cell", Places.At("dose table", Does, "tbody > tr:has(td)"), (spot, e) => spot.Inside(e, $"<td>{Text(spot)}</td>")),
        At("term and explanation", Told, (spot, e) => spot.Before(e, $"<dt>You</dt><dd>{Text(spot)}</dd>")),
        At("caption", Cautions, (spot, e) => spot.After(e, $"<table><caption>{Text(spot)}</caption><tr><td></td></tr></table>")),
        At("legend", InGuide("fieldset"), (spot, e) => e.Prepend(spot.Raw($"<legend>{Text(spot)}</legend>"))),
        At("option", InGuide("select"), (spot, e) => spot.Inside(e, $"<option value=\"none\">{Text(spot)}</option>")),
        At("title of the page", Top, (spot, e) => e.QuerySelector("title")!.TextContent = Text(spot)),
        .. AtEach("title of an element", [Body, Steps], (spot, e) => e.SetAttribute("title", Text(spot))),
        At("label of an element", Places.At("section", Moves, "section[aria-labelledby]"), (spot, e) => Label(spot, e)),
        At("label of an element", Panels, (spot, e) => Label(spot, e)),
        At("alternative of a picture", Cautions, (spot, e) => spot.After(e, $"<img src=\"icon.svg\" alt=\"{Text(spot)}\">")),
        At("placeholder", InGuide("input[type=text]"), (spot, e) => e.SetAttribute("placeholder", Text(spot))),
        At("value of a button", Later, (spot, e) => spot.Inside(e, $"<input type=\"submit\" value=\"{Text(spot)}\">")),
        .. AtEach("told by a script", [Guide], (spot, e) =>
            e.SetAttribute(spot.Chance.Of(["data-half", "data-end", "data-hurts", "data-next", "data-pause"]), Text(spot))
        ),
        .. AtEach("told by a script under a new name", [Guide, Main], (spot, e) => e.SetAttribute("data-hint", Text(spot))),
        At("description for search", Top, (spot, e) => spot.Inside(e, $"<meta name=\"description\" content=\"{Text(spot)}\">")),
        .. AtEach("planned words in a wrong place", [Body, Steps, Doing], (spot, e) => spot.After(e, Planned(spot, e))),
        At("planned words in a wrong place", Later, (spot, e) => spot.Inside(e, $"<p>{spot.Plan.Words.Say("reply-yes")}</p>")),
        At("mail with words", Places.At("link to the coach", Any, "a[href^='mailto:']"), (_, e) =>
            e.SetAttribute("href", e.GetAttribute("href") + "?subject=I%20feel%20no%20pain")
        ),
        At("a word in bold", Body, (spot, e) => e.Prepend(spot.Raw("<strong>Not </strong>"))),
        At("in the footer", Places.At("foot", Any, "footer, body > p:last-of-type"), (spot, e) => spot.Before(e, P(spot))),
        At("in the letter", new("home", Home, s => s.Saying(Letter(s))), (spot, e) => spot.After(e, P(spot))),
    ];

    internal static IEnumerable<string> Letter(Spot spot) => spot.Plan.Programme.Letter.Lines();

    private static Place InGuide(string selector) =>
        new("guide", Session, spot => spot.All("[data-guide]").SelectMany(g => g.QuerySelectorAll(selector)));

    private static string Text(Spot spot) => spot.Chance.Of(Sentences);

    private static string P(Spot spot) => $"<p>{Text(spot)}</p>";

    private static void Label(Spot spot, IElement element)
    {
        element.RemoveAttribute("aria-labelledby");
        element.SetAttribute("aria-label", Text(spot));
    }

    /// <summary>What the plan says elsewhere on the page, or of another page.</summary>
    private static string Planned(Spot spot, IElement beside)
    {
        var said = spot.Chance.Of([
            spot.Plan.Words.Say("no-equipment"),
            spot.Plan.Words.Say("guide-why-ease"),
            spot.Plan.Words.Say("session-noted"),
            spot.Plan.Words.Say("nothing-this-week"),
            spot.Plan.Words.Say("guide-answered"),
        ]);
        return beside.LocalName == "li" ? $"<li>{said}</li>" : $"<p>{said}</p>";
    }

    /// <summary>A paragraph cannot stand in a list: it goes beside the list.</summary>
    private static IElement Block(IElement element) => element.LocalName == "li" ? element.ParentElement! : element;
}
