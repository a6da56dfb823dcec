using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>What a style says once comments and escapes are gone, for whoever looks for addresses in it.</summary>
internal static partial class StyleText
{
    [GeneratedRegex(
        @"\\(?:(?<code>[0-9a-fA-F]{1,6})(?:\r\n|\s)?|(?<letter>[^\n\r\f0-9a-fA-F])|(?<end>\r\n|[\n\r\f]))",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Escape();

    /// <summary>A text with every escape of CSS undone: <c>\75rl(</c> is <c>url(</c>, and the end of a line that is escaped is
    /// nothing.</summary>
    public static string Unescaped(string text) =>
        text.Contains('\\', StringComparison.Ordinal) ? Escape().Replace(text, Letter) : text;

    public static string WithoutComments(string style)
    {
        if (!style.Contains("/*", StringComparison.Ordinal))
            return style;
        var kept = new StringBuilder(style.Length);
        foreach (var token in CssTokens.Of(style))
            kept.Append(token.Kind == CssKind.Comment ? " " : token.In(style));
        return kept.ToString();
    }

    /// <summary>The place of the bracket that closes what begins there; the length where none does.</summary>
    public static int EndOf(string value, int from)
    {
        var depth = 1;
        for (var i = from; i < value.Length; i++)
        {
            depth += value[i] switch
            {
                '(' => 1,
                ')' => -1,
                _ => 0,
            };
            if (depth == 0)
                return i;
        }

        return value.Length;
    }

    private static string Letter(Match escape)
    {
        if (escape.Groups["end"].Success)
            return "";
        if (!escape.Groups["code"].Success)
            return escape.Groups["letter"].Value;
        var code = int.Parse(escape.Groups["code"].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return code is 0 or > 0x10FFFF or (>= 0xD800 and <= 0xDFFF) ? "\uFFFD" : char.ConvertFromUtf32(code);
    }
}
