using System.Text.RegularExpressions;

namespace Gradus.Tests.Auditing.Pages.Trees;

/// <summary>Pages as nobody writes them: cut, doubled, swapped and filled up at random.</summary>
internal static partial class PageMutants
{
    public static readonly string[] Kinds =
    [
        "letters cut",
        "letters doubled",
        "a letter put in",
        "a tag left out",
        "a tag doubled",
        "two tags swapped",
        "a tag moved",
        "a tag put in",
        "a pair put round",
        "an element cut",
        "a piece of another page",
    ];

    private static readonly string[] Letters =
    [
        .. "<>/&;\"'= \n\t-!#x1Aé\0\r\f\u00a0\u00ad\u200b\ufeff\ufffd".Select(c => c.ToString()),
        "<!--",
        "-->",
        "<!",
        "<?",
        "</",
        "/>",
        "&#0;",
        "&#x41;",
        "&amp",
        "&notin;",
        "&nbsp;",
        "\ud83d\ude00",
        "\ud83d",
        "]]>",
        "<![CDATA[",
    ];

    private static readonly string[] Names =
    [
        .. (
            "a b i em strong span p div section main li ul ol dl dt dd table thead tbody tfoot tr td th "
            + "caption h1 h3 select option optgroup button form label input br hr img svg rect path title "
            + "style script textarea pre template details summary dialog body head html frameset col colgroup "
            + "nobr font center math foreignObject desc iframe noscript video source object ruby rt image "
            + "plaintext xmp listing marquee applet menu search hgroup abbr time fieldset legend progress"
        ).Split(' '),
    ];

    [GeneratedRegex("</?[a-zA-Z][^<>]*>")]
    private static partial Regex Tags();

    public static string Of(string page, string other, string kind, Chance chance)
    {
        var tags = Tags().Matches(page);
        var (one, two) = (Tag(), Tag());
        var (at, length) = (chance.Below(page.Length), 1 + chance.Below(chance.Below(4) == 0 ? 400 : 6));
        length = Math.Min(length, page.Length - at);
        var name = Names[chance.Below(Names.Length)];
        return kind switch
        {
            "letters cut" => page.Remove(at, length),
            "letters doubled" => page.Insert(at, page.Substring(at, length)),
            "a letter put in" => page.Insert(at, Letters[chance.Below(Letters.Length)]),
            "a tag left out" => page.Remove(one.Index, one.Length),
            "a tag doubled" => page.Insert(one.Index, one.Value),
            "two tags swapped" when one.Index + one.Length <= two.Index => string.Concat(
                page[..one.Index],
                two.Value,
                page[(one.Index + one.Length)..two.Index],
                one.Value,
                page[(two.Index + two.Length)..]
            ),
            "two tags swapped" or "a tag moved" => page.Insert(two.Index, one.Value),
            "a tag put in" => page.Insert(one.Index, $"<{(chance.Below(2) == 0 ? "/" : "")}{name}>"),
            "a pair put round" => page.Insert(one.Index + one.Length, $"</{name}>").Insert(one.Index, $"<{name}>"),
            "an element cut" when one.Index < two.Index => page[..one.Index] + page[two.Index..],
            "an element cut" => page.Remove(one.Index, one.Length),
            "a piece of another page" => page.Insert(one.Index, Piece()),
            _ => throw new ArgumentException(kind),
        };

        Match Tag() => tags[chance.Below(tags.Count)];

        string Piece()
        {
            var (from, count) = (chance.Below(other.Length), chance.Below(300));
            return other.Substring(from, Math.Min(count, other.Length - from));
        }
    }
}
