namespace Gradus.Auditing;

/// <summary>What a declaration that says several things at once says of one of them.</summary>
internal static class StyleShorthand
{
    /// <returns>Null where it says nothing of that.</returns>
    public static string? Part(string name, string value, string of)
    {
        if (value.ToLowerInvariant() is "inherit" or "initial" or "unset" or "revert")
            return value;
        return name switch
        {
            "background" => of == "background-color" ? ColourIn(value) : value,
            "font" => OfFont(value, of),
            "border" when of == "border-color" => ColourIn(value),
            "border" or "border-block" or "border-top" or "border-bottom" => WidthIn(value),
            _ => Side(StyleValue.Split(value, ' '), name, of),
        };
    }

    /// <summary>Top, right, bottom, left; where there are fewer, the opposite side, or the first.</summary>
    private static string? Side(string[] parts, string name, string of)
    {
        if (parts.Length is 0 or > 4)
            return null;
        var index =
            of.Contains("bottom", StringComparison.Ordinal) ? 2
            : of.Contains("right", StringComparison.Ordinal) ? 1
            : of.Contains("left", StringComparison.Ordinal) ? 3
            : 0;
        if (name.Contains("block", StringComparison.Ordinal) || name.Contains("inline", StringComparison.Ordinal))
            return parts[
                Math.Min(
                    index >= 2 || (index == 1 && name.Contains("inline", StringComparison.Ordinal)) ? 1 : 0,
                    parts.Length - 1
                )
            ];
        return index < parts.Length ? parts[index]
            : index == 3 && parts.Length > 1 ? parts[1]
            : parts[0];
    }

    private static string ColourIn(string value)
    {
        var reader = new ColourReader(false, Colour.Black);
        var last = StyleValue.Split(value, ',')[^1];
        return StyleValue.Split(last, ' ').FirstOrDefault(p => reader.Read(p) is not null || IsNewColour(p)) ?? "transparent";
    }

    /// <summary>A function that is a colour although we cannot work it out.</summary>
    private static bool IsNewColour(string part) =>
        StyleValue.Function(part)
            is {
                Name: "color"
                    or "lab"
                    or "lch"
                    or "hwb"
                    or "color-mix"
                    or "light-dark"
                    or "oklab"
                    or "oklch"
                    or "rgb"
                    or "rgba"
                    or "hsl"
                    or "hsla"
                    or "color-contrast"
                    or "contrast-color"
            };

    private static string? WidthIn(string value)
    {
        var parts = StyleValue.Split(value, ' ');
        return parts.Contains("none")
            ? "0"
            : parts
                .Select(p =>
                    p switch
                    {
                        "thin" => "1px",
                        "medium" => "3px",
                        "thick" => "5px",
                        _ => p,
                    }
                )
                .FirstOrDefault(p => Length.Read(p, 16, 16) is not null);
    }

    private static string? OfFont(string value, string of)
    {
        var parts = StyleValue.Split(value, ' ');
        var size = Array.FindIndex(parts, p =>
            Length.Read(p.Split('/')[0], 16, 16) is { } pixels && (pixels > 0 || p.StartsWith('0')) && !int.TryParse(p, out _)
            || p.Split('/')[0].EndsWith('%')
        );
        if (size < 0)
            return null;
        return of switch
        {
            "font-size" => parts[size].Split('/')[0],
            "line-height" => parts[size].Split('/') is [_, var line] ? line : "normal",
            _ => parts[..size]
                .FirstOrDefault(p => p is "bold" or "bolder" or "lighter" || (int.TryParse(p, out var weight) && weight >= 100))
                ?? "normal",
        };
    }
}
