using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>One page that holds all others → what the rules see of each of them, as though it stood alone. The styles and scripts
/// of all of them stay with the first alone, which has what is said of them for the others: they are most of the file.</summary>
internal static class PagesInOne
{
    /// <summary>None where the page has no parts that say which page they are. A file without a mistake is parsed once for all of
    /// its pages: then nothing of one reaches into another. Otherwise each is cut out and parsed by itself.</summary>
    public static PageSeen[] Read(Page whole)
    {
        var tree = PageTree.Of(whole.Html);
        PageElement[] sections =
        [
            .. tree
                .Root.Within()
                .Where(e => e is { LocalName: "section", ParentElement.LocalName: "main" } && e.Has(PageData.Page))
                .OrderBy(PositionOf),
        ];
        if (sections.Length == 0)
            return [];
        var cut = new PagesCut(whole.Html, [.. sections.Select(s => (s.Value(PageData.Page) ?? "", PositionOf(s)))]);
        return tree.IsFlawless && PagePart.Of(tree, sections, cut.Bared) is { } parts
            ? [.. parts.Zip(cut.Bare(), (part, page) => PageParser.Read(page, whole.Path, part.Markup, part.TextOf))]
            : ReadApart(cut, whole.Path);
    }

    /// <summary>The same, each parsed by itself.</summary>
    /// <param name="file">The path of the whole.</param>
    internal static PageSeen[] ReadApart(PagesCut cut, string file) =>
        [.. cut.Apart().Select(page => PageParser.Read(page, file))];

    private static int PositionOf(PageElement section) => Math.Max(section.Offset, 0);
}
