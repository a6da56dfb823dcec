using System.Text;

namespace Gradus.Domain;

public static class Spacing
{
    /// <summary>The text as a reader sees its spaces: every run of white space one blank, none at the ends.</summary>
    public static string Collapse(string text)
    {
        var tidy = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (!char.IsWhiteSpace(c))
                tidy.Append(c);
            else if (tidy.Length > 0 && tidy[^1] != ' ')
                tidy.Append(' ');
        }

        return tidy.Length > 0 && tidy[^1] == ' ' ? tidy.ToString(0, tidy.Length - 1) : tidy.ToString();
    }
}
