using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A finished page → what the rules see of it, read as a browser would.</summary>
internal sealed class PageParser
{
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
    private readonly Func<PageElement, string> textOf;
    private readonly HiddenElements hiding;
    private readonly Lazy<HiddenElements> hidingOnScreen;
    private readonly TextParser texts;

    /// <param name="textOf">What stands in a style or a script.</param>
    private PageParser(string file, PageMarkup page, Func<PageElement, string> textOf)
    {
        (path, this.page, this.textOf) = (file, page, textOf);
        var (anywhere, onScreen) = LeftOutPlaces.In(page);
        hiding = new(page, anywhere);
        hidingOnScreen = new(() => new(page, onScreen, opensDetails: true));
        texts = new(page, At, hiding);
    }

    /// <param name="file">The file that it stands in; null where it is a file of its own.</param>
    /// <param name="guide">The dialog that a script puts into the page, where the page has a place for it; null where that is
    /// judged elsewhere.</param>
    public static PageSeen Read(Page page, string? file = null, string? guide = null) =>
        Read(page, file ?? page.Path, PageMarkup.Of(PageTree.Of(page.Html, guide)), e => e.TextContent);

    /// <summary>The same, of a page that is parsed already.</summary>
    /// <param name="textOf">What stands in a style or a script.</param>
    public static PageSeen Read(Page page, string file, PageMarkup markup, Func<PageElement, string> textOf)
    {
        var parser = new PageParser(file, markup, textOf);
        return new(
            page.Path,
            page.Html,
            parser.texts.Read(markup.Body),
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
        )
        {
            Figures = FigureParser.Shown(markup, parser.At).ToSeries(),
            Drawings = FigureParser.Drawn(markup, parser.At).ToSeries(),
        };
    }

    /// <summary>As week-figures.js finds them.</summary>
    private IEnumerable<SignSeen> Signs() =>
        from sign in page.OfClass(PageClass.Caution)
        where IsIn(sign, PageClass.Cautions)
        let belongs = sign.Within().FirstOrDefault(e => e.Is(PageClass.Belongs))
        where belongs is not null
        select new SignSeen(Spacing.Collapse(belongs.TextContent), texts.Shown(sign), At(sign));

    private static bool IsIn(PageElement element, string className)
    {
        for (var around = element.ParentElement; around is not null; around = around.ParentElement)
            if (around.Is(className))
                return true;
        return false;
    }

    /// <summary>Every address that a drawing asks for by itself.</summary>
    public static IEnumerable<LoadSeen> LoadsOf(string path, string drawing) =>
        new LoadParser(_ => Location.Whole(path)).Read(StandardReader.Read(drawing).Elements, e => e.TextContent);

    /// <summary>What is hidden of a list counts as not there: an item, or a part of its words. A list that a printed sheet leaves
    /// out as a whole is there: the sheet has the doses instead.</summary>
    private IEnumerable<StepList> Lists()
    {
        foreach (var list in page.Named("ol"))
        {
            var items = list.Children.Where(c => c.LocalName == "li").ToArray();
            if (!items.Any(i => i.Within().Any(IsTime)))
                continue;
            var section = list.Closest("section") ?? page.Body ?? list;
            yield return new(
                Spacing.Collapse(section.Within().FirstOrDefault(IsHeading)?.TextContent ?? ""),
                items.Where(i => IsThere(i, list)).Select(Item).ToSeries(),
                TimesIn(section, section, except: list).ToSeries(),
                At(list)
            );
        }
    }

    private StepSeen Item(PageElement item) =>
        new(
            string.Join(' ', texts.Shown(item, around: null)),
            TimesIn(item, item.ParentElement ?? item, except: null).ToSeries(),
            item.Value(PageData.Step) ?? "",
            At(item)
        );

    /// <param name="except">What their times are not asked of.</param>
    private List<TimeSeen> TimesIn(PageElement element, PageElement whole, PageElement? except)
    {
        var times = new List<TimeSeen>();
        foreach (var inner in element.Within())
            if (IsTime(inner) && except?.Contains(inner) != true && IsThere(inner, whole))
                times.Add(Time(inner));
        return times;
    }

    private static bool IsTime(PageElement element) => element.LocalName == "time";

    private static bool IsHeading(PageElement element) => element.LocalName is "h1" or "h2" or "h3" or "h4" or "h5" or "h6";

    /// <summary>Whether nothing hides an element inside the whole that it belongs to, and nothing hides that whole on a
    /// screen.</summary>
    private bool IsThere(PageElement element, PageElement whole)
    {
        for (var around = element; around is not null && around != whole; around = around.ParentElement)
            if (hiding.Of(around) is not null)
                return false;
        return hidingOnScreen.Value.Around(whole) is null;
    }

    private TimeSeen Time(PageElement time) => new(time.Value("datetime"), Spacing.Collapse(time.TextContent), At(time));

    private GuideSeen Guide(PageElement dialog) =>
        new(
            dialog.Value(PageData.Guide) ?? "",
            texts.Shown(page.OfClass(PageClass.Cautions).FirstOrDefault()),
            page.With(PageData.About)
                .Where(a => a.LocalName == "article")
                .Select(a => new ArticleSeen(a.Value(PageData.About) ?? "", a.Value(PageData.Loads) ?? "", texts.Shown(a), At(a)))
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
        )
        {
            Places = dialog
                .Within()
                .Where(e => e.Has(PageData.Fill))
                .Select(e => new GuidePlaceSeen(
                    e.Value(PageData.Fill) ?? "",
                    Around(e, a => a.Has(PageData.Panel))?.Value(PageData.Panel) ?? "",
                    Around(e, a => a.Value("role") == "status") is { } status ? page.NumberOf(status) : null,
                    At(e)
                ))
                .ToSeries(),
        };

    /// <summary>The nearest element around one that is so; null where none is.</summary>
    private static PageElement? Around(PageElement element, Func<PageElement, bool> isSo) =>
        element.ParentElement is not { } parent ? null
        : isSo(parent) ? parent
        : Around(parent, isSo);

    private BarSeen Bar(PageElement drawing) =>
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
    private static decimal? LengthOf(PageElement drawing) =>
        (drawing.Value("viewBox") ?? "").Split(' ') is ["0", "0", var width, _]
        && decimal.TryParse(width, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var length)
            ? length
            : null;

    /// <summary>Whether a rectangle stands where its numbers say, and can be seen.</summary>
    private bool IsDrawn(PageElement rectangle) =>
        hiding.Around(rectangle) is null
        && Number(rectangle, "height") > 0
        && (Number(rectangle, "y") ?? 0) == 0
        && !DrawnOtherwise.Any(rectangle.Has)
        && rectangle.ParentElement?.LocalName == "svg";

    private static decimal? Number(PageElement element, string attribute) =>
        decimal.TryParse(element.Value(attribute), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    private IEnumerable<StyleSeen> Styles() =>
        page
            .All.Where(e => e.LocalName == "style" || e.Has("style"))
            .Select(e => new StyleSeen(e.LocalName == "style" ? textOf(e) : null, At(e)));

    private Location At(PageElement? element) =>
        element is { IsPutIn: true } ? Location.Whole(GuideFile.Path)
        : element?.Position is { } position ? new(path, position.Line, position.Column)
        : Location.Whole(path);
}
