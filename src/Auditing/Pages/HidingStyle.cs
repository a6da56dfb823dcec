using AngleSharp.Css.Dom;
using AngleSharp.Css.Parser;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A style rule that takes something away from somebody, in whatever medium: what is not there in print is as wrong as
/// what is not there on the screen. Which rule wins in a browser is not weighed: a theme has no business to hide a caution and
/// show it again.</summary>
/// <param name="Declaration">As "display: none".</param>
/// <param name="IsOnPaper">Whether it holds in print and nowhere else.</param>
internal sealed record HidingStyle(string Selector, string Declaration, bool IsOnPaper)
{
    private static readonly CssParser Parser = new(
        new CssParserOptions
        {
            IsIncludingUnknownDeclarations = true,
            IsIncludingUnknownRules = true,
            IsToleratingInvalidSelectors = true,
        }
    );

    public static Series<HidingStyle> In(string stylesheet)
    {
        var rules = Parser.ParseStyleSheet(stylesheet).Rules.SelectMany(r => Flat(r, false)).ToArray();
        var fading = rules
            .Select(r => r.Rule)
            .OfType<ICssKeyframesRule>()
            .Where(k => k.Rules.OfType<ICssKeyframeRule>().Any(frame => Hides(frame.Style, []) is not null))
            .Select(k => k.Name)
            .ToHashSet(StringComparer.Ordinal);
        return (
            from rule in rules
            let style = rule.Rule as ICssStyleRule
            where style is not null
            let declaration = Hides(style.Style, fading)
            where declaration is not null
            select new HidingStyle(style.SelectorText, declaration, rule.IsOnPaper)
        ).ToSeries();
    }

    /// <summary>The first hiding declaration of a style attribute, or null.</summary>
    public static string? InAttribute(string style) => In($"x{{{style}}}") is [var first, ..] ? first.Declaration : null;

    /// <summary>A rule with all that stand in it, whatever medium, width or layer it asks for.</summary>
    private static IEnumerable<(ICssRule Rule, bool IsOnPaper)> Flat(ICssRule rule, bool isOnPaper)
    {
        var inside = isOnPaper || rule is ICssMediaRule { Media.MediaText: "print" };
        return (
            rule switch
            {
                ICssStyleRule style => style.Rules.SelectMany(r => Flat(r, inside)),
                ICssGroupingRule group => group.Rules.SelectMany(r => Flat(r, inside)),
                _ => [],
            }
        ).Prepend((rule, isOnPaper));
    }

    private static string? Hides(ICssStyleDeclaration style, HashSet<string> fading)
    {
        foreach (var declaration in style)
            if (HidingValue.Hides(declaration.Name, declaration.Value, fading))
                return $"{declaration.Name}: {declaration.Value}";
        return HidingValue.CutOff(style.Select(d => (d.Name, d.Value)));
    }
}
