using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What stands in a log, inside a sentence: nothing of it can move a cursor or turn words round.</summary>
internal static class Letters
{
    private const int MostOfLine = 200;

    /// <summary>In quotation marks, and only its beginning where it is long.</summary>
    public static string Quoted(string text) => Quote.Of(Seen(text));

    /// <summary>A number or a word as it is, anything else in quotation marks.</summary>
    public static string Shown(string text) =>
        text.Length is > 0 and < 24 && text.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or ',' or '-' or ':')
            ? text
            : Quoted(text);

    /// <summary>As much of a line as somebody needs to find it again.</summary>
    public static string Line(string text)
    {
        var seen = Spacing.Collapse(Seen(text));
        return seen.Length <= MostOfLine ? $"'{seen}'" : $"'{Seen(seen[..MostOfLine])}…'";
    }

    private static string Seen(string text) =>
        string.Concat(
            text.Take(2000)
                .Select(c =>
                    char.IsControl(c) || char.IsSurrogate(c) ? ' '
                    : UnseenLetters.Contains(c) || ControlCharacters.Contains(c) ? '?'
                    : c
                )
        );
}
