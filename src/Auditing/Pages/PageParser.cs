using System.Collections.Frozen;
using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A finished page → what the rules see of it, read as a browser would.</summary>
internal sealed class PageParser
{
    private static readonly HtmlParser Parser = new(new HtmlParserOptions { IsKeepingSourceReferences = true });

    /// <summary>What moves, bends or blots out a rectangle.</summary>
    private static readonly string[] DrawnOtherwise = ["transform", "display", "visibility", "opacity", "fill", "fill-opacity", "clip-path", "mask", "hidden", "filter"];

    private readonly string path;
    private readonly IDocument document;
    private readonly Hiding hiding;

    private PageParser(Page page, IEnumerable<HidingStyle> shared)
    {
        path = page.Path;
        document = Parser.ParseDocument(page.Html);
        hiding = new(ByStyle(shared));
    }

    /// <param name="hiding">What the style files of the site hide.</param>
    public static PageReading Read(Page page, IEnumerable<HidingStyle> hiding)
    {
        var parser = new PageParser(page, hiding);
        return new(
            page.Path,
            page.Html,
            parser.Text(parser.document.Body),
            parser.Lists().ToSeries(),
            parser.document.QuerySelectorAll("time").Select(parser.Time).ToSeries(),
            parser.document.QuerySelectorAll("svg").Where(s => parser.hiding.Around(s) is null).Select(parser.Bar).Where(b => b.Parts.Count > 0).ToSeries(),
            parser.document.QuerySelectorAll("a[href],area[href]").Select(a => new LinkSeen(a.GetAttribute("href") ?? "", parser.At(a))).ToSeries(),
            new LoadParser(parser.At).Read(parser.document),
            parser.document.All.Select(e => e.Id ?? e.GetAttribute("name") ?? "").Where(id => id.Length > 0).ToFrozenSet(StringComparer.Ordinal),
            new ShapeParser(parser.At).Read(parser.document));
    }

    private Series<TextLine> Text(IElement? element) => new TextParser(At, hiding).Read(element);

    /// <summary>What is hidden of a list counts as not there: an item, or a part of its words.</summary>
    private IEnumerable<StepList> Lists()
    {
        foreach (var list in document.QuerySelectorAll("ol"))
        {
            var items = list.Children.Where(c => c.LocalName == "li").ToArray();
            if (!items.Any(i => i.QuerySelector("time") is not null)) continue;
            var section = list.Closest("section") ?? document.Body ?? list;
            yield return new(
                Spacing.Collapse(section.QuerySelector("h1,h2,h3,h4,h5,h6")?.TextContent ?? ""),
                items.Where(i => hiding.Around(i) is null).Select(Item).ToSeries(),
                TimesIn(section).Where(t => !list.Contains(t)).Select(Time).ToSeries(),
                At(list));
        }
    }

    private StepSeen Item(IElement item) => new(
        string.Join(' ', Text(item).Where(l => l.HiddenBy is null).Select(l => l.Text)),
        TimesIn(item).Select(Time).ToSeries(),
        At(item));

    private IEnumerable<IElement> TimesIn(IElement element) => element.QuerySelectorAll("time").Where(t => hiding.Around(t) is null);

    private TimeSeen Time(IElement time) => new(time.GetAttribute("datetime"), Spacing.Collapse(time.TextContent), At(time));

    private BarSeen Bar(IElement drawing) => new(
        AccessibleName.Of(drawing), LengthOf(drawing), drawing.QuerySelectorAll("rect").Select(r => IsDrawn(r) ? (Number(r, "x"), Number(r, "width")) : (null, null)).ToSeries(), At(drawing));

    /// <summary>The third number of a view box that begins at 0, in the corner.</summary>
    private static decimal? LengthOf(IElement drawing) =>
        (drawing.GetAttribute("viewBox") ?? "").Split(' ') is ["0", "0", var width, _] && decimal.TryParse(width, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var length) ? length : null;

    /// <summary>Whether a rectangle stands where its numbers say, and can be seen.</summary>
    private bool IsDrawn(IElement rectangle) =>
        hiding.Around(rectangle) is null && Number(rectangle, "height") > 0 && (Number(rectangle, "y") ?? 0) == 0
        && !DrawnOtherwise.Any(rectangle.HasAttribute) && rectangle.ParentElement?.LocalName == "svg";

    private static decimal? Number(IElement element, string attribute) =>
        decimal.TryParse(element.GetAttribute(attribute), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>The elements that a style rule hides, with the declaration that does it.</summary>
    private Dictionary<IElement, string> ByStyle(IEnumerable<HidingStyle> shared)
    {
        var hidden = new Dictionary<IElement, string>();
        foreach (var style in shared.Concat(document.QuerySelectorAll("style").SelectMany(s => HidingStyle.In(s.TextContent))))
            foreach (var element in Selecting.In(document, style.Selector)) hidden.TryAdd(element, $"the style '{style.Declaration}'");
        return hidden;
    }

    private Location At(IElement? element) =>
        element?.SourceReference?.Position is { } position ? new(path, position.Line, position.Column) : Location.Whole(path);
}
