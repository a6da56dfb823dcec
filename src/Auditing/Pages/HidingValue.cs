using System.Globalization;
using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>Whether a declaration of a style takes text away. What cannot be judged, such as a display that a variable decides,
/// does.</summary>
internal static partial class HidingValue
{
    /// <summary>A hundred pixels or more to the side where nothing is, a thousand to the other.</summary>
    [GeneratedRegex(
        @"-(?:\d{3,}(?:\.\d+)?px|\d{2,}(?:\.\d+)?(?:v[wihb]|%|em|rem|cm|mm|in|pt|pc|ch|lh))"
            + @"|(?<![\d.-])(?:\d{4,}px|\d{3,}(?:v[wihb]|%|em|rem|cm|in|ch|lh))",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex FarAway();

    [GeneratedRegex(@"^(?<number>\d*\.?\d+)(?<unit>[a-z%]*)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Measure();

    /// <param name="fading">The names of animations that take something away on their course.</param>
    public static bool Hides(string name, string value, IReadOnlySet<string> fading)
    {
        var said = value.Trim().ToLowerInvariant();
        return name.ToLowerInvariant() switch
        {
            "display" => said == "none" || IsOpen(said),
            "visibility" or "content-visibility" => said is "hidden" or "collapse" || IsOpen(said),
            "opacity" => IsOpen(said) || IsBelow(said, number: 0.3, share: 30),
            "font-size" => IsBelow(said, number: 0.4, share: 40, pixels: 6),
            "line-height" or "zoom" => IsBelow(said, number: 0.2, share: 20, pixels: 2),
            "width"
            or "height"
            or "max-width"
            or "max-height"
            or "inline-size"
            or "block-size"
            or "max-inline-size"
            or "max-block-size" => IsBelow(said, number: 0.2, share: 2, pixels: 2),
            "clip" => said != "auto",
            "clip-path"
            or "mask"
            or "mask-image"
            or "-webkit-mask"
            or "-webkit-mask-image"
            or "line-clamp"
            or "-webkit-line-clamp" => said is not ("none" or ""),
            "color" or "-webkit-text-fill-color" => said == "transparent"
                || (said.StartsWith("rgba(", StringComparison.Ordinal) && said.EndsWith(", 0)", StringComparison.Ordinal)),
            "filter" => said.Contains("opacity(", StringComparison.Ordinal)
                || said.Contains("blur(", StringComparison.Ordinal)
                || said.Contains("contrast(", StringComparison.Ordinal),
            "text-decoration" or "text-decoration-line" => said.Contains("line-through", StringComparison.Ordinal),
            "text-overflow" => said.Contains("ellipsis", StringComparison.Ordinal),
            "scale" => said.Split(' ').Any(s => IsBelow(s, number: 0.3, share: 30)),
            "transform" => IsTurnedAway(said) || FarAway().IsMatch(said),
            "translate"
            or "text-indent"
            or "left"
            or "top"
            or "right"
            or "bottom"
            or "inset"
            or "inset-inline-start"
            or "inset-inline-end"
            or "inset-block-start"
            or "inset-block-end"
            or "inset-inline"
            or "inset-block"
            or "margin"
            or "margin-left"
            or "margin-top"
            or "margin-inline-start"
            or "margin-block-start"
            or "margin-inline"
            or "margin-block" => FarAway().IsMatch(said),
            "animation" or "animation-name" => value
                .Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
                .Any(fading.Contains),
            _ => false,
        };
    }

    /// <summary>A height that is set where what does not fit is not shown; null where there is none.</summary>
    public static string? CutOff(IEnumerable<(string Name, string Value)> declarations)
    {
        var said = declarations.ToArray();
        var cuts = said.Any(d =>
            d.Name is "overflow" or "overflow-y" or "overflow-block" && d.Value is not ("" or "visible" or "initial")
        );
        var (name, value) = said.FirstOrDefault(d =>
            d.Name is "height" or "max-height" or "block-size" or "max-block-size"
            && d.Value.Length > 0
            && char.IsAsciiDigit(d.Value[0])
        );
        return cuts && name is not null ? $"{name}: {value}" : null;
    }

    private static bool IsTurnedAway(string said) =>
        ((string[])["scale(0", "scalex(0", "scaley(0", "scale3d(0", "rotatex(", "rotatey(", "rotate3d(", "matrix"]).Any(way =>
            said.Contains(way, StringComparison.Ordinal)
        );

    /// <summary>Whether something else decides: a variable, a sum.</summary>
    private static bool IsOpen(string said) => said.Contains('(', StringComparison.Ordinal);

    /// <param name="number">The least of a bare number, or of one in lines or letters.</param>
    /// <param name="share">The least per cent.</param>
    private static bool IsBelow(string said, double number, double share, double pixels = 0)
    {
        if (Measure().Match(said) is not { Success: true } measure)
            return false;
        var least = measure.Groups["unit"].Value switch
        {
            "%" => share,
            "px" or "pt" => pixels,
            _ => number,
        };
        return double.Parse(measure.Groups["number"].ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture) < least;
    }
}
