namespace Gradus.Auditing;

internal static class WholeWords
{
    /// <summary>Whether there is such a place.</summary>
    public static bool Stand(string text, string phrase) =>
        text.Contains(phrase, StringComparison.Ordinal) && Places(text, phrase).Any();

    /// <summary>Every place where the phrase stands in the text, not torn out of a longer word or number.</summary>
    public static IEnumerable<int> Places(string text, string phrase, StringComparison comparison = StringComparison.Ordinal)
    {
        if (phrase.Length == 0)
            yield break;
        for (var at = text.IndexOf(phrase, comparison); at >= 0; at = text.IndexOf(phrase, at + 1, comparison))
        {
            var end = at + phrase.Length;
            if ((at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end])))
                yield return at;
        }
    }
}
