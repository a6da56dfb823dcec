using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The text of one page that holds all others, cut where each of them begins.</summary>
internal sealed partial class PagesCut
{
    private readonly string html;
    private readonly (string Path, int From)[] parts;
    private readonly int end;
    private readonly string head;
    private readonly string foot;
    private readonly string bareHead;
    private readonly string bareFoot;

    /// <param name="parts">Where each begins; one at least.</param>
    public PagesCut(string html, (string Path, int From)[] parts)
    {
        (this.html, this.parts) = (html, parts);
        end = EndOf(html, parts[^1].From);
        (head, foot) = (html[..parts[0].From], html[end..]);
        (bareHead, bareFoot) = (Bare(head), Bare(foot));
    }

    /// <summary>How many styles and scripts stand before and behind all pages.</summary>
    public int Bared { get; private set; }

    /// <summary>Each of them as a page to be parsed: what belongs to another is blanked out, and every line and column stays where
    /// it is.</summary>
    public IEnumerable<Page> Apart()
    {
        var first = parts[0].From;
        return parts.Index().Select(part =>
            Of(
                part.Index,
                Blank(html.AsSpan(first, part.Item.From - first)),
                Blank(html.AsSpan(Until(part.Index), end - Until(part.Index)))
            )
        );
    }

    /// <summary>Each of them with no more than what it says.</summary>
    public IEnumerable<Page> Bare() => parts.Select((_, number) => Of(number, "\n", "\n"));

    private Page Of(int number, string before, string behind) =>
        new(
            parts[number].Path,
            string.Concat(
                [
                    number == 0 ? head : bareHead,
                    before,
                    html[parts[number].From..Until(number)],
                    behind,
                    number == 0 ? foot : bareFoot,
                ]
            )
        );

    private int Until(int number) => number + 1 < parts.Length ? parts[number + 1].From : end;

    /// <summary>The same without what stands in its styles and scripts.</summary>
    private string Bare(string html) =>
        StyleOrScript()
            .Replace(
                html,
                m =>
                {
                    Bared++;
                    return m.Groups["begin"].Value + Blank(m.Groups["text"].ValueSpan) + m.Groups["end"].Value;
                }
            );

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
