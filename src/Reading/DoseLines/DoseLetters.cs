using System.Globalization;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>How the characters of a dose line are read.</summary>
internal static class DoseLetters
{
    private const int LongestQuote = 40;

    /// <summary><c>×</c>, en dash and capitals are <c>x</c>, <c>-</c> and small letters.</summary>
    public static char Fold(char c) =>
        c switch
        {
            '×' => 'x',
            '–' => '-',
            >= 'A' and <= 'Z' => (char)(c + ('a' - 'A')),
            _ => c,
        };

    public static string Fold(string text) => string.Concat(text.Select(Fold));

    /// <summary>The name of a side: as a dose line reads it, capitals of any alphabet small.</summary>
    public static string Side(string text) => Fold(text).ToLowerInvariant();

    /// <summary>For a message: in quotes, cut where it is very long, and by its number where it cannot be shown.</summary>
    public static string Quote(string text)
    {
        if (text.Length > LongestQuote)
            text = text[..LongestQuote].TrimEnd() + "…";
        return Characters.CanBeShown(text) ? $"'{text}'" : $"'{string.Concat(text.Select(Shown))}'";
    }

    private static string Shown(char c) =>
        Characters.CanBeShown(c.ToString()) ? c.ToString() : string.Create(CultureInfo.InvariantCulture, $"U+{(int)c:X4}");
}
