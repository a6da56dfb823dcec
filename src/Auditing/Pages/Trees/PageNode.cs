using System.Text;

namespace Gradus.Auditing;

/// <summary>An element of a page, or a text in it. All of a page stand one behind the other in the order in which they are
/// written, so what stands in an element is what comes next, up to its end: nothing has to be walked.</summary>
internal abstract class PageNode(PageTree tree, PageElement? parent, int number)
{
    protected PageTree Tree { get; } = tree;

    /// <summary>Null for the root.</summary>
    public PageElement? ParentElement { get; } = parent;

    /// <summary>Its place among all nodes of the page, from 0 on.</summary>
    public int Number { get; } = number;

    /// <summary>The number behind the last that stands in it.</summary>
    public int End { get; set; } = number + 1;

    /// <summary>What comes next in the same element; null where nothing does.</summary>
    public PageNode? NextSibling =>
        End < Tree.Count && Tree[End] is var next && next.ParentElement == ParentElement ? next : null;
}

/// <param name="data">With its references read.</param>
internal sealed class PageText(PageTree tree, PageElement parent, int number, string data) : PageNode(tree, parent, number)
{
    public string Data { get; set; } = data;
}

/// <param name="Name">In small letters; in a drawing as that has it.</param>
/// <param name="Value">Empty where it has none.</param>
internal readonly record struct PageAttribute(string Name, string Value);

/// <param name="ordinal">Its place among all elements of the page, from 0 on.</param>
/// <param name="offset">Where it begins in the text of the page; -1 where it does not stand there.</param>
internal sealed class PageElement(
    PageTree tree,
    PageElement? parent,
    int number,
    int ordinal,
    string name,
    PageAttribute[] attributes,
    int offset
) : PageNode(tree, parent, number)
{
    public string LocalName { get; } = name;

    /// <summary>In the order in which they are written.</summary>
    public PageAttribute[] Attributes { get; } = attributes;

    public int Ordinal { get; } = ordinal;

    public int Offset { get; } = offset;

    /// <summary>Whether a script puts it into the page.</summary>
    public bool IsPutIn { get; init; }

    /// <summary>The elements that stand in a tree of their own below it: what waits in a template, or takes its place.</summary>
    public IReadOnlyList<PageElement> Aside { get; init; } = [];

    /// <summary>Whether a browser shows another tree in place of what stands in it.</summary>
    public bool HasShadow { get; init; }

    public string? Id => Value("id");

    /// <summary>Where it begins, from 1 on; null where it does not stand in the page.</summary>
    public (int Line, int Column)? Position => Offset < 0 ? null : Tree.PositionOf(Offset);

    public PageNode? FirstChild => End > Number + 1 ? Tree[Number + 1] : null;

    public IEnumerable<PageElement> Children
    {
        get
        {
            for (var child = FirstChild; child is not null; child = child.NextSibling)
                if (child is PageElement element)
                    yield return element;
        }
    }

    public PageElement? FirstElementChild => Children.FirstOrDefault();

    /// <summary>All text in it. It is not copied where it is one, which may be long.</summary>
    public string TextContent
    {
        get
        {
            if (End == Number + 1)
                return "";
            if (End == Number + 2)
                return Tree[Number + 1] is PageText only ? only.Data : "";
            var all = new StringBuilder();
            for (var at = Number + 1; at < End; at++)
                if (Tree[at] is PageText text)
                    all.Append(text.Data);
            return all.ToString();
        }
    }

    public bool Has(string attribute) => Value(attribute) is not null;

    /// <summary>Null where it has no such attribute.</summary>
    public string? Value(string attribute)
    {
        foreach (var own in Attributes)
            if (own.Name == attribute)
                return own.Value;
        return null;
    }

    /// <summary>Whether it has that class.</summary>
    public bool Is(string name)
    {
        if (Value("class") is not { } classes)
            return false;
        foreach (var range in classes.AsSpan().SplitAny(PageTree.Blanks))
            if (classes.AsSpan(range).SequenceEqual(name))
                return true;
        return false;
    }

    /// <summary>The elements that stand in it, at any depth, in the order in which they are written.</summary>
    public IEnumerable<PageElement> Within()
    {
        for (var at = Number + 1; at < End; at++)
            if (Tree[at] is PageElement inner)
                yield return inner;
    }

    /// <summary>Whether that node is this one or stands in it.</summary>
    public bool Contains(PageNode node) => node.Number >= Number && node.Number < End;

    /// <summary>The nearest of that name: this one, or one that it stands in; null where there is none.</summary>
    public PageElement? Closest(string name)
    {
        for (var around = this; around is not null; around = around.ParentElement)
            if (around.LocalName == name)
                return around;
        return null;
    }
}
