using System.Collections.Frozen;
using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A finished page → what the rules see of it, read as a browser would.</summary>
internal sealed class PageParser
{
    private static readonly HtmlParser Parser = new(new HtmlParserOptions { IsKeepingSourceReferences = true });

    /// <summary>What moves, bends or blots out a rectangle.</summary>
    private static readonly string[] DrawnOtherwise =
    [
        "transform",
        "display",
        "visibility",
        "opacity",
        "fill",
        "fill-opacity",
        "clip-path",
        "mask",
        "hidden",
        "filter",
    ];

    private readonly string path;
    private readonly IDocument document;
    private readonly HiddenElements hiding;
    private readonly HiddenElements hidingOnScreen;

    /// <summary>What a script puts into the page, which stands in a file of its own; null where it puts in nothing.</summary>
    private readonly IElement? putIn;

    private PageParser(Page page, string file, string? guide)
    {
        path = file;
        document = Parser.ParseDocument(page.Html);
        if (guide is not null && document.QuerySelector($"dialog[{PageData.Guide}]") is { } place)
        {
            place.Insert(AdjacentPosition.BeforeBegin, guide);
            putIn = place.PreviousElementSibling;
        }

        var places = KnownStyles
            .List.LeftOut.Select(p => (Place: p, Elements: document.QuerySelectorAll(p.Selector).ToArray()))
            .ToArray();
        hiding = new(ByStyle(places));
        hidingOnScreen = new(ByStyle(places.Where(p => !p.Place.IsOnPaper)), opensDetails: true);
    }

    /// <param name="file">The file that it stands in; null where it is a file of its own.</param>
    /// <param name="guide">The dialog that a script puts into the page, where the page has a place for it; null where that is
    /// judged elsewhere.</param>
    public static PageSeen Read(Page page, string? file = null, string? guide = null)
    {
        var parser = new PageParser(page, file ?? page.Path, guide);
        return new(
            page.Path,
            page.Html,
            parser.Text(parser.document.Body),
            parser.Lists().ToSeries(),
            parser.document.QuerySelectorAll("time").Select(parser.Time).ToSeries(),
            parser
                .document.QuerySelectorAll("svg")
                .Where(s => parser.hiding.Around(s) is null)
                .Select(parser.Bar)
                .Where(b => b.Parts.Count > 0)
                .ToSeries(),
            parser
                .document.QuerySelectorAll("a[href],area[href]")
                .Select(a => new LinkSeen(a.GetAttribute("href") ?? "", Spacing.Collapse(a.TextContent), parser.At(a)))
                .ToSeries(),
            new LoadParser(parser.At).Read(parser.document),
            parser.document.QuerySelectorAll($"dialog[{PageData.Guide}]").Select(parser.Guide).ToSeries(),
            parser
                .document.All.Select(e => e.Id ?? e.GetAttribute("name") ?? "")
                .Where(id => id.Length > 0)
                .ToFrozenSet(StringComparer.Ordinal),
            new ShapeParser(parser.At).Read(parser.document),
            new PolicyParser(parser.At).Read(parser.document),
            parser.Signs().ToSeries(),
            parser.Styles().ToSeries()
        );
    }

    /// <summary>As week-figures.js finds them.</summary>
    private IEnumerable<SignSeen> Signs() =>
        from sign in document.QuerySelectorAll($".{PageClass.Cautions} .{PageClass.Caution}")
        let belongs = sign.QuerySelector("." + PageClass.Belongs)
        where belongs is not null
        select new SignSeen(Spacing.Collapse(belongs.TextContent), Shown(sign), At(sign));

    /// <summary>Every address that a drawing asks for by itself.</summary>
    public static IEnumerable<LoadSeen> LoadsOf(string path, string drawing) =>
        new LoadParser(_ => Location.Whole(path)).Read(Parser.ParseDocument(drawing));

    private Series<TextLine> Text(IElement? element) => new TextParser(At, hiding).Read(element);

    /// <summary>What is hidden of a list counts as not there: an item, or a part of its words. A list that a printed sheet leaves
    /// out as a whole is there: the sheet has the doses instead.</summary>
    private IEnumerable<StepList> Lists()
    {
        foreach (var list in document.QuerySelectorAll("ol"))
        {
            var items = list.Children.Where(c => c.LocalName == "li").ToArray();
            if (!items.Any(i => i.QuerySelector("time") is not null))
                continue;
            var section = list.Closest("section") ?? document.Body ?? list;
            yield return new(
                Spacing.Collapse(section.QuerySelector("h1,h2,h3,h4,h5,h6")?.TextContent ?? ""),
                items.Where(i => IsThere(i, list)).Select(Item).ToSeries(),
                TimesIn(section, section).Where(t => !list.Contains(t)).Select(Time).ToSeries(),
                At(list)
            );
        }
    }

    private StepSeen Item(IElement item) =>
        new(
            string.Join(' ', new TextParser(At, hiding).Read(item, null).Where(l => l.HiddenBy is null).Select(l => l.Text)),
            TimesIn(item, item.ParentElement ?? item).Select(Time).ToSeries(),
            item.GetAttribute(PageData.Step) ?? "",
            At(item)
        );

    private IEnumerable<IElement> TimesIn(IElement element, IElement whole) =>
        element.QuerySelectorAll("time").Where(t => IsThere(t, whole));

    /// <summary>Whether nothing hides an element inside the whole that it belongs to, and nothing hides that whole on a
    /// screen.</summary>
    private bool IsThere(IElement element, IElement whole)
    {
        for (var around = element; around is not null && around != whole; around = around.ParentElement)
            if (hiding.Of(around) is not null)
                return false;
        return hidingOnScreen.Around(whole) is null;
    }

    private TimeSeen Time(IElement time) => new(time.GetAttribute("datetime"), Spacing.Collapse(time.TextContent), At(time));

    private GuideSeen Guide(IElement dialog) =>
        new(
            dialog.GetAttribute(PageData.Guide) ?? "",
            Shown(document.QuerySelector("." + PageClass.Cautions)),
            document
                .QuerySelectorAll($"article[{PageData.About}]")
                .Select(a => new ArticleSeen(
                    a.GetAttribute(PageData.About) ?? "",
                    a.GetAttribute(PageData.Loads) ?? "",
                    Shown(a),
                    At(a)
                ))
                .ToSeries(),
            dialog
                .QuerySelectorAll($"[{PageData.Version}]")
                .Select(v => new VersionSeen(
                    v.GetAttribute(PageData.Version) ?? "",
                    v.GetAttribute(PageData.Kind) ?? "",
                    v.GetAttribute(PageData.Lengths) ?? "",
                    v.GetAttribute(PageData.Loads) ?? "",
                    v.QuerySelector("a")?.GetAttribute("href") ?? "",
                    At(v)
                ))
                .ToSeries(),
            At(dialog)
        );

    private Series<string> Shown(IElement? element) =>
        Text(element).Where(l => l.HiddenBy is null).Select(l => l.Text).ToSeries();

    private BarSeen Bar(IElement drawing) =>
        new(
            AccessibleName.Of(drawing),
            LengthOf(drawing),
            drawing
                .QuerySelectorAll("rect")
                .Select(r => IsDrawn(r) ? (Number(r, "x"), Number(r, "width")) : (null, null))
                .ToSeries(),
            At(drawing)
        );

    /// <summary>The third number of a view box that begins at 0, in the corner.</summary>
    private static decimal? LengthOf(IElement drawing) =>
        (drawing.GetAttribute("viewBox") ?? "").Split(' ') is ["0", "0", var width, _]
        && decimal.TryParse(width, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var length)
            ? length
            : null;

    /// <summary>Whether a rectangle stands where its numbers say, and can be seen.</summary>
    private bool IsDrawn(IElement rectangle) =>
        hiding.Around(rectangle) is null
        && Number(rectangle, "height") > 0
        && (Number(rectangle, "y") ?? 0) == 0
        && !DrawnOtherwise.Any(rectangle.HasAttribute)
        && rectangle.ParentElement?.LocalName == "svg";

    private static decimal? Number(IElement element, string attribute) =>
        decimal.TryParse(
            element.GetAttribute(attribute),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? number
            : null;

    /// <summary>What a style may leave out, with the place of the list that lets it.</summary>
    private static Dictionary<IElement, string> ByStyle(
        IEnumerable<((string Selector, bool IsOnPaper) Place, IElement[] Elements)> places
    )
    {
        var hidden = new Dictionary<IElement, string>();
        foreach (var (place, elements) in places)
        foreach (var element in elements)
            hidden.TryAdd(element, $"what a style may do with '{place.Selector}'");
        return hidden;
    }

    private IEnumerable<StyleSeen> Styles() =>
        document
            .QuerySelectorAll("style,[style]")
            .Select(e => new StyleSeen(e.LocalName == "style" ? e.TextContent : null, At(e)));

    private Location At(IElement? element) =>
        element is not null && putIn?.Contains(element) == true ? Location.Whole(GuideFile.Path)
        : element?.SourceReference?.Position is { } position ? new(path, position.Line, position.Column)
        : Location.Whole(path);
}
