using AngleSharp.Dom;

namespace Gradus.Auditing;

/// <summary>What keeps an element of a page from somebody: from a reader of the screen, of the print, or from a screen
/// reader.</summary>
/// <param name="byStyle">The elements that a style may hide, with the words for it.</param>
/// <param name="opensDetails">Whether details count as open: on a screen somebody may open them.</param>
internal sealed class HiddenElements(IReadOnlyDictionary<IElement, string> byStyle, bool opensDetails = false)
{
    private readonly Dictionary<IElement, string?> judged = [];

    /// <summary>What hides that element itself, in words; null where nothing does. Those it stands in are not asked.</summary>
    public string? Of(IElement element)
    {
        if (!judged.TryGetValue(element, out var hidden))
            judged[element] = hidden = Judged(element);
        return hidden;
    }

    private string? Judged(IElement element)
    {
        // Most elements have no attribute.
        var bare = element.Attributes.Length == 0;
        if (!bare && ByAttribute(element) is { } attribute)
            return attribute;
        if (ByKind(element) is { } kind)
            return kind;
        if (!opensDetails && element.ParentElement is { } parent && IsClosed(parent) && element != Summary(parent))
            return "details that are closed";
        if (!bare && element.Has("style"))
            return "the attribute 'style', which nobody judges";
        return byStyle.GetValueOrDefault(element);
    }

    /// <summary>What hides that element or one that it stands in.</summary>
    public string? Around(IElement element)
    {
        for (var around = element; around is not null; around = around.ParentElement)
            if (Of(around) is { } hidden)
                return hidden;
        return null;
    }

    /// <summary>What hides the text that stands directly in that element, beside what hides the element.</summary>
    public static string? OfText(IElement element) => IsClosed(element) ? "details that are closed" : null;

    private static string? ByAttribute(IElement element) =>
        element.Has("hidden") ? "the attribute 'hidden'"
        : element.Has("inert") ? "the attribute 'inert'"
        : element.Has("popover") ? "the attribute 'popover'"
        : string.Equals(element.Value("aria-hidden"), "true", StringComparison.OrdinalIgnoreCase) ? "'aria-hidden'"
        : null;

    private static string? ByKind(IElement element) =>
        element.LocalName switch
        {
            "noscript" => "the element 'noscript', which is not shown where scripts run",
            "dialog" when !element.Has("open") => "a dialog that is closed",
            "del" or "s" or "strike" => $"the element '{element.LocalName}', which strikes it out",
            _ => null,
        };

    private static bool IsClosed(IElement element) => element.LocalName == "details" && !element.Has("open");

    private static IElement? Summary(IElement details) => details.Children.FirstOrDefault(c => c.LocalName == "summary");
}
