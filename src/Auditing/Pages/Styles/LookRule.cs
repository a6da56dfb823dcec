using System.Text.RegularExpressions;
using AngleSharp.Css;
using AngleSharp.Css.Dom;
using AngleSharp.Css.Parser;
using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>One selector of a style with what it says about how things look.</summary>
/// <param name="Of">The part of an element that is meant: "before", "after"; empty for the element.</param>
/// <param name="Layer">The place of its cascade layer: 0 for what a browser does by itself, and the highest for what stands in
/// none.</param>
/// <param name="Media">All of these must hold.</param>
/// <param name="AsksAround">Whether it asks for more than names and attributes of an element and those around it: neighbours,
/// places, states.</param>
internal sealed partial record LookRule(
    ISelector Selector,
    string Of,
    int Layer,
    Series<string> Media,
    Series<StylePart.Declared> Says,
    bool AsksAround
)
{
    private static readonly CssSelectorParser Parser = new();

    [GeneratedRegex(
        @"::?(?<of>before|after|marker|placeholder|first-line|first-letter)\s*\z",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex PartOfElement();

    [GeneratedRegex(
        @"[+~]|:(?!(?:is|where|not|root|link|any-link|hover|active|focus|focus-visible|focus-within|visited|target)\b)[a-z-]+",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex Around();

    [GeneratedRegex(@"\[\s*(?<name>[\w:-]+)\s*(?<end>\])?|#(?<id>[\w-])", RegexOptions.CultureInvariant)]
    private static partial Regex Asked();

    public Priority Weight => Selector.Specificity;

    public bool Holds(Screen screen) => Media.All(screen.Holds);

    /// <summary>The attributes that its selector asks for, beside the class.</summary>
    public IEnumerable<AskedAttribute> Attributes =>
        Asked()
            .Matches(Selector.Text)
            .Select(m =>
                m.Groups["id"].Success
                    ? new AskedAttribute("id", true)
                    : new(m.Groups["name"].Value.ToLowerInvariant(), !m.Groups["end"].Success)
            );

    /// <returns>Null where no browser, or only our parser, does not understand the selector.</returns>
    public static LookRule? For(string selector, int layer, Series<string> media, Series<StylePart.Declared> says)
    {
        var part = PartOfElement().Match(selector);
        var element = part.Success ? selector[..part.Index] : selector;
        if (part.Success && (element.Length == 0 || element[^1] is ' ' or '>' or '+' or '~'))
            element += "*";
        try
        {
            return Parser.ParseSelector(element) is { } parsed && !element.Contains("::", StringComparison.Ordinal)
                ? new(parsed, part.Groups["of"].Value.ToLowerInvariant(), layer, media, says, Around().IsMatch(element))
                : null;
        }
        catch (DomException)
        {
            return null;
        }
    }

    public bool Means(IElement element) => Selector.Match(element, element.Owner?.DocumentElement);
}

/// <summary>An attribute that decides how an element looks.</summary>
/// <param name="ByValue">Whether it is asked what it says, or only whether it is there.</param>
internal sealed record AskedAttribute(string Name, bool ByValue);
