namespace Gradus.Auditing;

/// <summary>A stylesheet → its tokens, as CSS Syntax Level 3, 4.3 cuts them. Nothing is dropped, not even what a
/// browser drops, so that whatever is not understood can be refused. Neither is anything decoded: an escape is seen as it is
/// written.</summary>
internal ref struct CssTokens
{
    private const char End = '\uFFFF';

    private readonly ReadOnlySpan<char> css;
    private int at;

    private CssTokens(string text) => css = text;

    public static List<CssToken> Of(string css)
    {
        var tokens = new List<CssToken>();
        var reader = new CssTokens(css);
        while (reader.at < css.Length)
        {
            var from = reader.at;
            tokens.Add(new(reader.Next(), from, reader.at));
        }

        return tokens;
    }

    /// <summary>The sign that many places further on; one that is no sign behind the end.</summary>
    private readonly char Peek(int ahead = 0) => at + ahead < css.Length ? css[at + ahead] : End;

    private CssKind Next()
    {
        var sign = Peek();
        if (IsBlank(sign))
            return Blanks();
        if (sign == '/' && Peek(1) == '*')
            return Comment();
        if (sign is '"' or '\'')
            return Text(sign);
        if (StartsNumber())
            return Numeric();
        if (sign == '-' && Peek(1) == '-' && Peek(2) == '>')
            return Took(3, CssKind.Cdc);
        if (StartsName(0))
            return NameLike();
        if (sign == '#' && (IsName(Peek(1)) || IsEscape(1)))
        {
            at++;
            Name();
            return CssKind.Hash;
        }

        if (sign == '@' && StartsName(1))
        {
            at++;
            Name();
            return CssKind.AtKeyword;
        }

        if (sign == '<' && Peek(1) == '!' && Peek(2) == '-' && Peek(3) == '-')
            return Took(4, CssKind.Cdo);
        return Took(
            1,
            sign switch
            {
                '(' => CssKind.OpenRound,
                ')' => CssKind.CloseRound,
                '[' => CssKind.OpenSquare,
                ']' => CssKind.CloseSquare,
                '{' => CssKind.OpenCurly,
                '}' => CssKind.CloseCurly,
                ':' => CssKind.Colon,
                ';' => CssKind.Semicolon,
                ',' => CssKind.Comma,
                _ => CssKind.Delim,
            }
        );
    }

    private CssKind Took(int signs, CssKind kind)
    {
        at += signs;
        return kind;
    }

    private CssKind Blanks()
    {
        while (IsBlank(Peek()))
            at++;
        return CssKind.Blank;
    }

    private CssKind Comment()
    {
        var end = css[(at + 2)..].IndexOf("*/");
        at = end < 0 ? css.Length : at + 2 + end + 2;
        return CssKind.Comment;
    }

    /// <summary>A bad one ends before the end of its line.</summary>
    private CssKind Text(char quote)
    {
        for (at++; at < css.Length; at++)
        {
            if (css[at] == quote)
            {
                at++;
                return CssKind.Text;
            }

            if (IsLineEnd(css[at]))
                return CssKind.BadText;
            if (css[at] != '\\' || at + 1 >= css.Length)
                continue;
            if (IsLineEnd(css[at + 1]))
                at += css[at + 1] == '\r' && Peek(2) == '\n' ? 2 : 1;
            else
            {
                Escape();
                at--;
            }
        }

        return CssKind.Text;
    }

    private CssKind Numeric()
    {
        Number();
        if (StartsName(0))
        {
            Name();
            return CssKind.Dimension;
        }

        return Peek() == '%' ? Took(1, CssKind.Percentage) : CssKind.Number;
    }

    private void Number()
    {
        if (Peek() is '+' or '-')
            at++;
        Digits();
        if (Peek() == '.' && char.IsAsciiDigit(Peek(1)))
        {
            at++;
            Digits();
        }

        if (Peek() is not ('e' or 'E'))
            return;
        var sign = Peek(1) is '+' or '-' ? 1 : 0;
        if (!char.IsAsciiDigit(Peek(1 + sign)))
            return;
        at += 1 + sign;
        Digits();
    }

    private void Digits()
    {
        while (char.IsAsciiDigit(Peek()))
            at++;
    }

    private CssKind NameLike()
    {
        var from = at;
        Name();
        if (Peek() != '(')
            return CssKind.Ident;
        var isUrl = css[from..at].Equals("url", StringComparison.OrdinalIgnoreCase);
        at++;
        if (!isUrl)
            return CssKind.Function;
        var inside = at;
        while (IsBlank(Peek()))
            at++;
        if (Peek() is not ('"' or '\''))
            return Url();
        at = inside;
        return CssKind.Function;
    }

    private CssKind Url()
    {
        while (at < css.Length)
        {
            var sign = css[at];
            if (sign == ')')
                return Took(1, CssKind.Url);
            if (IsBlank(sign))
            {
                Blanks();
                if (at < css.Length && css[at] != ')')
                    return BadUrl();
            }
            else if (sign is '"' or '\'' or '(' || IsUnprintable(sign))
                return BadUrl();
            else if (sign != '\\')
                at++;
            else if (IsEscape(0))
                Escape();
            else
                return BadUrl();
        }

        return CssKind.Url;
    }

    private CssKind BadUrl()
    {
        while (at < css.Length)
        {
            if (css[at] == ')')
                return Took(1, CssKind.BadUrl);
            if (IsEscape(0))
                Escape();
            else
                at++;
        }

        return CssKind.BadUrl;
    }

    private void Name()
    {
        while (at < css.Length)
        {
            if (IsName(css[at]))
                at++;
            else if (IsEscape(0))
                Escape();
            else
                return;
        }
    }

    private void Escape()
    {
        at++;
        if (!char.IsAsciiHexDigit(Peek()))
        {
            at = Math.Min(css.Length, at + (char.IsSurrogatePair(Peek(), Peek(1)) ? 2 : 1));
            return;
        }

        for (var digits = 0; digits < 6 && char.IsAsciiHexDigit(Peek()); digits++)
            at++;
        if (Peek() == '\r' && Peek(1) == '\n')
            at += 2;
        else if (IsBlank(Peek()))
            at++;
    }

    private readonly bool StartsNumber()
    {
        var ahead = Peek() is '+' or '-' ? 1 : 0;
        return char.IsAsciiDigit(Peek(ahead)) || (Peek(ahead) == '.' && char.IsAsciiDigit(Peek(ahead + 1)));
    }

    private readonly bool StartsName(int ahead) =>
        Peek(ahead) == '-'
            ? IsNameStart(Peek(ahead + 1)) || Peek(ahead + 1) == '-' || IsEscape(ahead + 1)
            : IsNameStart(Peek(ahead)) || IsEscape(ahead);

    private readonly bool IsEscape(int ahead) =>
        Peek(ahead) == '\\' && at + ahead + 1 < css.Length && !IsLineEnd(Peek(ahead + 1));

    private static bool IsLineEnd(char sign) => sign is '\n' or '\r' or '\f';

    private static bool IsBlank(char sign) => sign is ' ' or '\t' or '\n' or '\r' or '\f';

    private static bool IsNameStart(char sign) => sign != End && (char.IsAsciiLetter(sign) || sign is '_' or >= '\u0080');

    private static bool IsName(char sign) => IsNameStart(sign) || char.IsAsciiDigit(sign) || sign == '-';

    private static bool IsUnprintable(char sign) => sign is <= '\u0008' or '\u000B' or (>= '\u000E' and <= '\u001F') or '\u007F';
}
