using System.Globalization;
using AngleSharp.Css.Values;

namespace Gradus.Auditing;

/// <summary>A colour as a style says it → the colour.</summary>
/// <param name="dark">Whether the page is shown dark.</param>
/// <param name="current">What 'currentcolor' means.</param>
internal sealed class ColourReader(bool dark, Colour current)
{
    /// <returns>Null where it is no colour, or one that we cannot work out.</returns>
    public Colour? Read(string value)
    {
        var said = value.Trim().ToLowerInvariant();
        if (said == "transparent")
            return default(Colour);
        if (said == "currentcolor")
            return current;
        if (said.StartsWith('#'))
            return CssColorValue.TryFromHex(said[1..], out var hex) ? Of(hex) : null;
        if (SystemColours.Find(said, dark) is { } own)
            return Read(own);
        if (StyleValue.Function(said) is { } function)
            return OfFunction(function.Name, function.Inside);
        return said.All(char.IsAsciiLetter) && CssColorValue.FromName(said) is { } named ? Of(named) : null;
    }

    private Colour? OfFunction(string name, string inside)
    {
        if (name == "light-dark")
            return StyleValue.Split(inside, ',') is [var light, var shade] ? Read(dark ? shade : light) : null;
        if (name == "color-mix")
            return StyleValue.Split(inside, ',') is [var space, var one, var other] ? Mixed(space, one, other) : null;
        var parts = inside.Split([' ', ',', '/', '\t', '\n'], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is not (3 or 4))
            return null;
        var alpha = parts.Length == 4 ? Number(parts[3], 1) : 1;
        return name switch
        {
            "rgb" or "rgba" => Numbers(parts, 255, 255, 255) is [var r, var g, var b] && alpha is { } a
                ? new(Clamp(r / 255), Clamp(g / 255), Clamp(b / 255), Clamp(a))
                : null,
            "hsl" or "hsla" => Numbers(parts, 360, 1, 1) is [var h, var s, var l] && alpha is { } a
                ? Of(CssColorValue.FromHsl(Turn(h) / 360, Share(parts[1], s), Share(parts[2], l))) with
                {
                    Alpha = Clamp(a),
                }
                : null,
            "oklch" => Numbers(parts, 1, 0.4, 360) is [var l, var c, var h] && alpha is { } a
                ? Oklab(l, c * Math.Cos(h * Math.PI / 180), c * Math.Sin(h * Math.PI / 180), Clamp(a))
                : null,
            "oklab" => Numbers(parts, 1, 0.4, 0.4) is [var l, var x, var y] && alpha is { } a ? Oklab(l, x, y, Clamp(a)) : null,
            _ => null,
        };
    }

    /// <summary>Two colours mixed in sRGB; mixing in another space is not worked out.</summary>
    private Colour? Mixed(string space, string one, string other)
    {
        if (space.Trim() != "in srgb" || Portion(one) is not { } first || Portion(other) is not { } second)
            return null;
        var share = first.Share ?? (1 - (second.Share ?? 0.5));
        var rest = second.Share ?? (1 - share);
        if (share + rest <= 0)
            return null;
        var (mine, its, alpha) = (share / (share + rest), rest / (share + rest), Math.Min(1, share + rest));
        var (a, b) = (first.Colour, second.Colour);
        var whole = (a.Alpha * mine) + (b.Alpha * its);
        if (whole <= 0)
            return default(Colour);
        return new(Part(a.Red, b.Red), Part(a.Green, b.Green), Part(a.Blue, b.Blue), whole * alpha);

        double Part(double x, double y) => ((x * a.Alpha * mine) + (y * b.Alpha * its)) / whole;
    }

    private (Colour Colour, double? Share)? Portion(string said)
    {
        var parts = StyleValue.Split(said.Trim(), ' ').ToList();
        var share = parts.FirstOrDefault(p => p.EndsWith('%'));
        if (share is not null)
            parts.Remove(share);
        return parts is [var colour] && Read(colour) is { } read ? (read, share is null ? null : Number(share, 1)) : null;
    }

    private static double[]? Numbers(string[] parts, params double[] wholes)
    {
        var read = wholes.Select((whole, i) => Number(parts[i], whole)).OfType<double>().ToArray();
        return read.Length == wholes.Length ? read : null;
    }

    /// <param name="whole">What 100 % is.</param>
    private static double? Number(string said, double whole)
    {
        if (said == "none")
            return 0;
        var (text, unit) =
            said.EndsWith('%') ? (said[..^1], whole / 100)
            : said.EndsWith("deg", StringComparison.Ordinal) ? (said[..^3], 1)
            : (said, 1);
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number * unit
            : null;
    }

    /// <summary>In hsl() a bare number is per cent.</summary>
    private static double Share(string said, double number) => Clamp(said.EndsWith('%') ? number : number / 100);

    private static double Turn(double degrees) => ((degrees % 360) + 360) % 360;

    private static double Clamp(double part) => Math.Clamp(part, 0, 1);

    private static Colour Of(CssColorValue value) => new(value.R / 255.0, value.G / 255.0, value.B / 255.0, value.A / 255.0);

    /// <summary>Björn Ottosson's space, as CSS Color 4, 9.4 gives it; what lies outside sRGB is cut off, where a browser would
    /// look for the nearest.</summary>
    private static Colour Oklab(double lightness, double a, double b, double alpha)
    {
        var l = Math.Pow(lightness + (0.3963377774 * a) + (0.2158037573 * b), 3);
        var m = Math.Pow(lightness - (0.1055613458 * a) - (0.0638541728 * b), 3);
        var s = Math.Pow(lightness - (0.0894841775 * a) - (1.2914855480 * b), 3);
        return new(
            Gamma((4.0767416621 * l) - (3.3077115913 * m) + (0.2309699292 * s)),
            Gamma((-1.2684380046 * l) + (2.6097574011 * m) - (0.3413193965 * s)),
            Gamma((-0.0041960863 * l) - (0.7034186147 * m) + (1.7076147010 * s)),
            alpha
        );
    }

    private static double Gamma(double linear) =>
        Clamp(linear <= 0.0031308 ? linear * 12.92 : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055);
}
