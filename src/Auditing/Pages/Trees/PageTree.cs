namespace Gradus.Auditing;

/// <summary>What stands in a page, as a browser takes it in.</summary>
internal sealed class PageTree
{
    /// <summary>What parts the classes of an element.</summary>
    public static readonly char[] Blanks = [' ', '\t', '\n', '\f', '\r'];

    private readonly string html;
    private readonly List<PageNode> nodes;
    private List<int>? lines;

    /// <summary>The line that was asked for last: places are mostly asked for one after another.</summary>
    private int line;

    private PageTree(string html) => (this.html, nodes) = (html, new(html.AsSpan().Count('<') * 5 / 4 + 8));

    public PageNode this[int number] => nodes[number];

    /// <summary>How many nodes it has.</summary>
    public int Count => nodes.Count;

    public PageElement Root => (PageElement)nodes[0];

    public IEnumerable<PageElement> Elements => nodes.OfType<PageElement>();

    /// <summary>Null where the page has a frameset in its place.</summary>
    public PageElement? Body { get; private set; }

    /// <summary>Whether it was read without a mistake in it.</summary>
    public bool IsFlawless { get; private set; }

    /// <summary>Reads a page. The strict reader knows little and is quick; for whatever it does not know there is the one that
    /// reads all that a browser does.</summary>
    /// <param name="guide">What a script puts in where the page has a place for it; null for nothing.</param>
    public static PageTree Of(string html, string? guide = null) =>
        StrictReader.Read(html, guide) ?? StandardReader.Read(html, guide);

    /// <summary>Line and column of a place in the text, from 1 on.</summary>
    public (int Line, int Column) PositionOf(int offset)
    {
        var all = lines ??= LinesOf(html);
        if (offset < all[line])
            line = 0;
        while (line + 1 < all.Count && all[line + 1] <= offset)
            line++;
        return (line + 1, offset - all[line] + 1);
    }

    /// <summary>Where each line begins.</summary>
    private static List<int> LinesOf(string html)
    {
        var starts = new List<int>(html.AsSpan().Count('\n') + 1) { 0 };
        for (var at = html.AsSpan().IndexOfAny('\n', '\r'); at >= 0; )
        {
            var next = html[at] == '\r' && at + 1 < html.Length && html[at + 1] == '\n' ? at + 2 : at + 1;
            starts.Add(next);
            at = html.AsSpan(next).IndexOfAny('\n', '\r') is >= 0 and var found ? next + found : -1;
        }

        return starts;
    }

    /// <summary>Makes the tree, node by node.</summary>
    internal sealed class Builder(string html)
    {
        private readonly PageTree tree = new(html);
        private int elements;

        /// <summary>The element that is begun and not ended; null where none is.</summary>
        public PageElement? Open { get; private set; }

        public PageElement Begin(
            string name,
            PageAttribute[] attributes,
            int offset,
            bool isPutIn = false,
            IReadOnlyList<PageElement>? aside = null,
            bool hasShadow = false
        )
        {
            Open = new(tree, Open, tree.nodes.Count, elements++, name, attributes, isPutIn ? -1 : offset)
            {
                IsPutIn = isPutIn,
                Aside = aside ?? [],
                HasShadow = hasShadow,
            };
            tree.nodes.Add(Open);
            return Open;
        }

        /// <summary>Two texts with nothing between are one.</summary>
        public void Text(string data)
        {
            if (Open is null || data.Length == 0)
                return;
            if (tree.nodes[^1] is PageText last && last.ParentElement == Open)
                last.Data += data;
            else
                tree.nodes.Add(new PageText(tree, Open, tree.nodes.Count, data));
        }

        public void End()
        {
            if (Open is null)
                return;
            Open.End = tree.nodes.Count;
            Open = Open.ParentElement;
        }

        public PageTree Done(PageElement? body, bool isFlawless)
        {
            while (Open is not null)
                End();
            (tree.Body, tree.IsFlawless) = (body, isFlawless);
            return tree;
        }
    }
}
