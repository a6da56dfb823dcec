namespace Gradus.Auditing;

/// <summary>A word, a number, a placeholder with its braces, or one sign.</summary>
/// <param name="Word">In small letters, with plain apostrophes.</param>
/// <param name="Start">Its place in the text, from 0.</param>
/// <param name="IsApart">Whether white space stands before it.</param>
internal sealed record SpokenToken(string Word, int Start, int Length, bool IsApart)
{
    public int End => Start + Length;

    public bool IsNumber => char.IsAsciiDigit(Word[0]);

    public bool IsDash => Word is "-" or "–" or "—";

    public bool EndsSentence => Word is "." or "!" or "?" or "…";

    /// <summary>The tokens of a text in order; whatever is neither letter nor digit is a token of its own.</summary>
    public static List<SpokenToken> In(string text)
    {
        var tokens = new List<SpokenToken>();
        for (var at = 0; at < text.Length; )
        {
            var end = EndOf(text, at);
            if (!char.IsWhiteSpace(text[at]))
                tokens.Add(
                    new(
                        text[at..end].ToLowerInvariant().Replace('’', '\''),
                        at,
                        end - at,
                        at > 0 && char.IsWhiteSpace(text[at - 1])
                    )
                );
            at = end;
        }

        return tokens;
    }

    private static int EndOf(string text, int at)
    {
        if (char.IsAsciiDigit(text[at]))
            return EndOfNumber(text, at);
        if (char.IsLetter(text[at]))
            return EndOfWord(text, at);
        return text[at] == '{' ? EndOfPlaceholder(text, at) : at + 1;
    }

    /// <summary>A point belongs to the number where a digit follows it.</summary>
    private static int EndOfNumber(string text, int at)
    {
        var end = Past(text, at, char.IsAsciiDigit);
        return end + 1 < text.Length && text[end] == '.' && char.IsAsciiDigit(text[end + 1])
            ? Past(text, end + 1, char.IsAsciiDigit)
            : end;
    }

    private static int EndOfWord(string text, int at)
    {
        var end = Past(text, at, char.IsLetter);
        if (end + 1 < text.Length && text[end] is '\'' or '’' && char.IsLetter(text[end + 1]))
            return Past(text, end + 1, char.IsLetter);
        return end;
    }

    private static int EndOfPlaceholder(string text, int at)
    {
        var end = Past(text, at + 1, char.IsAsciiLetterLower);
        return end < text.Length && text[end] == '}' ? end + 1 : at + 1;
    }

    private static int Past(string text, int at, Func<char, bool> belongs)
    {
        while (at < text.Length && belongs(text[at]))
            at++;
        return at;
    }
}
