namespace Gradus.Auditing;

internal static class WholeWords
{
    /// <summary>Whether there is such a place.</summary>
    public static bool Stand(string text, string phrase) => Places(text, phrase).Any();

    /// <summary>Every place where the phrase stands in the text, not torn out of a longer word or number. Mostly there is none,
    /// and nothing to walk through.</summary>
    public static IEnumerable<int> Places(string text, string phrase, StringComparison comparison = StringComparison.Ordinal) =>
        phrase.Length > 0 && text.Contains(phrase, comparison) ? Found(text, phrase, comparison) : [];

    private static IEnumerable<int> Found(string text, string phrase, StringComparison comparison)
    {
        for (var at = text.IndexOf(phrase, comparison); at >= 0; at = text.IndexOf(phrase, at + 1, comparison))
        {
            var end = at + phrase.Length;
            if ((at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end])))
                yield return at;
        }
    }
}
