using System.Buffers;
using System.Collections.Frozen;
using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>The text of a page in reading order, and what is kept from whom; one serves for all its parts.</summary>
/// <param name="at">Where an element is written.</param>
/// <param name="page">Whose text it is.</param>
internal sealed class TextParser(PageMarkup page, Func<PageElement?, Location> at, HiddenElements hiding)
{
    /// <summary>Deeper than any page of ours by far; deeper text counts as not there.</summary>
    private const int DepthLimit = 200;

    private static readonly FrozenSet<string> Running = FrozenSet.ToFrozenSet(
        [
            "a",
            "abbr",
            "b",
            "bdi",
            "bdo",
            "br",
            "cite",
            "code",
            "data",
            "del",
            "dfn",
            "em",
            "i",
            "img",
            "picture",
            "source",
            "ins",
            "kbd",
            "label",
            "mark",
            "q",
            "s",
            "samp",
            "small",
            "span",
            "strike",
            "strong",
            "sub",
            "sup",
            "time",
            "u",
            "var",
            "wbr",
        ],
        StringComparer.Ordinal
    );

    /// <summary>What a browser shows nothing of, or something else instead.</summary>
    private static readonly FrozenSet<string> NoText = FrozenSet.ToFrozenSet(
        [
            "script",
            "style",
            "template",
            "head",
            "iframe",
            "object",
            "canvas",
            "video",
            "audio",
            "datalist",
            "meter",
            "noembed",
            "noframes",
            "progress",
            "rp",
            "title",
            "desc",
            "defs",
            "metadata",
            "symbol",
        ],
        StringComparer.Ordinal
    );

    private static readonly FrozenSet<string> Marks = PageMark.Attributes.ToFrozenSet(StringComparer.Ordinal);

    private readonly List<TextLine> lines = [];

    /// <summary>Where only the texts are asked for that everybody gets; null otherwise.</summary>
    private List<string>? shown;

    /// <summary>The text of a line: mostly it is one, and is not copied.</summary>
    private string first = "";
    private readonly ArrayBufferWriter<char> several = new();

    private readonly List<string> leads = [];
    private readonly List<string> figures = [];
    private PageElement? begun;
    private string? hiddenBy;
    private string mark = "";
    private string begunMark = "";

    /// <summary>Which answer the next text belongs to; empty where to none.</summary>
    private string answer = "";

    /// <summary>The lines of an element, as somebody gets them who gets the page.</summary>
    public Series<TextLine> Read(PageElement? element)
    {
        Begin(element, AroundOf(element));
        var read = lines.ToSeries();
        lines.Clear();
        return read;
    }

    /// <summary>The texts alone of the lines that everybody gets.</summary>
    public Series<string> Shown(PageElement? element) => Shown(element, AroundOf(element));

    /// <summary>The same, where it is known what hides all that the element stands in.</summary>
    public Series<string> Shown(PageElement? element, string? around)
    {
        shown = [];
        Begin(element, around);
        var read = shown.ToSeries();
        shown = null;
        return read;
    }

    private string? AroundOf(PageElement? element) => element?.ParentElement is { } parent ? hiding.Around(parent) : null;

    private void Begin(PageElement? element, string? around)
    {
        if (element is not null)
            Walk(element, around, 0);
        Flush();
        leads.Clear();
        figures.Clear();
        (mark, answer, hiddenBy, begun) = ("", "", null, null);
    }

    private void Walk(PageElement element, string? around, int depth)
    {
        if (NoText.Contains(element.LocalName) || depth > DepthLimit)
            return;
        var hidden = around ?? hiding.Of(element);
        var block = !Running.Contains(element.LocalName);
        if (block)
            Flush();
        var outer = mark;
        if (element.Attributes.Length > 0)
            Take(element);
        var within = hidden ?? HiddenElements.OfText(element);
        for (var child = element.FirstChild; child is not null; child = child.NextSibling)
        {
            if (!page.Has(child))
                continue;
            Turn(within);
            if (child is PageText text)
                Append(text.Data, element);
            else if (child is PageElement { LocalName: "br" })
                Append(" ", element);
            else if (child is PageElement inner)
                Walk(inner, hidden, depth + 1);
        }

        if (block)
            Flush();
        mark = outer;
    }

    /// <summary>What the attributes of an element say of its text.</summary>
    private void Take(PageElement element)
    {
        mark = MarkOf(element) ?? mark;
        if (AnswerOf(element) is { } said)
            answer = said;
        if (element.LocalName == "a" && element.Value("href") is { } address)
            leads.Add(address);
        if (element.Value(PageData.ByWeek) is { } figure)
            figures.Add(WeekData.Whole(Spacing.Collapse(element.TextContent), figure));
    }

    /// <summary>What an element tells the scripts of its text; null where nothing.</summary>
    private static string? MarkOf(PageElement element)
    {
        if (element.LocalName == "option")
            return element.Value("value") is { } value ? PageMark.Of(("value", value)) : null;
        if (element.LocalName == "td" && int.TryParse(element.Value("colspan"), CultureInfo.InvariantCulture, out var columns))
            return PageMark.Cell(columns);
        return HasMark(element) ? Marked(element) : null;
    }

    private static string Marked(PageElement element)
    {
        var marks = new List<(string, string)>();
        foreach (var name in PageMark.Attributes)
            if (element.Value(name) is { } value)
                marks.Add((name, value));
        return PageMark.Of([.. marks]);
    }

    /// <summary>Hardly any has one, and each has only a few attributes.</summary>
    private static bool HasMark(PageElement element)
    {
        foreach (var attribute in element.Attributes)
            if (attribute.Name.StartsWith("data-", StringComparison.Ordinal) && Marks.Contains(attribute.Name))
                return true;
        return false;
    }

    /// <summary>What a field with an answer of its own says behind it; null where it is none.</summary>
    private static string? AnswerOf(PageElement element) =>
        element.LocalName == "input" && element.Value("name") is { Length: > 0 } name
            ? element.Has("checked")
                ? PageMark.Of((name, element.Value("value") ?? ""), ("checked", ""))
                : PageMark.Of((name, element.Value("value") ?? ""))
            : null;

    /// <summary>Text that not everybody gets is a line of its own.</summary>
    private void Turn(string? hidden)
    {
        if (hidden == hiddenBy)
            return;
        Flush();
        hiddenBy = hidden;
    }

    private void Append(string text, PageElement from)
    {
        if (begun is null && !string.IsNullOrWhiteSpace(text))
        {
            begun = from;
            begunMark = answer.Length > 0 ? answer : mark;
            answer = "";
        }

        if (first.Length == 0)
        {
            first = text;
            return;
        }

        if (several.WrittenCount == 0)
            several.Write(first);
        several.Write(text);
    }

    private static Series<string> Kept(List<string> said) => said.Count == 0 ? [] : said.ToSeries();

    private void Flush()
    {
        if (first.Length == 0)
            return;
        var text = several.WrittenCount == 0 ? Spacing.Collapse(first) : Spacing.Collapse(several.WrittenSpan);
        if (text.Length > 0 && shown is not null)
        {
            if (hiddenBy is null)
                shown.Add(text);
        }
        else if (text.Length > 0)
            lines.Add(new(text, at(begun), hiddenBy, begunMark) { Leads = Kept(leads), Figures = Kept(figures) });
        first = "";
        several.ResetWrittenCount();
        leads.Clear();
        figures.Clear();
        begun = null;
    }
}
