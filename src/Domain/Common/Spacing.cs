using System.Text;

namespace Gradus.Domain;

public static class Spacing
{
    /// <summary>Shows nothing of itself: where a line may break.</summary>
    private const char SoftHyphen = '\u00ad';

    /// <summary>The text as a reader sees its spaces: every run of white space one blank, none at the ends; no soft
    /// hyphens.</summary>
    public static string Collapse(string text)
    {
        if (IsCollapsed(text))
            return text;
        var tidy = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c == SoftHyphen)
                continue;
            if (!char.IsWhiteSpace(c))
                tidy.Append(c);
            else if (tidy.Length > 0 && tidy[^1] != ' ')
                tidy.Append(' ');
        }

        return tidy.Length > 0 && tidy[^1] == ' ' ? tidy.ToString(0, tidy.Length - 1) : tidy.ToString();
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
