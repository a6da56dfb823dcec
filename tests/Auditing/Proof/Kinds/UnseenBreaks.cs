using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Somebody does not get a text that is there.</summary>
internal static class UnseenBreaks
{
    public static readonly Series<Sketch> All =
    [
        .. AtEach("hidden attribute", Vital, (_, e) => e.SetAttribute("hidden", "")),
        .. AtEach("hidden until found", Vital, (_, e) => e.SetAttribute("hidden", "until-found")),
        .. AtEach("inert", Vital, (_, e) => e.SetAttribute("inert", "")),
        .. AtEach("popover", Vital, (_, e) => e.SetAttribute("popover", "")),
        .. AtEach("aria-hidden", Vital, (_, e) => e.SetAttribute("aria-hidden", "true")),
        .. AtEach("mark for what is chosen", Vital, (_, e) => e.SetAttribute("data-choose", "")),
        .. AtEach("mark for before the first time", Vital, (_, e) => e.SetAttribute("data-first", "")),
        .. AtEach("mark for what is filled in", Vital, (_, e) => e.SetAttribute("data-fill", "did")),
        .. AtEach("mark for a reason", Vital, (_, e) => e.SetAttribute("data-why", "late")),
        .. AtEach("mark for a week's news", Vital, (_, e) => e.SetAttribute("data-week-new", "7")),
        .. AtEach("mark for this week", Vital, (_, e) => e.SetAttribute("data-week-now", "7")),
        .. AtEach("mark for a pause", Vital, (_, e) => e.SetAttribute("data-on-pause", "")),
        .. AtEach("mark for a day without a session", Vital, (_, e) => e.SetAttribute("data-nothing-today", "")),
        .. AtEach("mark for what leads into the session", Vital, (_, e) => e.SetAttribute("data-lead", "")),
        .. AtEach("mark for another version", Vital, (_, e) => e.SetAttribute("data-while-planned", "")),
        .. AtEach("mark for other sessions", Vital, (_, e) => e.SetAttribute("data-others", "")),
        .. Around("mark around it", "data-choose"),
        .. Around("another mark around it", "data-first"),
        .. Wrapped("closed details", "<details><summary>More</summary>", "</details>"),
        .. Wrapped("open details", "<details open><summary></summary>", "</details>"),
        .. Wrapped("dialog", "<dialog>", "</dialog>"),
        .. Wrapped("template", "<template>", "</template>"),
        .. Wrapped("noscript", "<noscript>", "</noscript>"),
        .. Wrapped("comment around it", "<!-- ", " -->"),
        .. AtEach("frame that holds it", Vital, (spot, e) =>
        {
            e.Before(spot.Raw("<iframe srcdoc=\"" + System.Net.WebUtility.HtmlEncode(e.OuterHtml) + "\"></iframe>"));
            e.Remove();
        }),
        .. Wrapped("fallback of an object", "<object data=\"icon.svg\">", "</object>"),
        .. Wrapped("fallback of a canvas", "<canvas>", "</canvas>"),
        .. Wrapped("fallback of a clip", "<video>", "</video>"),
        .. Wrapped("list of suggestions", "<datalist>", "</datalist>"),
        .. Wrapped("field of several lines", "<textarea hidden>", "</textarea>"),
        .. Wrapped("choice of a field", "<select><option>-</option><option>", "</option></select>"),
        .. Wrapped("drawing", "<svg width=\"1\" height=\"1\"><foreignObject width=\"1\" height=\"1\">", "</foreignObject></svg>"),
        .. Wrapped("moving strip", "<marquee>", "</marquee>"),
        .. Wrapped("struck out", "<s>", "</s>"),
        .. Wrapped("small print", "<sup>", "</sup>"),
        .. Wrapped("reading aid", "<ruby>x<rp>", "</rp></ruby>"),
        .. AtEach("words of a picture alone", Vital, (spot, e) =>
        {
            var said = System.Net.WebUtility.HtmlEncode(Spacing.Collapse(e.TextContent));
            e.InnerHtml = "";
            e.Append(spot.Raw($"<img src=\"icon.svg\" width=\"1\" height=\"1\" alt=\"{said}\">"));
        }),
        .. Wrapped("slot of another root", "<div><template shadowrootmode=\"open\"></template>", "</div>"),
        .. Wrapped("frameless words", "<noframes>", "</noframes>"),
    ];

    private static IEnumerable<Sketch> Around(string name, string mark) =>
        AtEach(name, Vital, (spot, e) => spot.Around(e, $"<div {mark}>", "</div>"));

    private static IEnumerable<Sketch> Wrapped(string name, string opens, string closes) =>
        AtEach(name, Vital, (spot, e) => spot.Around(e, opens, closes));
}
