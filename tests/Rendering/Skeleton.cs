using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Gradus.Tests.Rendering;

/// <summary>What a browser makes of a page, its texts left out: every element with the names of its attributes, one a line,
/// indented as they stand in each other. Of an address the kind remains.</summary>
internal static partial class Skeleton
{
    [GeneratedRegex(@"^\s*[A-Za-z][A-Za-z0-9+.-]*:", RegexOptions.CultureInvariant)]
    private static partial Regex Scheme();

    public static string Of(string html)
    {
        var lines = new List<string>();
        foreach (var node in new HtmlParser().ParseDocument(html).ChildNodes)
            Write(node, 0, lines);
        return string.Join('\n', lines);
    }

    /// <summary>Everything that can be read on a page, in its order, a line for each piece: texts, and what stands in
    /// attributes.</summary>
    public static string TextOf(string html)
    {
        var document = new HtmlParser().ParseDocument(html);
        var attributes = document.All.SelectMany(e => e.Attributes).Select(a => a.Value);
        return Gradus.Domain.Spacing.Collapse(
            document.Title + "\n" + document.Body?.TextContent + "\n" + string.Join('\n', attributes)
        );
    }

    private static void Write(INode node, int depth, List<string> lines)
    {
        if (node is IComment)
            lines.Add(new string(' ', depth) + "a comment");
        if (node is not IElement element)
            return;
        var attributes = element
            .Attributes.Select(a => a.Name is "href" or "src" ? $"{a.Name}={KindOf(a.Value)}" : a.Name)
            .Order(StringComparer.Ordinal);
        lines.Add($"{new string(' ', depth)}{element.LocalName} {string.Join(' ', attributes)}");
        foreach (var child in element.ChildNodes)
            Write(child, depth + 1, lines);
    }

    private static string KindOf(string address) =>
        address.StartsWith('#') ? "#"
        : Scheme().Match(address) is { Success: true } scheme ? scheme.Value
        : "inside";
}
