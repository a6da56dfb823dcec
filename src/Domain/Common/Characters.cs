namespace Gradus.Domain;

public static class Characters
{
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
}
