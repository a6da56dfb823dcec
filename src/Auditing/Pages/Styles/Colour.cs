using System.Globalization;

namespace Gradus.Auditing;

/// <summary>A colour of the sRGB space, each part from 0 to 1.</summary>
public readonly record struct Colour(double Red, double Green, double Blue)
{
    /// <summary>How bright it is beside white (WCAG 2.2, "relative luminance").</summary>
    public double Luminance => (0.2126 * Linear(Red)) + (0.7152 * Linear(Green)) + (0.0722 * Linear(Blue));

    /// <summary>The contrast of two colours, from 1 to 21 (WCAG 2.2, "contrast ratio").</summary>
    public static double Contrast(Colour one, Colour other)
    {
        var (first, second) = (one.Luminance, other.Luminance);
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    /// <summary>"#4a5462" or "#456" → the colour; null for anything else.</summary>
    public static Colour? OfHex(string text)
    {
        var digits = text.AsSpan(Math.Min(text.Length, 1));
        if (text is not ['#', ..] || digits.Length is not (3 or 6) || !digits.ToString().All(char.IsAsciiHexDigit))
            return null;
        var bits = int.Parse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return digits.Length == 6
            ? new((bits >> 16) / 255.0, ((bits >> 8) & 255) / 255.0, (bits & 255) / 255.0)
            : new((bits >> 8) / 15.0, ((bits >> 4) & 15) / 15.0, (bits & 15) / 15.0);
    }

    /// <summary>As it is written in a style: "#4a5462".</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"#{Byte(Red):x2}{Byte(Green):x2}{Byte(Blue):x2}");

    private static int Byte(double part) => (int)Math.Round(Math.Clamp(part, 0, 1) * 255, MidpointRounding.AwayFromZero);

    private static double Linear(double part) => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);
}
