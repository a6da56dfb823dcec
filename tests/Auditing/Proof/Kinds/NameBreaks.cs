using Gradus.Domain;
using Gradus.Planning;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Another client is named.</summary>
internal static class NameBreaks
{
    public static readonly Series<Sketch> All =
    [
        InText("as it is", "<p>Cecily Ormond does the same.</p>"),
        InText("over two paragraphs", "<p>With Cecily</p><p>Ormond on Monday</p>"),
        InText("over two elements", "<p>With <b>Cecily</b> <i>Ormond</i></p>"),
        InText("with a hyphen", "<p>Gwendolen Ashcombe Pryor</p>"),
        InText("with a hyphen", "<p>Cecily-Ormond</p>"),
        InText("surname first", "<p>Ormond, Cecily</p>"),
        InText("surname first", "<p>Ashcombe-Pryor, Gwendolen</p>"),
        InText("look-alike letter", "<p>C\u0435cily Orm\u043end</p>"),
        InText("capitals", "<p>CECILY ORMOND</p>"),
        InText("by numbers", "<p>&#67;ecily &#x4f;rmond</p>"),
        InText("with a soft hyphen", "<p>Ceci&shy;ly Or\u200bmond</p>"),
        InText("with a hard blank", "<p>Cecily&nbsp;Ormond</p>"),
        InText("in an attribute", "<p data-note=\"Cecily Ormond\">x</p>"),
        InText("in a comment", "<!-- Cecily Ormond -->"),
        Whole("in a file's name", "folder", (site, _) =>
            site.IsOneFile
                ? null
                : site.Listed(
                    site.Site.Pages,
                    [.. site.Site.Assets, new("cecily-ormond.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>"u8.ToArray())]
                )
        ),
        Whole("in the calendar", "calendar", (site, _) =>
            site.WithFile(PagePath.Calendar, text => Spot.Once(text, "SUMMARY:", "SUMMARY:With Cecily Ormond "))
        ),
        InText("in a link", "<a href=\"mailto:cecily.ormond@example.org\">x</a>"),
        At("in the title", Top, (_, e) => e.QuerySelector("title")!.TextContent += " and Cecily Ormond"),
        InText("a short one", "<p>Ask Ed.</p>") with
        {
            Warns = true,
        },
        InText("possessive", "<p>Cecily Ormond\u2019s and Cecily Ormond's</p>"),
        InText("with a mark on a letter", "<p>Jozef Wren</p>"),
        InText("with a mark on a letter", "<p>Cécily Ormond</p>"),
    ];

    /// <summary>The rule must say that a name stands there, not only that a line is not planned.</summary>
    internal const string Rule = "other-client-named";

    private static Sketch InText(string name, string markup) => At(name, Main, (spot, e) => spot.Inside(e, markup));
}
