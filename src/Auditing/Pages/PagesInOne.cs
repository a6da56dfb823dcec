using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>One page that holds all others → each of them, as though it stood alone: what belongs to another is blanked out, and
/// every line and column stays where it is. The styles and scripts of all of them stay with the first alone, which has what is
/// said of them for the others: they are most of the file.</summary>
internal static partial class PagesInOne
{
    private static readonly HtmlParser Parser = new(new HtmlParserOptions { IsKeepingSourceReferences = true });

    /// <summary>The pages inside; none where the page has no parts that say which page they are.</summary>
    public static Series<Page> Of(Page whole)
    {
        var parts = Parser
            .ParseDocument(whole.Html)
            .QuerySelectorAll($"main > section[{PageData.Page}]")
            .Select(s => (Path: s.GetAttribute(PageData.Page) ?? "", From: (s.SourceReference?.Position.Position ?? 1) - 1))
            .OrderBy(p => p.From)
            .ToArray();
        if (parts.Length == 0)
            return [];
        var (first, end) = (parts[0].From, EndOf(whole.Html, parts[^1].From));
        var (head, foot) = (whole.Html[..first], whole.Html[end..]);
        var (bareHead, bareFoot) = (Bare(head), Bare(foot));
        return parts
            .Select(
                (part, index) =>
                {
                    var until = index + 1 < parts.Length ? parts[index + 1].From : end;
                    var inside =
                        Blank(whole.Html.AsSpan(first, part.From - first))
                        + whole.Html[part.From..until]
                        + Blank(whole.Html.AsSpan(until, end - until));
                    return new Page(part.Path, index == 0 ? head + inside + foot : bareHead + inside + bareFoot);
                }
            )
            .ToSeries();
    }

    /// <summary>The same without what stands in its styles and scripts.</summary>
    private static string Bare(string html) =>
        StyleOrScript().Replace(html, m => m.Groups["begin"].Value + Blank(m.Groups["text"].ValueSpan) + m.Groups["end"].Value);

    [GeneratedRegex(
        "(?<begin><(?<name>style|script)\\b[^>]*>)(?<text>.*?)(?<end></\\k<name>)",
        RegexOptions.IgnoreCase | RegexOptions.Singleline | RegexOptions.CultureInvariant
    )]
    private static partial Regex StyleOrScript();

    /// <summary>Behind the last part: where its section ends, counted by the sections inside.</summary>
    private static int EndOf(string html, int from)
    {
        var depth = 0;
        for (var at = from; at < html.Length; at++)
        {
            if (Is("<section", at))
                depth++;
            else if (Is("</section>", at) && --depth == 0)
                return at + "</section>".Length;
        }

        return html.Length;

        bool Is(string tag, int at) => string.CompareOrdinal(html, at, tag, 0, tag.Length) == 0;
    }

    /// <summary>The ends of its lines, and its last line as blanks.</summary>
    private static string Blank(ReadOnlySpan<char> text) =>
        new string('\n', text.Count('\n')) + new string(' ', text.Length - text.LastIndexOf('\n') - 1);
}
