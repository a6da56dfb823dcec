using System.Text;

namespace Gradus.Domain;

public static class Kebab
{
    /// <summary>"whole body" as <c>whole-body</c>.</summary>
    public static string OfWords(string words) => words.Replace(' ', '-');

    /// <summary><c>DoseOutsideEnvelope</c> as <c>dose-outside-envelope</c>.</summary>
    public static string Of(string name)
    {
        var kebab = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && kebab.Length > 0)
                kebab.Append('-');
            kebab.Append(char.ToLowerInvariant(letter));
        }

        return kebab.ToString();
    }
}
