using System.Text;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a screen reader calls an element.</summary>
/// <param name="page">Where the words are looked for that a name is taken from.</param>
internal sealed class AccessibleName(PageMarkup page)
{
    /// <summary>Deeper than any name of ours by far; what stands deeper counts as not there.</summary>
    private const int DepthLimit = 50;

    /// <summary>With single spaces; empty where it has no name.</summary>
    public string Of(PageElement element) => Of(element, 0);

    /// <summary>Whether an element, with all that stands in it, is kept from a screen reader.</summary>
    public static bool IsKept(PageElement element) =>
        element.Has("hidden") || element.Has("inert") || element.Value("aria-hidden") == "true";

    private string Of(PageElement element, int depth)
    {
        var said = ByOthers(element) ?? element.Value("aria-label") ?? (depth > DepthLimit ? "" : Own(element, depth));
        var name = Spacing.Collapse(said);
        return name.Length > 0 ? name : Spacing.Collapse(element.Value("title") ?? "");
    }

    /// <summary>The words of the elements that <c>aria-labelledby</c> names; null where there is no such attribute.</summary>
    public string? ByOthers(PageElement element) =>
        element.Value("aria-labelledby") is { } ids
            ? string.Join(
                ' ',
                ids.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(id => page.ById(id)?.TextContent ?? "")
            )
            : null;

    private string Own(PageElement element, int depth) =>
        element.LocalName switch
        {
            "img" or "area" => element.Value("alt") ?? "",
            "input" when element.Value("type") == "image" => element.Value("alt") ?? "",
            "input" => element.Value("value") ?? "",
            _ => Inside(element, depth),
        };

    private string Inside(PageElement element, int depth)
    {
        var said = new StringBuilder();
        for (var child = element.FirstChild; child is not null; child = child.NextSibling)
            said.Append(Said(child, depth));
        return said.ToString();
    }

    private string Said(PageNode node, int depth) =>
        node switch
        {
            PageText text => text.Data,
            PageElement { LocalName: "script" or "style" } => "",
            PageElement inner when IsKept(inner) => "",
            PageElement inner => $" {Of(inner, depth + 1)} ",
            _ => "",
        };
}
