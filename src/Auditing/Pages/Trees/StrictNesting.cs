using System.Collections.Frozen;
using Gradus.Figures;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>What may stand in what for the strict reader, and which end tags may be left out (HTML Standard, 13.1.2.4 and
/// 13.2.6). It gives up wherever the standard would move an element, close one that is not the last, or open one again.</summary>
internal sealed class StrictNesting
{
    /// <summary>Deeper than any page of ours by far.</summary>
    private const int DepthLimit = 100;

    private static readonly FrozenSet<string> Head = Set("meta link title style script");

    /// <summary>What ends a paragraph that is open.</summary>
    private static readonly FrozenSet<string> Blocks = Set(
        "address article aside blockquote details dialog div dd dl dt fieldset figcaption figure footer form "
            + "h1 h2 h3 h4 h5 h6 header hr li main nav ol p section summary table ul"
    );

    /// <summary>Those of them whose end tag ends a paragraph and an item in them too.</summary>
    private static readonly FrozenSet<string> Boxes = Blocks.Except(Set("h1 h2 h3 h4 h5 h6 hr p table")).ToFrozenSet();

    private static readonly FrozenSet<string> Runs = Set(
        "a abbr b bdi br button cite code data dfn em i img input kbd label legend link mark meta output picture progress q "
            + "s samp script select small source span strong style sub sup svg textarea time track u var video wbr"
    );

    private static readonly FrozenSet<string> Void = Set("br hr img input link meta source track wbr");
    private static readonly FrozenSet<string> RawTexts = Set("script style textarea title");

    /// <summary>A browser ends the first of them where a second begins in it, or leaves the second out.</summary>
    private static readonly FrozenSet<string> NotInItself = Set("a button form");

    private static readonly FrozenSet<string> Drawn = Set(
        "circle desc ellipse g line path polygon polyline rect symbol text title use"
    );
    private static readonly FrozenSet<string> DrawnWith = Set(
        "aria-hidden aria-label aria-labelledby class cx cy d fill focusable height href id opacity points preserveAspectRatio "
            + "r role rx ry stroke stroke-linecap stroke-linejoin stroke-width transform viewBox width x x1 x2 y y1 y2 "
            + $"color font-size font-weight text-anchor {FigureSvg.Part} {FigureSvg.Near} {PageData.Letters}"
    );

    private readonly List<string> open = [];
    private Place place = Place.Start;
    private bool isDrawing;

    private enum Place
    {
        Start,
        BeforeHead,
        Head,
        AfterHead,
        Body,
        AfterBody,
        AfterHtml,
    }

    /// <summary>Whether the page is at its end.</summary>
    public bool IsDone => place == Place.AfterHtml;

    /// <summary>Whether a script has put its dialog in.</summary>
    public bool HasGuide { get; set; }

    public int Depth => open.Count;

    /// <summary>Whether it stands in a drawing, where a title is an element as any other.</summary>
    public bool IsDrawing => isDrawing;

    public PageElement? Body { get; private set; }

    public static bool IsVoid(string name) => Void.Contains(name);

    /// <summary>Whether nothing up to its end tag is a tag.</summary>
    public static bool IsRaw(string name) => RawTexts.Contains(name);

    /// <summary>Whether an element may end with its start tag.</summary>
    public bool MayBeClosed(string name) => isDrawing || name == "svg" || IsVoid(name);

    /// <summary>Whether a text counts here; null to give up.</summary>
    public bool? Takes(string text) =>
        place switch
        {
            Place.Body => !TakesBlanksAlone(open[^1]) || IsBlank(text) ? true : null,
            _ when !IsBlank(text) => null,
            Place.Start or Place.BeforeHead => false,
            _ => true,
        };

    /// <summary>How many elements end where that one begins; null to give up.</summary>
    public int? Begin(string name) =>
        isDrawing ? (Drawn.Contains(name) && open[^1] is not ("title" or "desc") ? 0 : null)
        : open.Count > DepthLimit ? null
        : place switch
        {
            Place.Start => name == "html" ? 0 : null,
            Place.BeforeHead => name == "head" ? 0 : null,
            Place.Head => open[^1] == "head" && Head.Contains(name) ? 0 : null,
            Place.AfterHead => name == "body" ? 0 : null,
            Place.Body => Ended(name),
            _ => null,
        };

    /// <summary>Whether it may have these attributes: a browser writes some of a drawing in another way.</summary>
    public bool Allows(string name, PageAttribute[] attributes)
    {
        var drawn = isDrawing || name == "svg";
        foreach (var attribute in attributes)
            if (drawn ? !DrawnWith.Contains(attribute.Name) : !IsPlain(attribute.Name))
                return false;
        return true;
    }

    /// <summary>An element is begun that has an end tag of its own, or may leave it out.</summary>
    public void Begun(string name, PageElement element)
    {
        open.Add(name);
        isDrawing |= name == "svg";
        (place, Body) = name switch
        {
            "html" => (Place.BeforeHead, Body),
            "head" => (Place.Head, Body),
            "body" => (Place.Body, element),
            _ => (place, Body),
        };
    }

    /// <summary>How many elements an end tag ends; null to give up. The body and the root stay open, for the blanks behind
    /// them.</summary>
    public int? End(string name)
    {
        if (place is Place.AfterBody && name == "html")
            return Now(Place.AfterHtml);
        if (place is not (Place.Head or Place.Body) || name is "html")
            return null;
        if (name == "body")
            return open[^1] == "body" ? Now(Place.AfterBody) : null;
        var ended = isDrawing || place == Place.Head ? 0 : EndedBy(name);
        if (Left(ended) != name)
            return null;
        if (name == "head")
            place = Place.AfterHead;
        isDrawing &= name != "svg";
        return Close(ended + 1);
    }

    private int? Now(Place next)
    {
        place = next;
        return 0;
    }

    private int Close(int ended)
    {
        open.RemoveRange(open.Count - ended, ended);
        return ended;
    }

    /// <summary>The innermost element that is open when so many have ended.</summary>
    private string Left(int ended) => open[^(ended + 1)];

    private int? Ended(string name)
    {
        var (level, isBlock) = (LevelOf(name), Blocks.Contains(name));
        var ended = (isBlock || level > 0) && Left(0) == "p" ? 1 : 0;
        if (level > 0)
            while (LevelOf(Left(ended)) >= level)
                ended++;
        else if (
            name switch
            {
                "li" => Left(ended) is "li",
                "dt" or "dd" => Left(ended) is "dt" or "dd",
                _ => Left(ended) == name && name == "option",
            }
        )
            ended++;
        var around = Left(ended);
        if (!MayStandIn(name, around) || (IsHeading(name) && IsHeading(around)))
            return null;
        var isOnce = NotInItself.Contains(name);
        if (isBlock || isOnce)
            for (var i = 0; i < open.Count - ended; i++)
                if ((isBlock && open[i] == "p") || (isOnce && open[i] == name))
                    return null;
        return Close(ended);
    }

    private static bool MayStandIn(string name, string around) =>
        around switch
        {
            "ul" or "ol" => name == "li",
            "dl" => name is "dt" or "dd",
            "select" => name == "option",
            "table" => name is "thead" or "tbody" or "tfoot" or "caption",
            "thead" or "tbody" or "tfoot" => name == "tr",
            "tr" => name is "td" or "th",
            "option" => false,
            _ => name is not ("li" or "dt" or "dd") && (Blocks.Contains(name) || Runs.Contains(name)),
        };

    /// <summary>How many elements end before the one that an end tag names.</summary>
    private int EndedBy(string name)
    {
        var level = name == "table" ? 0 : LevelOf(name);
        var isPart = level > 0 || name == "table";
        var ended = (isPart || name == "caption" || Boxes.Contains(name)) && Left(0) == "p" ? 1 : 0;
        if (isPart)
            while (LevelOf(Left(ended)) > level)
                ended++;
        else if (name == "select" ? Left(ended) == "option" : Boxes.Contains(name) && Left(ended) != name && IsItem(Left(ended)))
            ended++;
        return ended;
    }

    /// <summary>Of the parts of a table: how deep they stand in it. 0 for what is none.</summary>
    private static int LevelOf(string name) =>
        name switch
        {
            "thead" or "tbody" or "tfoot" => 1,
            "tr" => 2,
            "td" or "th" => 3,
            _ => 0,
        };

    private static bool IsItem(string name) => name is "li" or "dt" or "dd";

    private static bool IsHeading(string name) => name is ['h', >= '1' and <= '6'];

    private static bool TakesBlanksAlone(string name) => name is "table" or "select" || LevelOf(name) is 1 or 2;

    private static bool IsBlank(string text)
    {
        foreach (var c in text)
            if (c is not (' ' or '\n' or '\t'))
                return false;
        return true;
    }

    private static bool IsPlain(string attribute) =>
        attribute is not ("xmlns" or "viewBox" or "preserveAspectRatio") && !attribute.Contains(':', StringComparison.Ordinal);

    private static FrozenSet<string> Set(string names) => names.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
