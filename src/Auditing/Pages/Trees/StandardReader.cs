using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Reads any page as the HTML Standard has browsers do.</summary>
internal static class StandardReader
{
    private static readonly HtmlParserOptions Options = new() { IsKeepingSourceReferences = true };

    /// <param name="guide">See <see cref="PageTree.Of"/>.</param>
    public static PageTree Read(string html, string? guide = null)
    {
        var isFlawless = true;
        var parser = new HtmlParser(Options);
        parser.Error += (_, _) => isFlawless = false;
        var document = parser.ParseDocument(html.AsMemory());
        var putIn = guide is null ? [] : Put(guide, document);
        var (tree, body) = Of(document.DocumentElement, html, putIn, document.Body);
        return tree.Done(body, isFlawless);
    }

    /// <summary>Puts a script's dialog where the page has a place for it.</summary>
    private static HashSet<INode> Put(string guide, IDocument document)
    {
        if (document.All.FirstOrDefault(e => e.LocalName == "dialog" && e.HasAttribute(PageData.Guide)) is not { } place)
            return [];
        var before = place.Parent?.ChildNodes.ToHashSet() ?? [];
        place.Insert(AdjacentPosition.BeforeBegin, guide);
        return place.Parent?.ChildNodes.Where(n => !before.Contains(n)).ToHashSet() ?? [];
    }

    /// <summary>A page may be nested as deep as it likes, so the walk keeps its own stack.</summary>
    /// <param name="isAside">Whether the trees in it are no trees of their own: what is aside already is only listed.</param>
    private static (PageTree.Builder Tree, PageElement? Body) Of(
        IElement root,
        string html,
        HashSet<INode> putIn,
        INode? body,
        bool isAside = false
    )
    {
        var (tree, taken) = (new PageTree.Builder(html), default(PageElement));
        var open = new Stack<(INode? Node, bool IsPutIn)>([(root, false)]);
        while (open.TryPop(out var next))
            if (next.Node is IText text)
                tree.Text(text.Data);
            else if (next.Node is IElement element)
            {
                var begun = tree.Begin(
                    element.LocalName,
                    [.. element.Attributes.Select(a => new PageAttribute(a.Name, a.Value))],
                    (element.SourceReference?.Position.Position ?? 0) - 1,
                    next.IsPutIn,
                    isAside ? [] : AsideOf(element, html),
                    element.ShadowRoot is not null
                );
                taken = element == body ? begun : taken;
                open.Push((null, false));
                foreach (var child in (isAside ? OwnTrees(element) : []).Concat(element.ChildNodes).Reverse())
                    open.Push((child, next.IsPutIn || putIn.Contains(child)));
            }
            else if (next.Node is null)
                tree.End();
        return (tree, taken);
    }

    private static PageElement[] AsideOf(IElement element, string html) =>
        [
            .. OwnTrees(element)
                .OfType<IElement>()
                .Select(child => Of(child, html, [], null, isAside: true).Tree.Done(null, false).Root)
                .SelectMany(child => child.Within().Prepend(child)),
        ];

    /// <summary>What stands in a tree of its own below an element: it waits in a template, or a browser shows it in place of what
    /// stands in the element.</summary>
    private static IEnumerable<INode> OwnTrees(IElement element) =>
        new INode?[] { (element as IHtmlTemplateElement)?.Content, element.ShadowRoot }
            .OfType<INode>()
            .SelectMany(tree => tree.ChildNodes);
}
