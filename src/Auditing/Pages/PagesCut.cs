using System.Text;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The text of one page that holds all others, cut where each of them begins.</summary>
internal sealed class PagesCut
{
    private readonly string html;
    private readonly (string Path, int From)[] parts;
    private readonly int end;
    private readonly List<(int From, int End)> insideHead;
    private readonly List<(int From, int End)> insideFoot;

    /// <param name="parts">Where each begins; one at least.</param>
    public PagesCut(string html, (string Path, int From)[] parts)
    {
        (this.html, this.parts) = (html, parts);
        end = EndOf(html, parts[^1].From);
        (insideHead, insideFoot) = (Insides(Head), Insides(Foot));
    }

    /// <summary>How many styles and scripts stand before and behind all pages.</summary>
    public int Bared => insideHead.Count + insideFoot.Count;

    /// <summary>What stands before all pages.</summary>
    private ReadOnlySpan<char> Head => html.AsSpan(0, parts[0].From);

    private ReadOnlySpan<char> Foot => html.AsSpan(end);

    /// <summary>Each of them as a page to be parsed: what belongs to another is blanked out, and every line and column stays
    /// where it is.</summary>
    public IEnumerable<Page> Apart()
    {
        var (bareHead, bareFoot) = (Bare(Head, insideHead, Blank), Bare(Foot, insideFoot, Blank));
        return parts.Select(
            (part, number) =>
                Of(
                    number,
                    number == 0 ? Head : bareHead + Blank(html.AsSpan(parts[0].From, part.From - parts[0].From)),
                    string.Concat(Blank(html.AsSpan(Until(number), end - Until(number))), number == 0 ? Foot : bareFoot)
                )
        );
    }

    /// <summary>Each of them with no more than what it says.</summary>
    public IEnumerable<Page> Bare()
    {
        var (bareHead, bareFoot) = (Bare(Head, insideHead, _ => ""), Bare(Foot, insideFoot, _ => ""));
        return parts.Select((_, number) => number == 0 ? Of(0, Head, Foot) : Of(number, bareHead, bareFoot));
    }

    private Page Of(int number, ReadOnlySpan<char> before, ReadOnlySpan<char> behind) =>
        new(parts[number].Path, string.Concat(before, html.AsSpan(parts[number].From, LengthOf(number)), behind));

    private int LengthOf(int number) => Until(number) - parts[number].From;

    private int Until(int number) => number + 1 < parts.Length ? parts[number + 1].From : end;

    /// <summary>The same with something else in its styles and scripts.</summary>
    private static string Bare(ReadOnlySpan<char> html, List<(int From, int End)> insides, Func<string, string> instead)
    {
        var bare = new StringBuilder();
        var done = 0;
        foreach (var (from, end) in insides)
        {
            bare.Append(html[done..from]).Append(instead(html[from..end].ToString()));
            done = end;
        }

        return bare.Append(html[done..]).ToString();
    }

    /// <summary>Where the text of each style and script begins and ends. Looked for by hand: a pattern that asks for the end tag
    /// of the same name goes through them letter by letter.</summary>
    private static List<(int From, int End)> Insides(ReadOnlySpan<char> html)
    {
        var all = new List<(int, int)>();
        for (var at = html.IndexOf('<'); at >= 0; at = NextOf("<", html, at + 1))
            if (Inside(html, at) is { } inside)
            {
                all.Add(inside);
                at = inside.End;
            }

        return all;
    }

    /// <summary>Where the text of a style or a script begins and ends that begins there; null where none does.</summary>
    private static (int From, int End)? Inside(ReadOnlySpan<char> html, int at)
    {
        foreach (var name in (ReadOnlySpan<string>)["style", "script"])
        {
            var behind = at + 1 + name.Length;
            if (
                !html[(at + 1)..].StartsWith(name, StringComparison.OrdinalIgnoreCase)
                || (behind < html.Length && (char.IsLetterOrDigit(html[behind]) || html[behind] == '_'))
            )
                continue;
            var from = NextOf(">", html, behind) + 1;
            var end = from > 0 ? EndTagOf(name, html, from) : -1;
            return end < 0 ? null : (from, end);
        }

        return null;
    }

    /// <summary>Where the next end tag of that name begins; -1 where there is none.</summary>
    private static int EndTagOf(string name, ReadOnlySpan<char> html, int from)
    {
        var at = NextOf("</", html, from);
        while (at >= 0 && !html[(at + 2)..].StartsWith(name, StringComparison.OrdinalIgnoreCase))
            at = NextOf("</", html, at + 2);
        return at;
    }

    private static int NextOf(string letters, ReadOnlySpan<char> html, int from) =>
        html[from..].IndexOf(letters) is >= 0 and var found ? from + found : -1;

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
