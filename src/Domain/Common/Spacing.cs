using System.Buffers;

namespace Gradus.Domain;

public static class Spacing
{
    /// <summary>Shows nothing of itself: where a line may break.</summary>
    private const char SoftHyphen = '\u00ad';

    /// <summary>The text as a reader sees its spaces: every run of white space one blank, none at the ends; no soft
    /// hyphens.</summary>
    public static string Collapse(string text) => IsCollapsed(text) ? text : Collapse(text.AsSpan());

    /// <inheritdoc cref="Collapse(string)"/>
    public static string Collapse(ReadOnlySpan<char> text)
    {
        var tidy = ArrayPool<char>.Shared.Rent(text.Length);
        var length = 0;
        foreach (var c in text)
        {
            if (c == SoftHyphen)
                continue;
            if (!char.IsWhiteSpace(c))
                tidy[length++] = c;
            else if (length > 0 && tidy[length - 1] != ' ')
                tidy[length++] = ' ';
        }

        var collapsed = new string(tidy, 0, length > 0 && tidy[length - 1] == ' ' ? length - 1 : length);
        ArrayPool<char>.Shared.Return(tidy);
        return collapsed;
    }

    /// <summary>Most texts are so already, and need not be written anew.</summary>
    private static bool IsCollapsed(string text)
    {
        var before = ' ';
        foreach (var c in text)
        {
            if (c == SoftHyphen || (c == ' ' ? before == ' ' : char.IsWhiteSpace(c)))
                return false;
            before = c;
        }

        return text.Length == 0 || before != ' ';
    }
}
