using System.Globalization;

namespace Gradus.Auditing;

/// <summary>A colour of the sRGB space, each part from 0 to 1; the default is fully transparent.</summary>
public readonly record struct Colour(double Red, double Green, double Blue, double Alpha)
{
    public static readonly Colour Black = new(0, 0, 0, 1);

    /// <summary>How bright it is beside white (WCAG 2.2, "relative luminance"); what can be seen through it is not
    /// asked.</summary>
    public double Luminance => (0.2126 * Linear(Red)) + (0.7152 * Linear(Green)) + (0.0722 * Linear(Blue));

    /// <summary>The contrast of two colours, from 1 to 21 (WCAG 2.2, "contrast ratio").</summary>
    public static double Contrast(Colour one, Colour other)
    {
        var (first, second) = (one.Luminance, other.Luminance);
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    /// <summary>What is seen where this colour is painted on another.</summary>
    public Colour Over(Colour below)
    {
        var alpha = Alpha + (below.Alpha * (1 - Alpha));
        if (alpha <= 0)
            return default;
        var (mine, its) = (Alpha / alpha, below.Alpha * (1 - Alpha) / alpha);
        return new(
            (Red * mine) + (below.Red * its),
            (Green * mine) + (below.Green * its),
            (Blue * mine) + (below.Blue * its),
            alpha
        );
    }

    /// <summary>As it is written in a style: "#4a5462".</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"#{Byte(Red):x2}{Byte(Green):x2}{Byte(Blue):x2}")
        + (Alpha >= 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"{Byte(Alpha):x2}"));

    private static int Byte(double part) => (int)Math.Round(Math.Clamp(part, 0, 1) * 255, MidpointRounding.AwayFromZero);

    private static double Linear(double part) => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);
}
