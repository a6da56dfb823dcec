using System.Globalization;
using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>A length as a style says it → CSS pixels.</summary>
internal static partial class Length
{
    [GeneratedRegex(
        @"\A(?<number>[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)(?<unit>[a-z%]*)\z",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex Measure();

    /// <param name="size">The size of the letters, for em.</param>
    /// <param name="root">That of the page, for rem.</param>
    /// <returns>Null where it cannot be known from the style alone: a per cent of something, a part of the window.</returns>
    public static double? Read(string value, double size, double root)
    {
        var said = value.Trim().ToLowerInvariant();
        if (StyleValue.Function(said) is { } function)
            return OfFunction(function.Name, StyleValue.Split(function.Inside, ','), size, root);
        if (Measure().Match(said) is not { Success: true } measure)
            return null;
        var number = double.Parse(measure.Groups["number"].ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture);
        return measure.Groups["unit"].Value switch
        {
            "" when number == 0 => 0,
            "px" => number,
            "pt" => number * 4 / 3,
            "pc" => number * 16,
            "in" => number * 96,
            "cm" => number * 96 / 2.54,
            "mm" => number * 96 / 25.4,
            "em" => number * size,
            "rem" => number * root,
            _ => null,
        };
    }

    /// <summary>Of min(), max() and clamp() what is known of their least; sums are not worked out.</summary>
    private static double? OfFunction(string name, string[] parts, double size, double root)
    {
        double?[] read = [.. parts.Select(part => Read(part, size, root))];
        return name switch
        {
            "clamp" when read.Length == 3 => read[0],
            "max" when read.Any(r => r is not null) => read.Max(),
            "min" when read.All(r => r is not null) => read.Min(),
            _ => null,
        };
    }
}
