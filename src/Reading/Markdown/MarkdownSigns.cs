using System.Text.RegularExpressions;

namespace Gradus.Reading;

/// <summary>Markdown that is written in other places and not known here: the page would show its signs. Only what the parser left
/// as plain letters is looked at, so that code, addresses and escaped signs stay as they are.</summary>
internal static partial class MarkdownSigns
{
    private static readonly (Regex Shape, string Message, string Help)[] Kinds =
    [
        (
            Table(),
            "This is a table, and the page would show its lines as signs.",
            "Write each row as an item of a list: - Week 1: 2 sets."
        ),
        (Struck(), "Struck text would stand on the page with its signs.", "Take out what no longer counts."),
        (
            Footnote(),
            "A footnote would stand on the page with its signs.",
            "Write it in round brackets where it belongs, or as a sentence of its own."
        ),
        (
            Box(),
            "A box to tick would stand on the page as signs.",
            "Begin the line with a hyphen and a blank alone: - Rest. The page has its own place to tick."
        ),
        (
            Tight(),
            "A # at the beginning of a line is no heading without a blank.",
            "Put a blank behind the #, or take the # out."
        ),
        (
            Marked(),
            "Marked, raised or lowered text would stand on the page with its signs.",
            "Write *word* to stress something, and 10 m² with the letter itself."
        ),
        (
            LinkApart(),
            "This is not yet a link, and the page would show its brackets.",
            "Write [text](address), in this order and with no blank between the brackets."
        ),
        (
            Frame(),
            "A frame or a list of contents would stand on the page as signs.",
            "Take the signs out, and write the text as a paragraph."
        ),
        (Smiley(), "A picture sign by its name would stand on the page as it is.", "Put in the sign itself, or take it out."),
        (
            Definition(),
            "A colon at the beginning of a line would stand on the page as it is.",
            "Write the word and what it means in one line: **Heel**: keep it down."
        ),
        (
            Bullet(),
            "The page would run this line into the one before.",
            "Begin each item of a list with a hyphen and a blank: - Rest."
        ),
        (
            Lone(),
            "This sign has no fellow, and the page would show it.",
            "Put it before and behind the words, with no blank inside: **words**. Write a \\ before it to show the sign itself."
        ),
    ];

    [GeneratedRegex(
        @"^ *(?:\|.*|\+[-=]{2,}\+.*|(?=.*\|)\S.*\n *:?-+:? *(?:\| *:?-+:? *)+)(?:\n *\S.*)*",
        RegexOptions.CultureInvariant | RegexOptions.Multiline
    )]
    private static partial Regex Table();

    [GeneratedRegex(@"~~(?:(?!~~)[^\n])*~~|~~", RegexOptions.CultureInvariant)]
    private static partial Regex Struck();

    [GeneratedRegex(@"\[\^[^\]\n]*\]:?|\^\[", RegexOptions.CultureInvariant)]
    private static partial Regex Footnote();

    [GeneratedRegex(@"^ *\[[ xX]?\](?= |$)", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex Box();

    [GeneratedRegex(@"^ *#{1,6}[^\s#].*", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex Tight();

    [GeneratedRegex(
        @"==(?=\S)[^=\n]+==|\+\+(?=\S)[^+\n]+\+\+|\^[\p{L}\p{Nd}]+\^|(?<=\p{L})~[\p{L}\p{Nd}]+~",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Marked();

    [GeneratedRegex(
        @"\[\[[^\]\n]*\]\]|!\[|\[[^\]\n]+\] *\([^)\n]*\)|\[[^\]\n]+\]\[[^\]\n]*\]|\([^()\n]+\)\[[^\]\n]*\]|^ *\[[^\]\n]+\]: ",
        RegexOptions.CultureInvariant | RegexOptions.Multiline
    )]
    private static partial Regex LinkApart();

    [GeneratedRegex(
        @"^ *:::.*|\[![A-Za-z]+\]|\[(?:toc|TOC)\]|^ *\[\[_TOC_\]\]",
        RegexOptions.CultureInvariant | RegexOptions.Multiline
    )]
    private static partial Regex Frame();

    [GeneratedRegex(@"(?<![\p{L}\p{Nd}:]):[a-z][a-z_]+:(?![\p{L}\p{Nd}])", RegexOptions.CultureInvariant)]
    private static partial Regex Smiley();

    [GeneratedRegex(@"(?<=\S.*\n) *: +\S.*", RegexOptions.CultureInvariant)]
    private static partial Regex Definition();

    [GeneratedRegex(@"^ *[•◦▪‣●·⁃∙] *\S.*", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex Bullet();

    [GeneratedRegex(
        @"(?<!\S)[*_]{1,3}(?=[\p{L}\p{Nd}(\[""'])|(?<=[\p{L}\p{Nd}.,;:!?)\]""'])[*_]{1,3}(?![\p{L}\p{Nd}*_])"
            + @"|(?<!\*)\*\*(?!\*)|(?<=\p{Nd})\*(?=\p{Nd})|`+",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Lone();

    /// <summary>Says the first of each kind on a line; of two that overlap the one that stands earlier in the list.</summary>
    /// <param name="text">What the parser left as plain letters, in its place; all else is blank.</param>
    public static void Find(SourceFile sheet, int firstLine, LaidOut text)
    {
        var taken = new bool[text.Letters.Length];
        foreach (var (shape, message, help) in Kinds)
        {
            var lastLine = -1;
            foreach (Match match in shape.Matches(text.Letters))
            {
                if (taken.AsSpan(match.Index, match.Length).Contains(true))
                    continue;
                taken.AsSpan(match.Index, match.Length).Fill(true);
                var blanks = match.ValueSpan.IndexOfAnyExcept(' ');
                var (line, column) = text.Place(match.Index + blanks);
                if (line == lastLine)
                    continue;
                lastLine = line;
                var end = match.ValueSpan.IndexOf('\n');
                var marked = (end < 0 ? match.Length : end) - blanks;
                sheet.Fault(Faults.MarkdownNotKnown, sheet.At(firstLine + line, column), message, help, marked);
            }
        }
    }
}
