using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Gradus.Reading;

/// <summary>A text as it was written, with blanks in the place of what is not looked at, so that every place in it is a place in
/// the file.</summary>
/// <param name="Letters">What the parser left as plain letters, without those that are escaped.</param>
/// <param name="Shown">All that comes out on the page: plain letters, code and HTML.</param>
internal sealed record LaidOut(string Letters, string Shown)
{
    private readonly int[] lineStarts = [0, .. Letters.Index().Where(c => c.Item == '\n').Select(c => c.Index + 1)];

    public static LaidOut Of(string markdown, MarkdownDocument document)
    {
        var escaped = Escaped(markdown);
        var letters = Blank(markdown);
        var shown = Blank(markdown);
        foreach (var part in document.Descendants())
        {
            if (!IsFootnote(part) && !IsShown(part))
                continue;
            for (var at = Math.Max(0, part.Span.Start); at <= part.Span.End && at < markdown.Length; at++)
            {
                if (IsFootnote(part) || (!escaped[at] && part is LiteralInline or DelimiterInline))
                    letters[at] = markdown[at];
                shown[at] = markdown[at];
            }
        }

        return new(new(letters), new(shown));
    }

    /// <summary>A mark of a footnote, whose text stands where CommonMark sees the address of a link.</summary>
    public static bool IsFootnote(MarkdownObject part) => part is LinkInline { Label: ['^', ..] };

    /// <summary>The line, from 0, and the column, from 1.</summary>
    public (int Line, int Column) Place(int at)
    {
        var found = Array.BinarySearch(lineStarts, at);
        var line = found < 0 ? ~found - 1 : found;
        return (line, at - lineStarts[line] + 1);
    }

    private static bool IsShown(MarkdownObject part) =>
        part is LiteralInline or DelimiterInline or CodeInline or HtmlInline or AutolinkInline or CodeBlock or HtmlBlock;

    private static char[] Blank(string markdown) => [.. markdown.Select(c => c == '\n' ? c : ' ')];

    /// <summary>Which signs are taken as they are, and the strokes before them.</summary>
    private static bool[] Escaped(string markdown)
    {
        var escaped = new bool[markdown.Length];
        for (var at = 0; at + 1 < markdown.Length; at++)
            if (markdown[at] == '\\' && (char.IsPunctuation(markdown[at + 1]) || char.IsSymbol(markdown[at + 1])))
                (escaped[at], escaped[++at]) = (true, true);
        return escaped;
    }
}
