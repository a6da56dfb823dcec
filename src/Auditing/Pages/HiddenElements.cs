using System.Collections.Frozen;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>What keeps an element of a page from somebody: from a reader of the screen, of the print, or from a screen
/// reader.</summary>
internal sealed class HiddenElements
{
    /// <summary>What scripts look for: they may hide, move or fill whatever has one, so what everybody must get has
    /// none.</summary>
    private static readonly FrozenSet<string> Scripts = PageData
        .OfScripts.Except(PageData.LeavingAsItIs, StringComparer.Ordinal)
        .ToFrozenSet(StringComparer.Ordinal);

    private const string ByScript = ", by which a script may hide or fill it,";

    private readonly PageMarkup page;
    private readonly bool opensDetails;
    private readonly bool isSheet;

    /// <summary>For each element of the page what hides it, and what hides it or the nearest one around it.</summary>
    private readonly string?[] own;
    private readonly string?[] around;

    /// <param name="byStyle">For each element, the words for how a style may hide it.</param>
    /// <param name="opensDetails">Whether details count as open: on a screen somebody may open them.</param>
    /// <param name="isSheet">Whether it is an intake sheet, where the scripts of pages do not run.</param>
    public HiddenElements(PageMarkup page, string?[] byStyle, bool opensDetails = false, bool isSheet = false)
    {
        (this.page, this.opensDetails, this.isSheet) = (page, opensDetails, isSheet);
        (own, around) = (byStyle, new string?[byStyle.Length]);
        for (var number = 0; number < own.Length; number++)
        {
            own[number] = Judged(page.All[number]) ?? own[number];
            around[number] = own[number] ?? (page.ParentOf(number) is >= 0 and var parent ? around[parent] : null);
        }
    }

    /// <summary>What hides that element itself, in words; null where nothing does. Those it stands in are not asked.</summary>
    public string? Of(PageElement element) => page.NumberOf(element) is >= 0 and var number ? own[number] : Judged(element);

    private string? Judged(PageElement element)
    {
        if (ByAttribute(element) is { } attribute)
            return attribute;
        if (ByKind(element) is { } kind)
            return kind;
        if (!opensDetails && element.ParentElement is { } parent && IsClosed(parent) && element != Summary(parent))
            return "details that are closed";
        if (element.Has("style"))
            return "the attribute 'style', which nobody judges";
        return null;
    }

    /// <summary>What hides that element or one that it stands in.</summary>
    public string? Around(PageElement element) =>
        page.NumberOf(element) is >= 0 and var number ? around[number]
        : Judged(element) is { } hidden ? hidden
        : element.ParentElement is { } parent ? Around(parent)
        : null;

    /// <summary>What hides the text that stands directly in that element, beside what hides the element.</summary>
    public static string? OfText(PageElement element) => IsClosed(element) ? "details that are closed" : null;

    private string? ByAttribute(PageElement element)
    {
        if (!MayHide(element))
            return null;
        return element.Has("hidden") ? "the attribute 'hidden'"
            : element.Has("inert") ? "the attribute 'inert'"
            : element.Has("popover") ? "the attribute 'popover'"
            : string.Equals(element.Value("aria-hidden"), "true", StringComparison.OrdinalIgnoreCase) ? "'aria-hidden'"
            : !isSheet && ByScripts(element) is { } name ? OfScripts(name)
            : null;
    }

    private static string? ByScripts(PageElement element)
    {
        foreach (var attribute in element.Attributes)
            if (Scripts.Contains(attribute.Name) && !(attribute.Name == PageData.WhilePlanned && IsInCard(element)))
                return attribute.Name;
        return null;
    }

    /// <summary>A version of a session stands in the card of that session, and is put away in the weeks that have none.</summary>
    private static bool IsInCard(PageElement element) =>
        element.ParentElement is { } parent && (parent.Has(PageData.Due) || IsInCard(parent));

    /// <summary>Most have a class or an address alone, and each is looked at once.</summary>
    private static bool MayHide(PageElement element)
    {
        foreach (var attribute in element.Attributes)
            if (
                attribute.Name is "hidden" or "inert" or "popover" or "aria-hidden"
                || (attribute.Name.StartsWith("data-", StringComparison.Ordinal) && Scripts.Contains(attribute.Name))
            )
                return true;
        return false;
    }

    private static string? ByKind(PageElement element) =>
        element.LocalName switch
        {
            "noscript" => "the element 'noscript', which is not shown where scripts run",
            "dialog" when !element.Has("open") => "a dialog that is closed",
            "del" or "s" or "strike" => $"the element '{element.LocalName}', which strikes it out",
            _ => null,
        };

    /// <summary>Whether what hides it is told wherever it stands, as nothing of a page may have it: by the lists of what is
    /// known.</summary>
    public static bool IsToldElsewhere(string hiddenBy) =>
        hiddenBy.StartsWith("the attribute '", StringComparison.Ordinal)
        && !hiddenBy.StartsWith("the attribute 'hidden'", StringComparison.Ordinal)
        && !hiddenBy.EndsWith(ByScript, StringComparison.Ordinal);

    private static string OfScripts(string attribute) => $"the attribute '{attribute}'{ByScript}";

    private static bool IsClosed(PageElement element) => element.LocalName == "details" && !element.Has("open");

    private static PageElement? Summary(PageElement details) => details.Children.FirstOrDefault(c => c.LocalName == "summary");
}
