using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a screen reader calls an element.</summary>
internal static class AccessibleName
{
    /// <summary>Deeper than any name of ours by far; what stands deeper counts as not there.</summary>
    private const int DepthLimit = 50;

    /// <summary>With single spaces; empty where it has no name.</summary>
    public static string Of(IElement element) => Of(element, 0);

    /// <summary>Whether an element, with all that stands in it, is kept from a screen reader.</summary>
    public static bool IsKept(IElement element) =>
        element.HasAttribute("hidden") || element.HasAttribute("inert") || element.GetAttribute("aria-hidden") == "true";

    private static string Of(IElement element, int depth)
    {
        var said = ByOthers(element) ?? element.GetAttribute("aria-label") ?? (depth > DepthLimit ? "" : Own(element, depth));
        var name = Spacing.Collapse(said);
        return name.Length > 0 ? name : Spacing.Collapse(element.GetAttribute("title") ?? "");
    }

    /// <summary>The words of the elements that <c>aria-labelledby</c> names; null where there is no such attribute.</summary>
    public static string? ByOthers(IElement element) =>
        element.GetAttribute("aria-labelledby") is { } ids
            ? string.Join(
                ' ',
                ids.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
                    .Select(id => element.Owner?.GetElementById(id)?.TextContent ?? "")
            )
            : null;

    private static string Own(IElement element, int depth) =>
        element.LocalName switch
        {
            "img" or "area" => element.GetAttribute("alt") ?? "",
            "input" when element.GetAttribute("type") == "image" => element.GetAttribute("alt") ?? "",
            "input" => element.GetAttribute("value") ?? "",
            _ => string.Concat(element.ChildNodes.Select(n => Said(n, depth))),
        };

    private static string Said(INode node, int depth) =>
        node switch
        {
            IText text => text.Data,
            IElement { LocalName: "script" or "style" } => "",
            IElement inner when IsKept(inner) => "",
            IElement inner => $" {Of(inner, depth + 1)} ",
            _ => "",
        };
}
