using AngleSharp.Dom;

namespace Gradus.Auditing;

/// <summary>The elements of one page, found by one walk for everything that is looked for in them: asking the document anew for
/// each took more time than parsing it.</summary>
internal sealed class PageMarkup
{
    private static readonly IElement[] None = [];

    private readonly List<IElement> all = [];
    private readonly List<int> parents = [];
    private readonly Dictionary<string, List<IElement>> named = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<IElement>> with = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<IElement>> classed = new(StringComparer.Ordinal);
    private readonly IElement? split;
    private readonly INode[] own = [];

    private PageMarkup(IDocument document, IElement? split, INode[] own)
    {
        (this.split, this.own) = (split, own);
        // A page may be nested as deep as it likes, so the walk keeps its own stack.
        var open = new Stack<(IElement Element, int Parent)>();
        open.Push((document.DocumentElement, -1));
        while (open.TryPop(out var next))
        {
            var (element, place) = (next.Element, all.Count);
            all.Add(element);
            parents.Add(next.Parent);
            Add(named, element.LocalName, element);
            for (var i = 0; i < element.Attributes.Length; i++)
                if (element.Attributes[i] is { } attribute)
                {
                    Add(with, attribute.Name, element);
                    if (attribute.Name == "class")
                        AddClasses(element, attribute.Value);
                }

            if (element == split)
                for (var i = own.Length - 1; i >= 0; i--)
                    Push(own[i], place);
            else
                for (var i = element.ChildNodes.Length - 1; i >= 0; i--)
                    Push(element.ChildNodes[i], place);
        }

        void Push(INode node, int parent)
        {
            if (node is IElement element)
                open.Push((element, parent));
        }
    }

    /// <summary>All of them in the order in which they are written.</summary>
    public IReadOnlyList<IElement> All => all;

    public static PageMarkup Of(IDocument document) => new(document, null, []);

    /// <summary>One page of several in a document.</summary>
    /// <param name="split">The element that holds what only some of the pages have.</param>
    /// <param name="own">What this page has of it, in order.</param>
    public static PageMarkup Of(IDocument document, IElement split, INode[] own) => new(document, split, own);

    /// <summary>Which of all the element of that number stands in; -1 for the first.</summary>
    public int ParentOf(int number) => parents[number];

    public IReadOnlyList<IElement> Named(string element) => named.TryGetValue(element, out var found) ? found : None;

    /// <summary>Those that have the attribute.</summary>
    public IReadOnlyList<IElement> With(string attribute) => with.TryGetValue(attribute, out var found) ? found : None;

    /// <summary>Those of the class, as a selector finds them.</summary>
    public IReadOnlyList<IElement> OfClass(string name) => classed.TryGetValue(name, out var found) ? found : None;

    /// <summary>The first with that id; null where there is none.</summary>
    public IElement? ById(string id) => With("id").FirstOrDefault(e => e.Value("id") == id);

    /// <summary>What stands directly in an element of this page.</summary>
    public IEnumerable<INode> In(IElement element) => element == split ? own : element.ChildNodes;

    private void AddClasses(IElement element, string classes)
    {
        foreach (var name in classes.Split(MarkupReading.Blanks, StringSplitOptions.RemoveEmptyEntries))
            if (OfClass(name) is not [.., var last] || last != element)
                Add(classed, name, element);
    }

    private static void Add(Dictionary<string, List<IElement>> lists, string key, IElement element)
    {
        if (!lists.TryGetValue(key, out var list))
            lists[key] = list = [];
        list.Add(element);
    }
}
