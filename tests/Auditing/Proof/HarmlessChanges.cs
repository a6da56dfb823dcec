using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>What a theme, or a program that writes pages anew, may do: the page says, does and shows the same.</summary>
internal static partial class HarmlessChanges
{
    private static readonly Series<Place> Texts =
    [
        Title,
        Body,
        Note,
        PainRule,
        Emergency,
        SideSaid,
        Steps,
        Doing,
        SetUp,
        Scope,
        Stops,
    ];

    private static readonly Place Sections = Places.At("section", Any, "section");

    private static readonly Place Movable = new("part", Any, s =>
        s.All("section.part").Where(p => !p.ClassList.Contains("cautions") && p.QuerySelector("ol, .cautions") is null)
    );

    public static readonly Series<Sketch> All =
    [
        // As it is written.
        .. Written("written anew", html => html),
        .. Written("lines end otherwise", html => html.Replace("\n", "\r\n", StringComparison.Ordinal), onScripts: false),
        .. Written("empty lines", html => html.Replace("</p>", "</p>\n\n", StringComparison.Ordinal)),
        .. Written("capital tags", html => Tag().Replace(html, m => m.Value.ToUpperInvariant())),
        .. Written("ends of items left out", html => html.Replace("</li>", "", StringComparison.Ordinal)),
        .. Written("a blank in a tag", html => html.Replace("<p>", "<p >", StringComparison.Ordinal)),
        .. Written("apostrophes by name", html => html.Replace("&#39;", "&apos;", StringComparison.Ordinal)),
        // Beside the words.
        .. AtEach("class", Texts, (_, e) => e.ClassList.Add("wide")),
        .. AtEach("comment before", Texts, (spot, e) => spot.Before(e, "<!-- a line -->")),
        .. AtEach("comment inside", Texts, (spot, e) => spot.Inside(e, "<!-- a line -->")),
        .. AtEach("blanks before", Texts, (spot, e) => e.Prepend(spot.Raw("\n    "))),
        .. AtEach("blanks behind", Texts, (spot, e) => spot.Inside(e, "  \n")),
        .. AtEach("two blanks", Texts, (spot, e) => spot.Say(e, text => Blank().Replace(text, "  "))),
        .. AtEach("line broken", Texts, (spot, e) => spot.Say(e, text => Blank().Replace(text, "\n", 1))),
        .. AtEach("strong", Texts, (spot, e) => Inner(spot, e, "strong")),
        .. AtEach("emphasis", Texts, (spot, e) => Inner(spot, e, "em")),
        .. AtEach("span", Texts, (spot, e) => Inner(spot, e, "span class=\"words\"")),
        .. AtEach("block around", [Title, Body, Emergency, Doing], (spot, e) => spot.Around(e, "<div class=\"box\">", "</div>")),
        .. AtEach("one word bold", [Body, Doing, Emergency], (spot, e) =>
            spot.Say(e, text => Word().Replace(text, m => Bold(spot, m.Value), 1))
        ),
        .. AtEach("soft hyphen", [Body, Doing, Scope], (spot, e) =>
            spot.Say(e, text => Word().Replace(text, m => m.Value[..3] + "\u00ad" + m.Value[3..], 1))
        ),
        .. AtEach("an anchor", Texts.Select(t => t.Where(t.Name, e => !e.HasAttribute("id"))), (_, e) =>
            e.SetAttribute("id", e.GetAttribute("id") ?? "here-it-is")
        ),
        // Arranged otherwise.
        At("part at the end", Movable, (spot, e) =>
        {
            // What leads to the other pages closes each, and where all are one a link back: both belong to the frame.
            if (spot.First(".back, main > nav.pages") is { } last)
                last.Before(e);
            else
                Content(spot).Append(e);
        }),
        At("part before another", Movable, (spot, e) =>
        {
            if (e.PreviousElementSibling is not { } other || !Movable.Find(spot).Contains(other))
                return false;
            other.Before(e);
            return true;
        }),
        At("section becomes a block", Places.At("section", Any, "section.part:not(.cautions)"), (spot, e) =>
            spot.Around(e, "<div>", "</div>")
        ),
        At("sections have a class", Sections, (_, e) => e.ClassList.Add("wide")),
        At("rule between parts", Movable, (spot, e) => spot.Before(e, "<hr>")),
        At("class of the page", Places.All, (_, e) => e.ClassList.Add("quiet")),
        At("block in the page", Places.All, (spot, e) => spot.Around(e, "<div class=\"paper\">", "</div>")),
        At("words left out that a theme may leave out", Places.At("note", Any, "[aria-labelledby=calendar] .small"), (_, e) =>
            e.Remove()
        ),
        At("attributes in another order", Sections.Where("section", s => s.Attributes.Length > 1), Reorder),
        At("attributes in another order", Guide, Reorder),
    ];

    private static IEnumerable<Sketch> Written(string name, Func<string, string> change, bool onScripts = true) =>
        Enumerable
            .Range(0, 4)
            .Select(number => Whole(name, FormattableString.Invariant($"page {number}"), (site, chance) =>
                {
                    if (site.IsOneFile && !onScripts)
                        return null;
                    var page = chance.Of(site.Site.Pages);
                    var (head, body, end) = Parts(page.Html);
                    return site.With(page.Path, head + change(body) + end);
                }));

    /// <summary>The head and the scripts stay to the letter: their digests are in the page's policy.</summary>
    private static (string Head, string Body, string End) Parts(string html)
    {
        var from = html.IndexOf("<body", StringComparison.Ordinal);
        var until = html.IndexOf("<script>", from, StringComparison.Ordinal) is >= 0 and var at ? at : html.Length;
        return (html[..from], html[from..until], html[until..]);
    }

    private static void Inner(Spot spot, IElement element, string tag)
    {
        element.Prepend(spot.Raw($"<{tag}>"));
        element.Append(spot.Raw($"</{tag.Split(' ')[0]}>"));
    }

    private static string Bold(Spot spot, string word) => spot.Raw($"<b>{word}</b>").Data;

    private static void Reorder(Spot spot, IElement element)
    {
        var attributes = element.Attributes.Select(a => (a.Name, a.Value)).Reverse().ToArray();
        foreach (var (name, _) in attributes)
            element.RemoveAttribute(name);
        foreach (var (name, value) in attributes)
            element.SetAttribute(name, value);
    }

    [GeneratedRegex(@"</?(?:p|li|ul|h[1-6]|dd|dt|strong)\b")]
    private static partial Regex Tag();

    [GeneratedRegex(" ")]
    private static partial Regex Blank();

    [GeneratedRegex(@"\b\p{L}{6,}\b")]
    private static partial Regex Word();
}
