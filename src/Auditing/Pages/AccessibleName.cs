using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a screen reader calls an element.</summary>
/// <param name="page">Where the words are looked for that a name is taken from.</param>
internal sealed class AccessibleName(PageMarkup page)
{
    /// <summary>Deeper than any name of ours by far; what stands deeper counts as not there.</summary>
    private const int DepthLimit = 50;

    /// <summary>With single spaces; empty where it has no name.</summary>
    public string Of(IElement element) => Of(element, 0);

    /// <summary>Whether an element, with all that stands in it, is kept from a screen reader.</summary>
    public static bool IsKept(IElement element) =>
        element.Attributes.Length > 0
        && (element.Has("hidden") || element.Has("inert") || element.Value("aria-hidden") == "true");

    private string Of(IElement element, int depth)
    {
        var said = ByOthers(element) ?? element.Value("aria-label") ?? (depth > DepthLimit ? "" : Own(element, depth));
        var name = Spacing.Collapse(said);
        return name.Length > 0 ? name : Spacing.Collapse(element.Value("title") ?? "");
    }

    /// <summary>The words of the elements that <c>aria-labelledby</c> names; null where there is no such attribute.</summary>
    public string? ByOthers(IElement element) =>
        element.Value("aria-labelledby") is { } ids
            ? string.Join(
                ' ',
                ids.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(id => page.ById(id)?.TextContent ?? "")
            )
            : null;

    private string Own(IElement element, int depth) =>
        element.LocalName switch
        {
            "img" or "area" => element.GetAttribute("alt") ?? "",
            "input" when element.GetAttribute("type") == "image" => element.GetAttribute("alt") ?? "",
            "input" => element.GetAttribute("value") ?? "",
            _ => string.Concat(element.ChildNodes.Select(n => Said(n, depth))),
        };

    private string Said(INode node, int depth) =>
        node switch
        {
            IText text => text.Data,
            IElement { LocalName: "script" or "style" } => "",
            IElement inner when IsKept(inner) => "",
            IElement inner => $" {Of(inner, depth + 1)} ",
            _ => "",
        };
}
