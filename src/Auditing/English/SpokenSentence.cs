namespace Gradus.Auditing;

/// <summary>One sentence, as words that can be asked for by their place; outside of it there is the empty word.</summary>
internal sealed class SpokenSentence(IReadOnlyList<SpokenToken> tokens)
{
    /// <summary>No sentence for people is longer; a longer one is read in pieces, so that the time to read a text grows with its
    /// length alone.</summary>
    private const int Longest = 200;

    public int Count => tokens.Count;

    public SpokenToken this[int index] => tokens[index];

    /// <summary>A full stop ends a sentence unless a small letter or a comma follows, as after an abbreviation.</summary>
    public static IEnumerable<SpokenSentence> In(string text)
    {
        var tokens = SpokenToken.In(text);
        var from = 0;
        for (var i = 0; i < tokens.Count; i++)
        {
            if (i - from < Longest && !Ends(text, tokens, i))
                continue;
            yield return new(tokens.GetRange(from, i - from));
            from = tokens[i].EndsSentence ? i + 1 : i;
        }

        if (from < tokens.Count)
            yield return new(tokens.GetRange(from, tokens.Count - from));
    }

    public string Word(int index) => index >= 0 && index < tokens.Count ? tokens[index].Word : "";

    /// <summary>Whether the words stand there, one after the other.</summary>
    public bool Says(int index, params ReadOnlySpan<string> words)
    {
        for (var i = 0; i < words.Length; i++)
            if (!string.Equals(Word(index + i), words[i], StringComparison.Ordinal))
                return false;
        return true;
    }

    /// <summary>Whether one of the words stands in [from, to).</summary>
    public bool Has(int from, int to, IReadOnlySet<string> words)
    {
        for (var i = Math.Max(from, 0); i < Math.Min(to, Count); i++)
            if (words.Contains(tokens[i].Word))
                return true;
        return false;
    }

    public bool Has(IReadOnlySet<string> words) => Has(0, Count, words);

    /// <summary>The first token of the clause in which a token stands. A comma, a bracket, a colon and a dash between blanks
    /// divide.</summary>
    public int ClauseFrom(int index)
    {
        var from = index;
        while (from > 0 && !Divides(from - 1))
            from--;
        return from;
    }

    /// <summary>Behind the last token of the clause.</summary>
    public int ClauseTo(int index)
    {
        var to = index;
        while (to < Count && !Divides(to))
            to++;
        return to;
    }

    private static bool Ends(string text, List<SpokenToken> tokens, int at) =>
        tokens[at].EndsSentence
        && (at + 1 == tokens.Count || !(char.IsLower(text[tokens[at + 1].Start]) || tokens[at + 1].Word == ","));

    private bool Divides(int index) =>
        Word(index) is "," or ";" or ":" or "(" or ")"
        || (tokens[index].IsDash && tokens[index].IsApart && index + 1 < Count && tokens[index + 1].IsApart);
}
