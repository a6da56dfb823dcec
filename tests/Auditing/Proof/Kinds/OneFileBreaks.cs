using System.Text;
using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>All pages in one, and one is not what it says.</summary>
internal static class OneFileBreaks
{
    private const string Calendar = "data:text/calendar;charset=utf-8;base64,";

    private static readonly Place Part = InOne(s => s.Document.QuerySelectorAll("main > section[data-page]"));

    public static readonly Series<Sketch> All =
    [
        At("page twice", Part, (_, e) => e.After(e.Clone(true))),
        At("page missing", Part, (_, e) => e.Remove()),
        At("words between pages", Part, (spot, e) => spot.After(e, "<p>Skip the page above.</p>")),
        At("words before the first", Part, (spot, e) => e.ParentElement!.Prepend(spot.Raw("<p>Skip the cautions.</p>"))),
        At("words behind the last", Part, (spot, e) => e.ParentElement!.Append(spot.Raw("<p>Skip the cautions.</p>"))),
        Pair("two pages' names swapped", Part, (one, other) => Swap(one, other, "data-page")),
        Pair("two pages' anchors swapped", Part, (one, other) => Swap(one, other, "id")),
        At("page hidden", Part, (_, e) => e.SetAttribute("hidden", "")),
        Whole("page of another client", "one file", OfAnother),
        Pair("page in a page", Part, (one, other) => one.Append(other)),
        Pair("anchor twice", Part, (one, other) => one.FirstElementChild!.Id = other.Id),
        At("calendar in the link", InOne(s => s.Document.QuerySelectorAll($"a[href^='{Calendar}']")), (_, e) =>
        {
            var text = Encoding.UTF8.GetString(Convert.FromBase64String(e.GetAttribute("href")![Calendar.Length..]));
            var other = text.Replace("DTSTART", "X-START", StringComparison.Ordinal);
            e.SetAttribute("href", Calendar + Convert.ToBase64String(Encoding.UTF8.GetBytes(other)));
        }),
        At("page without a name", Part, (_, e) => e.RemoveAttribute("data-page")),
        At("words in the heading of a page", Part, (_, e) => e.SetAttribute("aria-label", "Only for beginners")),
    ];

    private static Place InOne(Func<Spot, IEnumerable<IElement>> find) =>
        new("one file", Places.Any, spot => spot.Of.IsOneFile ? find(spot) : []);

    private static void Swap(IElement one, IElement other, string name)
    {
        var (said, instead) = (one.GetAttribute(name)!, other.GetAttribute(name)!);
        one.SetAttribute(name, instead);
        other.SetAttribute(name, said);
    }

    /// <summary>The part of a page, of somebody who has that page too.</summary>
    private static Site? OfAnother(ProofSite site, Chance chance)
    {
        var others = ProofSite.All.Where(o => o.IsOneFile && o.Plan.Client != site.Plan.Client).ToArray();
        if (!site.IsOneFile || others.Length == 0)
            return null;
        return Spot.Changed(site, chance, Places.Session, spot =>
        {
            var html = chance.Of(others).Html(spot.Path);
            var there = new AngleSharp.Html.Parser.HtmlParser()
                .ParseDocument(html)
                .QuerySelector($"main > section[data-page='{spot.Path}']");
            if (there is null)
                return false;
            spot.Root.InnerHtml = there.InnerHtml;
            return true;
        });
    }
}
