using AngleSharp.Dom;

namespace Gradus.Auditing;

/// <summary>What of a page somebody can press, and how large its style makes it.</summary>
internal static class Targets
{
    /// <summary>What most letters take in height where the browser chooses the height of a line, in parts of their
    /// size.</summary>
    private const double UsualLine = 1.2;

    private static readonly HashSet<string> Pressed = new(
        ["button", "link", "checkbox", "radio", "switch", "tab", "menuitem", "option", "slider"],
        StringComparer.Ordinal
    );

    private static readonly HashSet<string> Running = new(StringComparer.Ordinal)
    {
        "a",
        "abbr",
        "b",
        "bdi",
        "bdo",
        "button",
        "cite",
        "code",
        "data",
        "dfn",
        "em",
        "i",
        "input",
        "ins",
        "kbd",
        "label",
        "mark",
        "q",
        "samp",
        "small",
        "span",
        "strong",
        "sub",
        "sup",
        "time",
        "u",
        "var",
    };

    /// <summary>What it is called; null for what is no target. A label is the target of the field in it.</summary>
    public static string? What(IElement element)
    {
        if (element.HasAttribute("disabled"))
            return null;
        var role = element.GetAttribute("role") ?? "";
        return element.LocalName switch
        {
            "a" when element.HasAttribute("href") => $"the link '{Name(element)}'",
            "button" => $"the button '{Name(element)}'",
            "summary" => $"the heading '{Name(element)}'",
            "select" or "textarea" => $"the field '{element.GetAttribute("name") ?? element.LocalName}'",
            "input" when element.GetAttribute("type") == "hidden" || element.Closest("label") is not null => null,
            "input" => IsButton(element)
                ? $"the button '{element.GetAttribute("value")}'"
                : $"the field '{element.GetAttribute("name") ?? "input"}'",
            "label" when element.QuerySelector("input:not([type=hidden])") is not null => $"the field '{Name(element)}'",
            _ when Pressed.Contains(role) => $"the {role} '{Name(element)}'",
            _ => null,
        };
    }

    public static bool IsButton(IElement element) =>
        element.LocalName == "button"
        || element.GetAttribute("role") == "button"
        || (element.LocalName == "input" && element.GetAttribute("type") is "submit" or "button" or "reset");

    /// <summary>Whether words that lead nowhere stand in the same line (WCAG 2.2, 2.5.8, "Inline").</summary>
    public static bool IsInSentence(IElement element)
    {
        if (element.LocalName is not ("a" or "span"))
            return false;
        var block = element.ParentElement;
        while (block is not null && Running.Contains(block.LocalName))
            block = block.ParentElement;
        return block is not null && Words(block);
    }

    /// <summary>Whether a letter or a figure stands in it, outside of what can be pressed and of blocks of its own.</summary>
    private static bool Words(INode around) =>
        around.ChildNodes.Any(node =>
            (node is IText text && text.Data.Any(char.IsLetterOrDigit))
            || (node is IElement inner && Running.Contains(inner.LocalName) && What(inner) is null && Words(inner))
        );

    public static TargetSize Sized(IElement element, Screen screen, Style style) =>
        new(screen.Name, Height(element, style), Width(style));

    /// <summary>The least that its style gives it, with one line of text.</summary>
    private static double? Height(IElement element, Style style)
    {
        // A height is nothing to what stands in a line.
        var least = style.IsInLine || style.Said("min-height") is null or "auto" ? 0 : style.Pixels("min-height");
        if (IsOpen(element, style))
            return least > 0 ? least : null;
        var edges =
            (style.Pixels("padding-top") ?? 0)
            + (style.Pixels("padding-bottom") ?? 0)
            + (style.Pixels("border-top-width") ?? 0)
            + (style.Pixels("border-bottom-width") ?? 0);
        var around = style.Said("box-sizing") == "border-box" ? 0 : edges;
        var letters = UsualLine * style.Size;
        var line = style.Line ?? letters;
        var own =
            style.IsInLine ? Math.Max(line, letters + edges)
            : style.Said("height") is null or "auto" ? line + edges
            : style.Pixels("height") + around;
        return own is { } known && least is { } said ? Math.Max(known, said > 0 ? said + around : 0) : null;
    }

    /// <summary>Whether its height rests on something else than letters: a picture, a part of its own, or the browser alone (WCAG
    /// 2.2, 2.5.8, "User agent control").</summary>
    private static bool IsOpen(IElement element, Style style)
    {
        var kind = element.GetAttribute("type");
        if (
            element.LocalName == "textarea"
            || element.Descendants<IElement>().Any(inner => !Running.Contains(inner.LocalName) || inner.LocalName is "input")
        )
            return true;
        if (element.LocalName == "input" && kind is "image" or "range" or "color" or "file" or "checkbox" or "radio")
            return style.Said("height") is null;
        return element.LocalName is "input" or "select"
            && !IsButton(element)
            && style.Said("height") is null
            && style.Said("min-height") is null
            && Math.Abs(style.Size - 13.3333) < 0.001
            && style.Said("padding-top") is null or "1px";
    }

    /// <summary>As wide as its words are, unless the style says it.</summary>
    private static double? Width(Style style)
    {
        var most = style.Pixels("max-width") ?? double.MaxValue;
        var own = style.Pixels("width") is { } width ? Math.Max(width, style.Pixels("min-width") ?? 0) : (double?)null;
        return own is { } known ? Math.Min(known, most)
            : most < double.MaxValue ? most
            : null;
    }

    private static string Name(IElement element) => AccessibleName.Of(element);
}
