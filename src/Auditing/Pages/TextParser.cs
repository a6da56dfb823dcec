using System.Text;
using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The text of a page in reading order, and what is kept from whom.</summary>
/// <param name="at">Where an element is written.</param>
/// <param name="byStyle">The elements that a style rule hides.</param>
internal sealed class TextParser(Func<IElement?, Location> at, IReadOnlyDictionary<IElement, string> byStyle)
{
    /// <summary>Deeper than any page of ours by far; deeper text counts as not there.</summary>
    private const int DepthLimit = 200;

    private static readonly HashSet<string> Running = new(StringComparer.Ordinal)
    {
        "a", "abbr", "b", "bdi", "bdo", "br", "cite", "code", "data", "dfn", "em", "i", "kbd", "label", "mark", "q", "s", "samp", "small", "span",
        "strong", "sub", "sup", "time", "u", "var", "wbr",
    };

    private static readonly HashSet<string> NoText = new(StringComparer.Ordinal) { "script", "style", "template", "head", "iframe", "object", "canvas", "video", "audio" };

    private readonly List<TextLine> lines = [];
    private readonly StringBuilder line = new();
    private IElement? begun;
    private string? hiddenBy;

    public Series<TextLine> Read(IElement? body)
    {
        if (body is not null) Walk(body, null, 0);
        Flush();
        return lines.ToSeries();
    }

    private void Walk(IElement element, string? hidden, int depth)
    {
        if (NoText.Contains(element.LocalName) || depth > DepthLimit) return;
        hidden ??= HiddenHere(element);
        var block = !Running.Contains(element.LocalName);
        if (block || hidden != hiddenBy) Flush();
        hiddenBy = hidden;
        foreach (var child in element.ChildNodes)
        {
            if (child is IText text) Append(text.Data, element);
            else if (child is IElement { LocalName: "br" }) Append(" ", element);
            else if (child is IElement inner)
            {
                Walk(inner, hidden ?? HiddenInside(element, inner), depth + 1);
                if (hiddenBy != hidden) Flush();
                hiddenBy = hidden;
            }
        }

        if (block) Flush();
    }

    private void Append(string text, IElement from)
    {
        begun ??= string.IsNullOrWhiteSpace(text) ? null : from;
        line.Append(text);
    }

    private void Flush()
    {
        var text = Spacing.Collapse(line.ToString());
        if (text.Length > 0) lines.Add(new(text, at(begun), hiddenBy));
        line.Clear();
        begun = null;
    }

    private string? HiddenHere(IElement element)
    {
        if (element.HasAttribute("hidden")) return "the attribute 'hidden'";
        if (element.HasAttribute("inert")) return "the attribute 'inert'";
        if (string.Equals(element.GetAttribute("aria-hidden"), "true", StringComparison.OrdinalIgnoreCase)) return "'aria-hidden'";
        if (element.LocalName == "noscript") return "the element 'noscript', which is not shown where scripts run";
        if (element.LocalName == "dialog" && !element.HasAttribute("open")) return "a dialog that is closed";
        if (element.HasAttribute("popover")) return "the attribute 'popover'";
        if (element.GetAttribute("style") is { } style && HidingStyle.InAttribute(style) is { } declaration) return $"the style '{declaration}'";
        return byStyle.GetValueOrDefault(element);
    }

    private static string? HiddenInside(IElement element, IElement child) =>
        element.LocalName == "details" && !element.HasAttribute("open") && child.LocalName != "summary" ? "details that are closed" : null;
}
