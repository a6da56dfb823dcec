using AngleSharp.Html.Parser;
using Gradus.Auditing;

namespace Gradus.Tests.Auditing.Pages.Trees;

/// <summary>Everything that the rules may ask of a tree, written out, so that two can be compared.</summary>
internal static class TreeTexts
{
    private static readonly HtmlParserOptions Options = new() { IsKeepingSourceReferences = true };

    /// <summary>A line for each node: its depth, its name, its attributes and where it stands, or its text.</summary>
    public static string Of(PageTree tree)
    {
        var lines = new List<string> { $"body {tree.Body?.Number}, flawless {tree.IsFlawless}" };
        for (var number = 0; number < tree.Count; number++)
            lines.Add(
                tree[number] is PageElement e
                    ? $"{number}-{e.End} in {e.ParentElement?.Number} "
                        + $"{Named(e.LocalName, e.Attributes.Select(a => (a.Name, a.Value)))} "
                        + $"{e.Ordinal} {e.Position} {e.IsPutIn} {e.HasShadow} {e.Aside.Count}"
                    : $"{number} in {tree[number].ParentElement?.Number} \"{((PageText)tree[number]).Data}\""
            );
        return string.Join('\n', lines);
    }

    /// <summary>The elements of a page as the parser of the standard has them, each with its place.</summary>
    public static IEnumerable<string> Standard(string html) =>
        new HtmlParser(Options)
            .ParseDocument(html)
            .All.Select(e =>
                $"{Named(e.LocalName, e.Attributes.Select(a => (a.Name, a.Value)))} "
                + $"{e.SourceReference?.Position.Line ?? 0}:{e.SourceReference?.Position.Column ?? 0} {e.TextContent.Length}"
            );

    /// <summary>The same of a tree of ours.</summary>
    public static IEnumerable<string> Ours(PageTree tree) =>
        tree.Elements.Select(e =>
            $"{Named(e.LocalName, e.Attributes.Select(a => (a.Name, a.Value)))} "
            + $"{e.Position?.Line ?? 0}:{e.Position?.Column ?? 0} {e.TextContent.Length}"
        );

    private static string Named(string name, IEnumerable<(string Name, string Value)> attributes) =>
        $"<{name} {string.Join(' ', attributes.Select(a => $"{a.Name}='{a.Value}'"))}>";
}
