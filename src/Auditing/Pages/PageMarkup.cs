namespace Gradus.Auditing;

/// <summary>The elements of one page: all of a tree, or those of one of several pages in it.</summary>
internal sealed class PageMarkup
{
    /// <summary>What the names begin with of attributes that tell scripts something.</summary>
    private const string Data = "data-";

    private static readonly PageElement[] None = [];

    /// <summary>Which nodes of the tree are the page's: what all pages have before its own, its own, and what all have behind.
    /// </summary>
    private readonly Range[] parts;

    /// <summary>How many elements of the tree stand before each part and are not the page's.</summary>
    private readonly int[] left;

    private readonly List<PageElement> all;

    /// <summary>Those of them that have data for scripts: they are asked for most, and are few.</summary>
    private readonly List<PageElement> told = [];
    private PageElement[]? withId;

    private PageMarkup(PageTree tree, Range[] parts)
    {
        (this.parts, left, Body) = (parts, new int[parts.Length], tree.Body);
        all = new(parts.Sum(part => part.End.Value - part.Start.Value) * 2 / 3);
        for (var part = 0; part < parts.Length; part++)
        {
            var isFirst = true;
            for (var number = parts[part].Start.Value; number < parts[part].End.Value; number++)
                if (tree[number] is PageElement element)
                {
                    if (isFirst)
                        left[part] = element.Ordinal - all.Count;
                    isFirst = false;
                    all.Add(element);
                    if (HasData(element))
                        told.Add(element);
                }
        }
    }

    /// <summary>All of them in the order in which they are written.</summary>
    public IReadOnlyList<PageElement> All => all;

    /// <summary>Null where the page has a frameset in its place.</summary>
    public PageElement? Body { get; }

    public static PageMarkup Of(PageTree tree) => new(tree, [new(0, tree.Count)]);

    /// <summary>One page of several in a tree.</summary>
    /// <param name="parts">The nodes that are its own, by their numbers.</param>
    public static PageMarkup Of(PageTree tree, params Range[] parts) => new(tree, parts);

    /// <summary>Which of all that element is; -1 where it belongs to another page.</summary>
    public int NumberOf(PageElement element)
    {
        for (var part = 0; part < parts.Length; part++)
            if (element.Number < parts[part].End.Value)
                return element.Number >= parts[part].Start.Value ? element.Ordinal - left[part] : -1;
        return -1;
    }

    /// <summary>Which of all the element of that number stands in; -1 for the first.</summary>
    public int ParentOf(int number) => all[number].ParentElement is { } parent ? NumberOf(parent) : -1;

    public IReadOnlyList<PageElement> Named(string element)
    {
        List<PageElement>? found = null;
        foreach (var one in all)
            if (one.LocalName == element)
                (found ??= []).Add(one);
        return found ?? (IReadOnlyList<PageElement>)None;
    }

    /// <summary>Those that have the attribute.</summary>
    public IReadOnlyList<PageElement> With(string attribute)
    {
        List<PageElement>? found = null;
        foreach (var one in attribute.StartsWith(Data, StringComparison.Ordinal) ? told : all)
            if (one.Attributes.Length > 0 && one.Has(attribute))
                (found ??= []).Add(one);
        return found ?? (IReadOnlyList<PageElement>)None;
    }

    private static bool HasData(PageElement element)
    {
        foreach (var attribute in element.Attributes)
            if (attribute.Name.StartsWith(Data, StringComparison.Ordinal))
                return true;
        return false;
    }

    /// <summary>Those of the class, as a selector finds them.</summary>
    public IEnumerable<PageElement> OfClass(string name) => all.Where(e => e.Attributes.Length > 0 && e.Is(name));

    /// <summary>The first with that id; null where there is none.</summary>
    public PageElement? ById(string id) => (withId ??= [.. With("id")]).FirstOrDefault(e => e.Value("id") == id);

    /// <summary>Whether what stands in an element of this page is the page's too.</summary>
    public bool Has(PageNode node)
    {
        if (parts.Length == 1)
            return true;
        foreach (var part in parts)
            if (node.Number < part.End.Value)
                return node.Number >= part.Start.Value;
        return false;
    }
}
