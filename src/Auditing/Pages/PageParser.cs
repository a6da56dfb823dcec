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
    private readonly PageMarkup page;
    private readonly Func<IElement, string> textOf;
    private readonly HiddenElements hiding;
    private readonly HiddenElements hidingOnScreen;

    /// <summary>What a script puts into the page, which stands in a file of its own; null where it puts in nothing.</summary>
    private readonly IElement? putIn;

    /// <param name="textOf">What stands in a style or a script.</param>
    /// <param name="putIn">What a script puts into the page.</param>
    private PageParser(string file, PageMarkup page, Func<IElement, string> textOf, IElement? putIn)
    {
        (path, this.page, this.textOf, this.putIn) = (file, page, textOf, putIn);
        var (anywhere, onScreen) = LeftOutPlaces.In(page);
        hiding = new(anywhere);
        hidingOnScreen = new(onScreen, opensDetails: true);
    }

    /// <param name="file">The file that it stands in; null where it is a file of its own.</param>
    /// <param name="guide">The dialog that a script puts into the page, where the page has a place for it; null where that is
    /// judged elsewhere.</param>
    public static PageSeen Read(Page page, string? file = null, string? guide = null)
    {
        var document = Parser.ParseDocument(page.Html.AsMemory());
        var markup = PageMarkup.Of(document);
        if (guide is null || markup.Named("dialog").FirstOrDefault(d => d.Has(PageData.Guide)) is not { } place)
            return Read(page, file ?? page.Path, markup, MarkupReading.RawText, null);
        place.Insert(AdjacentPosition.BeforeBegin, guide);
        return Read(page, page.Path, PageMarkup.Of(document), MarkupReading.RawText, place.PreviousElementSibling);
    }

    /// <summary>The same, of a page that is parsed already.</summary>
    /// <param name="textOf">What stands in a style or a script.</param>
    public static PageSeen Read(Page page, string file, PageMarkup markup, Func<IElement, string> textOf) =>
        Read(page, file, markup, textOf, null);

    private static PageSeen Read(Page page, string file, PageMarkup markup, Func<IElement, string> textOf, IElement? putIn)
    {
        var parser = new PageParser(file, markup, textOf, putIn);
        return new(
            page.Path,
            page.Html,
            parser.Text(BodyOf(markup)),
            parser.Lists().ToSeries(),
            markup.Named("time").Select(parser.Time).ToSeries(),
            markup
                .Named("svg")
                .Where(s => parser.hiding.Around(s) is null)
                .Select(parser.Bar)
                .Where(b => b.Parts.Count > 0)
                .ToSeries(),
            markup
                .With("href")
                .Where(e => e.LocalName is "a" or "area")
                .Select(a => new LinkSeen(a.Value("href") ?? "", Spacing.Collapse(a.TextContent), parser.At(a)))
                .ToSeries(),
            new LoadParser(parser.At).Read(markup.All, textOf),
            markup.Named("dialog").Where(d => d.Has(PageData.Guide)).Select(parser.Guide).ToSeries(),
            markup.With("id").Select(e => e.Value("id") ?? "").Where(id => id.Length > 0).ToHashSet(StringComparer.Ordinal),
            new ShapeParser(parser.At).Read(markup, textOf),
            new PolicyParser(parser.At).Read(markup, textOf),
            parser.Signs().ToSeries(),
            parser.Styles().ToSeries()
        );
    }

    /// <summary>Null where the page has a frameset in its place.</summary>
    private static IElement? BodyOf(PageMarkup page) => page.All[0].Owner?.Body;

    /// <summary>As week-figures.js finds them.</summary>
    private IEnumerable<SignSeen> Signs() =>
        from sign in page.OfClass(PageClass.Caution)
        where IsIn(sign, PageClass.Cautions)
        let belongs = sign.Within().FirstOrDefault(e => e.Is(PageClass.Belongs))
        where belongs is not null
        select new SignSeen(Spacing.Collapse(belongs.TextContent), Shown(sign), At(sign));

    private static bool IsIn(IElement element, string className)
    {
        for (var around = element.ParentElement; around is not null; around = around.ParentElement)
            if (around.Is(className))
                return true;
        return false;
    }

    /// <summary>Every address that a drawing asks for by itself.</summary>
    public static IEnumerable<LoadSeen> LoadsOf(string path, string drawing) =>
        new LoadParser(_ => Location.Whole(path)).Read(Parser.ParseDocument(drawing).All, MarkupReading.RawText);

    private Series<TextLine> Text(IElement? element) => new TextParser(page, At, hiding).Read(element);

    /// <summary>What is hidden of a list counts as not there: an item, or a part of its words. A list that a printed sheet leaves
    /// out as a whole is there: the sheet has the doses instead.</summary>
    private IEnumerable<StepList> Lists()
    {
        foreach (var list in page.Named("ol"))
        {
            var items = list.Children.Where(c => c.LocalName == "li").ToArray();
            if (!items.Any(i => i.Within().Any(IsTime)))
                continue;
            var section = list.Closest("section") ?? BodyOf(page) ?? list;
            yield return new(
                Spacing.Collapse(section.Within().FirstOrDefault(IsHeading)?.TextContent ?? ""),
                items.Where(i => IsThere(i, list)).Select(Item).ToSeries(),
                TimesIn(section, section).Where(t => !list.Contains(t)).Select(Time).ToSeries(),
                At(list)
            );
        }
    }

    private StepSeen Item(IElement item) =>
        new(
            string.Join(
                ' ',
                new TextParser(page, At, hiding).Read(item, null).Where(l => l.HiddenBy is null).Select(l => l.Text)
            ),
            TimesIn(item, item.ParentElement ?? item).Select(Time).ToSeries(),
            item.Value(PageData.Step) ?? "",
            At(item)
        );

    private IEnumerable<IElement> TimesIn(IElement element, IElement whole) =>
        element.Within().Where(e => IsTime(e) && IsThere(e, whole));

    private static bool IsTime(IElement element) => element.LocalName == "time";

    private static bool IsHeading(IElement element) => element.LocalName is "h1" or "h2" or "h3" or "h4" or "h5" or "h6";

    /// <summary>Whether nothing hides an element inside the whole that it belongs to, and nothing hides that whole on a
    /// screen.</summary>
    private bool IsThere(IElement element, IElement whole)
    {
        for (var around = element; around is not null && around != whole; around = around.ParentElement)
            if (hiding.Of(around) is not null)
                return false;
        return hidingOnScreen.Around(whole) is null;
    }

    private TimeSeen Time(IElement time) => new(time.Value("datetime"), Spacing.Collapse(time.TextContent), At(time));

    private GuideSeen Guide(IElement dialog) =>
        new(
            dialog.Value(PageData.Guide) ?? "",
            Shown(page.OfClass(PageClass.Cautions).FirstOrDefault()),
            page.With(PageData.About)
                .Where(a => a.LocalName == "article")
                .Select(a => new ArticleSeen(a.Value(PageData.About) ?? "", a.Value(PageData.Loads) ?? "", Shown(a), At(a)))
                .ToSeries(),
            dialog
                .Within()
                .Where(v => v.Has(PageData.Version))
                .Select(v => new VersionSeen(
                    v.Value(PageData.Version) ?? "",
                    v.Value(PageData.Kind) ?? "",
                    v.Value(PageData.Lengths) ?? "",
                    v.Value(PageData.Loads) ?? "",
                    v.Within().FirstOrDefault(e => e.LocalName == "a")?.Value("href") ?? "",
                    At(v)
                ))
                .ToSeries(),
            At(dialog)
        );

    private Series<string> Shown(IElement? element) =>
        Text(element).Where(l => l.HiddenBy is null).Select(l => l.Text).ToSeries();

    private BarSeen Bar(IElement drawing) =>
        new(
            new AccessibleName(page).Of(drawing),
            LengthOf(drawing),
            drawing
                .Within()
                .Where(e => e.LocalName == "rect")
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
        && !DrawnOtherwise.Any(rectangle.Has)
        && rectangle.ParentElement?.LocalName == "svg";

    private static decimal? Number(IElement element, string attribute) =>
        decimal.TryParse(element.Value(attribute), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    private IEnumerable<StyleSeen> Styles() =>
        page
            .All.Where(e => e.LocalName == "style" || e.Has("style"))
            .Select(e => new StyleSeen(e.LocalName == "style" ? textOf(e) : null, At(e)));

    private Location At(IElement? element) =>
        element is not null && putIn?.Contains(element) == true ? Location.Whole(GuideFile.Path)
        : element?.SourceReference?.Position is { } position ? new(path, position.Line, position.Column)
        : Location.Whole(path);
}
