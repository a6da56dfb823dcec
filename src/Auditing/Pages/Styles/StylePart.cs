using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>What stands in a style, read as CSS Syntax 3 has it. The library we have for styles drops what it does not know, such
/// as a colour that is newer than it.</summary>
internal abstract partial record StylePart
{
    /// <param name="Value">Without "!important".</param>
    public sealed record Declared(string Name, string Value, bool IsImportant) : StylePart;

    /// <param name="Head">A selector, or what an at-rule says before its bracket.</param>
    public sealed record Block(string Head, IReadOnlyList<StylePart> Inside) : StylePart;

    /// <summary>An at-rule with no block: "@import url(a.css)".</summary>
    public sealed record Statement(string Head) : StylePart;

    private const int DepthLimit = 50;

    [GeneratedRegex(@"\s*!\s*important\s*\z", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Important();

    [GeneratedRegex(
        @"\\(?:(?<code>[0-9a-fA-F]{1,6})(?:\r\n|\s)?|(?<letter>[^\n\r\f0-9a-fA-F])|(?<end>\r\n|[\n\r\f]))",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Escape();

    public static IReadOnlyList<StylePart> In(string style)
    {
        var at = 0;
        return Read(WithoutComments(style), ref at, 0);
    }

    /// <summary>A text with every escape of CSS undone: <c>\75rl(</c> is <c>url(</c>, and the end of a line that is escaped is
    /// nothing.</summary>
    public static string Unescaped(string text) =>
        text.Contains('\\', StringComparison.Ordinal) ? Escape().Replace(text, Letter) : text;

    private static string Letter(Match escape)
    {
        if (escape.Groups["end"].Success)
            return "";
        if (!escape.Groups["code"].Success)
            return escape.Groups["letter"].Value;
        var code = int.Parse(escape.Groups["code"].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return code is 0 or > 0x10FFFF or (>= 0xD800 and <= 0xDFFF) ? "\uFFFD" : char.ConvertFromUtf32(code);
    }

    private static List<StylePart> Read(string style, ref int at, int depth)
    {
        var parts = new List<StylePart>();
        while (at < style.Length)
        {
            var begun = at;
            var end = EndOfHead(style, at);
            var head = style[begun..end].Trim();
            at = end + 1;
            var sign = end < style.Length ? style[end] : '}';
            if (sign == '{' && depth < DepthLimit)
                parts.Add(new Block(head, Read(style, ref at, depth + 1)));
            else if (head.Length > 0 && Said(head) is { } said)
                parts.Add(said);
            if (sign == '}' && depth > 0)
                return parts;
        }

        return parts;
    }

    private static StylePart? Said(string head)
    {
        if (head.StartsWith('@'))
            return new Statement(head);
        var colon = head.IndexOf(':', StringComparison.Ordinal);
        if (colon < 1)
            return null;
        var name = Unescaped(head[..colon].Trim());
        var value = Unescaped(head[(colon + 1)..].Trim());
        var important = Important().Match(value);
        return new Declared(
            name.StartsWith("--", StringComparison.Ordinal) ? name : name.ToLowerInvariant(),
            important.Success ? value[..important.Index] : value,
            important.Success
        );
    }

    /// <summary>Where ';', '{' or '}' stands that ends what begins there: in no quotes and no round or square brackets.</summary>
    private static int EndOfHead(string style, int from)
    {
        var depth = 0;
        for (var i = from; i < style.Length; i++)
        {
            switch (style[i])
            {
                case '\\':
                    i++;
                    break;
                case '"' or '\'':
                    i = EndOfQuote(style, i);
                    break;
                case '(' or '[':
                    depth++;
                    break;
                case ')' or ']':
                    depth = Math.Max(0, depth - 1);
                    break;
                case '{' or '}':
                    return i;
                case ';' when depth == 0:
                    return i;
                default:
                    break;
            }
        }

        return style.Length;
    }

    /// <summary>The closing quote, or the end of the line, where an unclosed text ends.</summary>
    private static int EndOfQuote(string style, int from)
    {
        for (var i = from + 1; i < style.Length; i++)
        {
            if (style[i] == '\\')
                i++;
            else if (style[i] == style[from] || style[i] is '\n' or '\r' or '\f')
                return i;
        }

        return style.Length;
    }

    public static string WithoutComments(string style)
    {
        if (!style.Contains("/*", StringComparison.Ordinal))
            return style;
        var kept = new StringBuilder(style.Length);
        for (var i = 0; i < style.Length; i++)
        {
            var until =
                style[i] is '"' or '\'' ? Math.Min(EndOfQuote(style, i), style.Length - 1)
                : style[i] == '\\' ? Math.Min(i + 1, style.Length - 1)
                : i;
            if (style[i] == '/' && i + 1 < style.Length && style[i + 1] == '*')
            {
                var end = style.IndexOf("*/", i + 2, StringComparison.Ordinal);
                kept.Append(' ');
                i = end < 0 ? style.Length : end + 1;
                continue;
            }

            kept.Append(style, i, until - i + 1);
            i = until;
        }

        return kept.ToString();
    }
}
