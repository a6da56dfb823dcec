namespace Gradus.Auditing;

/// <summary>The kinds of CSS Syntax Level 3, 4, with comments as a kind of their own.</summary>
internal enum CssKind
{
    Ident,
    Function,
    AtKeyword,
    Hash,
    Text,
    BadText,
    Url,
    BadUrl,
    Delim,
    Number,
    Percentage,
    Dimension,
    Blank,
    Cdo,
    Cdc,
    Colon,
    Semicolon,
    Comma,
    OpenSquare,
    CloseSquare,
    OpenRound,
    CloseRound,
    OpenCurly,
    CloseCurly,
    Comment,
}

/// <summary>A piece of a stylesheet; the pieces of a sheet joined are the sheet.</summary>
/// <param name="From">The first of its UTF-16 units.</param>
/// <param name="Until">Behind the last.</param>
internal readonly record struct CssToken(CssKind Kind, int From, int Until)
{
    public ReadOnlySpan<char> In(string css) => css.AsSpan(From, Until - From);

    public bool Is(string css, string text) => In(css).SequenceEqual(text);
}
