using AngleSharp.Html.Parser;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>One page that holds all others → each of them, as though it stood alone: what belongs to another is blanked out, and
/// every line and column stays where it is.</summary>
internal static class PagesInOne
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
        var end = EndOf(whole.Html, parts[^1].From);
        return parts
            .Select(
                (part, index) =>
                    new Page(
                        part.Path,
                        Only(whole.Html, part.From, index + 1 < parts.Length ? parts[index + 1].From : end, parts[0].From, end)
                    )
            )
            .ToSeries();
    }

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

    private static string Only(string html, int from, int until, int first, int end) =>
        html[..first]
        + Blank(html.AsSpan(first, from - first))
        + html[from..until]
        + Blank(html.AsSpan(until, end - until))
        + html[end..];

    /// <summary>The ends of its lines, and its last line as blanks.</summary>
    private static string Blank(ReadOnlySpan<char> text) =>
        new string('\n', text.Count('\n')) + new string(' ', text.Length - text.LastIndexOf('\n') - 1);
}
