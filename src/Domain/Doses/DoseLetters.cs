using System.Globalization;

namespace Gradus.Domain;

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

    /// <summary>Whether every character can be shown: no control characters, no half of a character.</summary>
    public static bool CanBeShown(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsControl(text[i]))
                return false;
            if (!char.IsSurrogate(text[i]))
                continue;
            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1]))
                return false;
            i++;
        }

        return true;
    }

    /// <summary>For a message: in quotes, cut where it is very long, and by its number where it cannot be shown.</summary>
    public static string Quote(string text)
    {
        if (text.Length > LongestQuote)
            text = text[..LongestQuote].TrimEnd() + "…";
        return CanBeShown(text) ? $"'{text}'" : $"'{string.Concat(text.Select(Shown))}'";
    }

    private static string Shown(char c) =>
        CanBeShown(c.ToString()) ? c.ToString() : string.Create(CultureInfo.InvariantCulture, $"U+{(int)c:X4}");
}
