using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>A browser builds another page than the source seems to say.</summary>
internal static class NestingBreaks
{
    public static readonly Series<Sketch> All =
    [
        Opened("comment never closed", "<!--"),
        Opened("template never closed", "<template>"),
        Opened("field never closed", "<textarea>"),
        Opened("style never closed", "<style>"),
        Opened("choice never closed", "<select>"),
        Opened("all the rest as plain text", "<plaintext>"),
        Opened("body ends early", "</main></body><!--"),
        Opened("second main", "<main>"),
        At("heading of the page never closed", Top, (spot, e) => e.QuerySelector("title")!.Before(spot.Raw("<title>"))),
        .. AtEach("page cut", [Body, Steps], (spot, e) => spot.Before(e, Spot.Cut)),
        Opened("details around all", "<details><summary>The page</summary>"),
        Opened("link around all", "<a href=\"index.html\">"),
        Opened("form around all", "<form>"),
        At("table that throws an instruction in front", Cautions, (spot, e) =>
        {
            var said = spot.Plan.Exercises[0].Text.Do.Lines().First();
            e.Before(spot.Raw("<table><tr><td>"));
            e.After(spot.Raw($"</td></tr>{said}</table>"));
        }),
        At("list in the list", Steps, (spot, e) => spot.Around(e, "<ol><li>", "</li></ol>")),
        At("heading in a paragraph", Title, (spot, e) => spot.Before(e, "<p><button>")),
        At("item outside a list", Steps, (spot, e) =>
        {
            var list = e.ParentElement!;
            list.Before(e);
        }),
        .. AtEach("button around it", [Steps, Body], (spot, e) => spot.Around(e, "<button type=\"button\">", "</button>")),
        At("body closed to all", Places.All, (_, e) => e.SetAttribute("inert", "")),
        At("hidden from the top", Places.All, (_, e) => e.SetAttribute("aria-hidden", "true")),
    ];

    private static Sketch Opened(string name, string markup) => At(name, Cautions, (spot, e) => spot.Before(e, markup));
}
