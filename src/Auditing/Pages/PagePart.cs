using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>One of the pages that a document holds: what all of them have, and its own section.</summary>
internal sealed class PagePart
{
    private readonly HashSet<PageElement> others;

    private PagePart(PageMarkup markup, HashSet<PageElement> others) => (Markup, this.others) = (markup, others);

    public PageMarkup Markup { get; }

    /// <summary>What stands in a style or a script; nothing in what is said of the first page for all of them.</summary>
    public string TextOf(PageElement element) => others.Contains(element) ? "" : element.TextContent;

    /// <summary>Every page of a tree that was read without a mistake; null where somebody put more around the pages than
    /// Gradus does, so that each has to be looked at by itself.</summary>
    /// <param name="sections">One of each page, in order.</param>
    /// <param name="bared">How many styles and scripts all of them have by the count of their letters.</param>
    public static Series<PagePart>? Of(PageTree tree, PageElement[] sections, int bared)
    {
        if (sections[0].ParentElement is not { } main || sections.Any(s => s.ParentElement != main) || !IsPlain(main))
            return null;
        var (before, behind) = (..sections[0].Number, sections[^1].End..tree.Count);
        var common = PageMarkup.Of(tree, before, behind).All.Where(IsStyleOrScript).ToHashSet();
        return common.Count == bared ? sections.Select((_, number) => Part(number)).ToSeries() : null;

        PagePart Part(int number)
        {
            var until = number + 1 < sections.Length ? sections[number + 1].Number : sections[number].End;
            return new(PageMarkup.Of(tree, before, sections[number].Number..until, behind), number == 0 ? [] : common);
        }
    }

    /// <summary>Whether neither the element nor one around it says anything of the words in it.</summary>
    private static bool IsPlain(PageElement element)
    {
        for (var around = element; around is not null; around = around.ParentElement)
            if (
                around.LocalName is not ("main" or "body" or "html")
                || !around.Attributes.All(a => a.Name is "id" or "class" or "lang" or "dir" || PageData.OfCourse.Contains(a.Name))
            )
                return false;
        return true;
    }

    private static bool IsStyleOrScript(PageElement element) => element.LocalName is "style" or "script";
}
