using System.Collections.Frozen;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A finished page → what the rules see of it, read as a browser would.</summary>
internal sealed class PageParser
{
    private static readonly HtmlParser Parser = new(new HtmlParserOptions { IsKeepingSourceReferences = true });

    private readonly string path;
    private readonly IDocument document;

    private PageParser(Page page)
    {
        path = page.Path;
        document = Parser.ParseDocument(page.Html);
    }

    /// <param name="hiding">What each style file of the site hides, by its path.</param>
    public static PageReading Read(Page page, IReadOnlyDictionary<string, Series<HidingStyle>> hiding)
    {
        var parser = new PageParser(page);
        return new(
            page.Path,
            page.Html,
            new TextParser(parser.At, parser.Hidden(hiding)).Read(parser.document.Body),
            parser.Lists().ToSeries(),
            parser.document.QuerySelectorAll("time").Select(parser.Time).ToSeries(),
            parser.document.QuerySelectorAll("a[href],area[href]").Select(a => new LinkSeen(a.GetAttribute("href") ?? "", parser.At(a))).ToSeries(),
            new LoadParser(parser.At).Read(parser.document),
            parser.document.All.Select(e => e.Id ?? e.GetAttribute("name") ?? "").Where(id => id.Length > 0).ToFrozenSet(StringComparer.Ordinal));
    }

    private IEnumerable<StepList> Lists()
    {
        foreach (var list in document.QuerySelectorAll("ol"))
        {
            var items = list.Children.Where(c => c.LocalName == "li").ToArray();
            if (!items.Any(i => i.QuerySelector("time") is not null)) continue;
            var section = list.Closest("section") ?? document.Body ?? list;
            yield return new(
                Spacing.Collapse(section.QuerySelector("h1,h2,h3,h4,h5,h6")?.TextContent ?? ""),
                items.Select(i => new StepSeen(Spacing.Collapse(i.TextContent), i.QuerySelectorAll("time").Select(Time).ToSeries(), At(i))).ToSeries(),
                section.QuerySelectorAll("time").Where(t => !list.Contains(t)).Select(Time).ToSeries(),
                At(list));
        }
    }

    private TimeSeen Time(IElement time) => new(time.GetAttribute("datetime"), Spacing.Collapse(time.TextContent), At(time));

    /// <summary>The elements that a style rule hides, with the declaration that does it.</summary>
    private Dictionary<IElement, string> Hidden(IReadOnlyDictionary<string, Series<HidingStyle>> hiding)
    {
        var used = document.QuerySelectorAll("link[href]").Select(l => l.GetAttribute("href") ?? "").SelectMany(file => hiding.GetValueOrDefault(file) ?? []);
        var own = document.QuerySelectorAll("style").SelectMany(s => HidingStyle.In(s.TextContent));
        var hidden = new Dictionary<IElement, string>();
        foreach (var style in used.Concat(own))
        {
            try
            {
                foreach (var element in document.QuerySelectorAll(style.Selector)) hidden.TryAdd(element, $"the style '{style.Declaration}'");
            }
            catch (DomException)
            {
                // A selector no browser understands hides nothing.
            }
        }

        return hidden;
    }

    private Location At(IElement? element) =>
        element?.SourceReference?.Position is { } position ? new(path, position.Line, position.Column) : Location.Whole(path);
}
