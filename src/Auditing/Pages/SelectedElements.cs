using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Dom;

namespace Gradus.Auditing;

/// <summary>The elements that a selector of a style can mean, in any state that a page can come into.</summary>
internal static partial class SelectedElements
{
    [GeneratedRegex(
        @"\G:(?:hover|active|focus|focus-within|focus-visible|target|checked|visited)(?![\w-])",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex State();

    [GeneratedRegex(@"\G:[a-z-]+(?:\([^()]*\))?", RegexOptions.CultureInvariant)]
    private static partial Regex PseudoClass();

    public static IEnumerable<IElement> In(IDocument document, string selector) =>
        Parts(selector)
            .Where(part => !part.Contains("::", StringComparison.Ordinal))
            .SelectMany(part => Meant(document, Without(part, State())));

    private static IEnumerable<IElement> Meant(IDocument document, string selector)
    {
        try
        {
            return document.QuerySelectorAll(selector);
        }
        catch (DomException)
        {
            return MeantWithoutClasses(document, Without(selector, PseudoClass()));
        }
    }

    private static IEnumerable<IElement> MeantWithoutClasses(IDocument document, string selector)
    {
        try
        {
            return document.QuerySelectorAll(selector);
        }
        catch (DomException)
        {
            // A selector no browser understands hides nothing.
            return [];
        }
    }

    /// <summary>The selector without what the pattern finds outside its brackets; what would be left without a name becomes
    /// "any".</summary>
    private static string Without(string selector, Regex pattern)
    {
        var kept = new StringBuilder();
        var depth = 0;
        for (var i = 0; i < selector.Length; i++)
        {
            if (depth == 0 && pattern.Match(selector, i) is { Success: true } found)
            {
                if (kept.Length == 0 || kept[^1] is ' ' or '>' or '+' or '~')
                    kept.Append('*');
                i += found.Length - 1;
                continue;
            }

            depth += selector[i] switch
            {
                '(' or '[' => 1,
                ')' or ']' => -1,
                _ => 0,
            };
            kept.Append(selector[i]);
        }

        return kept.ToString();
    }

    /// <summary>The selectors between commas.</summary>
    private static IEnumerable<string> Parts(string selector)
    {
        var (start, depth) = (0, 0);
        for (var i = 0; i < selector.Length; i++)
        {
            depth += selector[i] switch
            {
                '(' or '[' => 1,
                ')' or ']' => -1,
                _ => 0,
            };
            if (selector[i] != ',' || depth > 0)
                continue;
            yield return selector[start..i].Trim();
            start = i + 1;
        }

        yield return selector[start..].Trim();
    }
}
