using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Text of a page as it is seen. Text that looks the same in everything comes once.</summary>
/// <param name="Sample">How the first of it begins.</param>
public sealed record TextLook(string Sample, Location At, Series<Shade> Shades);

/// <summary>The two colours of a text on one screen.</summary>
/// <param name="Screen">As it is called in a sentence: "light", "dark and narrow".</param>
/// <param name="Size">Of the letters, in CSS pixels.</param>
/// <param name="Weight">100 to 900; 700 is bold.</param>
/// <param name="Open">What cannot be worked out, as the style says it; null where both colours are known.</param>
public sealed record Shade(string Screen, Colour Text, Colour Ground, double Size, double Weight, string? Open)
{
    /// <summary>Whether it counts as large: 18 points, or 14 in bold (WCAG 2.2, "large scale").</summary>
    public bool IsLarge => Size >= 24 || (Size >= 14 * 96 / 72.0 && Weight >= 700);
}

/// <summary>Something that somebody can press.</summary>
/// <param name="What">As it is called in a sentence: "the link 'Home'".</param>
/// <param name="IsInSentence">Whether other words stand beside it in the same line.</param>
/// <param name="Sizes">On each screen.</param>
public sealed record TargetSeen(string What, Location At, bool IsButton, bool IsInSentence, Series<TargetSize> Sizes);

/// <summary>How large something is made, in CSS pixels; null where only the browser knows it.</summary>
public sealed record TargetSize(string Screen, double? Height, double? Width);
