using System.Text;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The text of one page that holds all others, cut where each of them begins.</summary>
internal sealed class PagesCut
{
    private readonly string html;
    private readonly (string Path, int From)[] parts;
    private readonly int end;
    private readonly string head;
    private readonly string foot;
    private readonly (int From, int End)[] insideHead;
    private readonly (int From, int End)[] insideFoot;

    /// <param name="parts">Where each begins; one at least.</param>
    public PagesCut(string html, (string Path, int From)[] parts)
    {
        (this.html, this.parts) = (html, parts);
        end = EndOf(html, parts[^1].From);
        (head, foot) = (html[..parts[0].From], html[end..]);
        (insideHead, insideFoot) = ([.. Insides(head)], [.. Insides(foot)]);
    }

    /// <summary>How many styles and scripts stand before and behind all pages.</summary>
    public int Bared => insideHead.Length + insideFoot.Length;

    /// <summary>Each of them as a page to be parsed: what belongs to another is blanked out, and every line and column stays
    /// where it is.</summary>
    public IEnumerable<Page> Apart()
    {
        var first = parts[0].From;
        var (bareHead, bareFoot) = (Bare(head, insideHead, Blank), Bare(foot, insideFoot, Blank));
        return parts.Select(
            (part, number) =>
                Of(
                    number,
                    (number == 0 ? head : bareHead) + Blank(html.AsSpan(first, part.From - first)),
                    Blank(html.AsSpan(Until(number), end - Until(number))) + (number == 0 ? foot : bareFoot)
                )
        );
    }

    /// <summary>Each of them with no more than what it says.</summary>
    public IEnumerable<Page> Bare()
    {
        var (bareHead, bareFoot) = (Bare(head, insideHead, _ => "") + "\n", "\n" + Bare(foot, insideFoot, _ => ""));
        return parts.Select(
            (_, number) => number == 0 ? Of(0, head + "\n", "\n" + foot) : Of(number, bareHead, bareFoot)
        );
    }

    private Page Of(int number, string before, string behind) =>
        new(parts[number].Path, string.Concat(before, html.AsSpan(parts[number].From, LengthOf(number)), behind));

    private int LengthOf(int number) => Until(number) - parts[number].From;

    private int Until(int number) => number + 1 < parts.Length ? parts[number + 1].From : end;

    /// <summary>The same with something else in its styles and scripts.</summary>
    private static string Bare(string html, (int From, int End)[] insides, Func<string, string> instead)
    {
        var bare = new StringBuilder(html.Length);
        var done = 0;
        foreach (var (from, end) in insides)
        {
            bare.Append(html, done, from - done).Append(instead(html[from..end]));
            done = end;
        }

        return bare.Append(html, done, html.Length - done).ToString();
    }

    /// <summary>Where the text of each style and script begins and ends. Looked for by hand: a pattern that asks for the end tag
    /// of the same name goes through them letter by letter.</summary>
    private static IEnumerable<(int From, int End)> Insides(string html)
    {
        for (var at = html.IndexOf('<', StringComparison.Ordinal); at >= 0; at = html.IndexOf('<', at + 1))
            if (Inside(html, at) is { } inside)
            {
                yield return inside;
                at = inside.End;
            }
    }

    /// <summary>Where the text of a style or a script begins and ends that begins there; null where none does.</summary>
    private static (int From, int End)? Inside(string html, int at)
    {
        foreach (var name in (ReadOnlySpan<string>)["style", "script"])
        {
            var behind = at + 1 + name.Length;
            if (
                !html.AsSpan(at + 1).StartsWith(name, StringComparison.OrdinalIgnoreCase)
                || (behind < html.Length && (char.IsLetterOrDigit(html[behind]) || html[behind] == '_'))
            )
                continue;
            var from = html.IndexOf('>', behind) + 1;
            var end = from > 0 ? EndTagOf(name, html, from) : -1;
            return end < 0 ? null : (from, end);
        }

        return null;
    }

    /// <summary>Where the next end tag of that name begins; -1 where there is none.</summary>
    private static int EndTagOf(string name, string html, int from)
    {
        var at = html.IndexOf("</", from, StringComparison.Ordinal);
        while (at >= 0 && !html.AsSpan(at + 2).StartsWith(name, StringComparison.OrdinalIgnoreCase))
            at = html.IndexOf("</", at + 2, StringComparison.Ordinal);
        return at;
    }

    /// <summary>Behind the last part: where its section ends, counted by the sections inside.</summary>
    private static int EndOf(string html, int from)
    {
        var depth = 0;
        for (var at = html.IndexOf('<', from); at >= 0; at = html.IndexOf('<', at + 1))
        {
            if (Is("<section", at))
                depth++;
            else if (Is("</section>", at) && --depth == 0)
                return at + "</section>".Length;
        }

        return html.Length;

        bool Is(string tag, int at) => html.AsSpan(at).StartsWith(tag, StringComparison.Ordinal);
    }

    /// <summary>The ends of its lines, and its last line as blanks.</summary>
    private static string Blank(string text) => Blank(text.AsSpan());

    private static string Blank(ReadOnlySpan<char> text) =>
        new string('\n', text.Count('\n')) + new string(' ', text.Length - text.LastIndexOf('\n') - 1);
}
