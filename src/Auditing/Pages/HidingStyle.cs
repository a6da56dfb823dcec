using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Css.Dom;
using AngleSharp.Css.Parser;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A style rule that takes something away from somebody, in whatever medium: what is not there in print is as wrong as what is
/// not there on the screen. Which rule wins in a browser is not weighed: a theme has no business to hide a caution and show it again.</summary>
/// <param name="Declaration">As "display: none".</param>
internal sealed partial record HidingStyle(string Selector, string Declaration)
{
    private static readonly CssParser Parser = new(new CssParserOptions
    {
        IsIncludingUnknownDeclarations = true, IsIncludingUnknownRules = true, IsToleratingInvalidSelectors = true,
    });

    [GeneratedRegex(@"-\s*(?:\d{3,}px|\d{2,}(?:vw|vh|%|em|rem|cm|mm|in|pt))", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FarAway();

    public static Series<HidingStyle> In(string stylesheet) => Within(Parser.ParseStyleSheet(stylesheet).Rules).ToSeries();

    /// <summary>The first hiding declaration of a style attribute, or null.</summary>
    public static string? InAttribute(string style) => In($"x{{{style}}}") is [var first, ..] ? first.Declaration : null;

    private static IEnumerable<HidingStyle> Within(ICssRuleList rules)
    {
        foreach (var rule in rules)
        {
            if (rule is ICssStyleRule style)
            {
                if (style.SelectorText.Contains("::", StringComparison.Ordinal)) continue;
                foreach (var declaration in style.Style)
                    if (Hides(declaration.Name, declaration.Value)) yield return new(style.SelectorText, $"{declaration.Name}: {declaration.Value}");
            }
            else if (rule is ICssGroupingRule group)
            {
                foreach (var inner in Within(group.Rules)) yield return inner;
            }
        }
    }

    private static bool Hides(string name, string value)
    {
        var said = value.Trim().ToLowerInvariant();
        return name.ToLowerInvariant() switch
        {
            "display" => said == "none",
            "visibility" => said is "hidden" or "collapse",
            "content-visibility" => said == "hidden",
            "opacity" => Number(said) < 0.3,
            "font-size" or "line-height" or "zoom" => Number(said) == 0,
            "width" or "height" or "max-width" or "max-height" or "inline-size" or "block-size" or "max-inline-size" or "max-block-size" => Number(said) is >= 0 and < 2 && !said.EndsWith("em", StringComparison.Ordinal),
            "clip" => said != "auto",
            "clip-path" => said != "none",
            "color" => said is "transparent" or "rgba(0, 0, 0, 0)",
            "filter" => said.Contains("opacity(0", StringComparison.Ordinal),
            "transform" or "scale" or "translate" => said.Contains("scale(0", StringComparison.Ordinal) || said is "0" or "0 0" || FarAway().IsMatch(said),
            "text-indent" or "left" or "top" or "right" or "bottom" or "inset" or "inset-inline-start" or "inset-inline-end" or "inset-block-start"
                or "inset-block-end" or "margin" or "margin-left" or "margin-top" or "margin-inline-start" => FarAway().IsMatch(said),
            _ => false,
        };
    }

    /// <summary>The number a value begins with; not a number for words.</summary>
    private static double Number(string value)
    {
        var digits = value.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or '-').ToArray();
        if (value.EndsWith('%') && digits.Length == value.Length - 1)
            return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var share) ? share / 100 : double.NaN;
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.NaN;
    }
}
