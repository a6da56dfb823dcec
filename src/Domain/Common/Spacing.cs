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
}
