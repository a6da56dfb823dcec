using System.Globalization;
using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>What the text of a style, a script or a drawing asks for.</summary>
internal static partial class Asked
{
    [GeneratedRegex("""url\(\s*(?:"(?<a>[^"]*)"|'(?<a>[^']*)'|(?<a>[^)\s]*))\s*\)|@import\s*(?:"(?<a>[^"]*)"|'(?<a>[^']*)')|["'(]\s*(?<a>(?:https?:|ftp:)?//[^"')\s]+)""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex StyleAddress();

    [GeneratedRegex(@"\\(?:(?<code>[0-9a-fA-F]{1,6})\s?|(?<letter>[^\n]))", RegexOptions.CultureInvariant)]
    private static partial Regex StyleEscape();

    [GeneratedRegex(@"\b(?<word>fetch|XMLHttpRequest|WebSocket|EventSource|sendBeacon|RTCPeerConnection|importScripts|WebTransport)\b|\b(?<word>import)\s*\(", RegexOptions.CultureInvariant)]
    private static partial Regex NetworkCall();

    [GeneratedRegex("""["'`]\s*(?<a>(?:(?:https?|wss?):)?//(?!www\.w3\.org/)[^"'`\s]+)""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex ScriptAddress();

    [GeneratedRegex("""\b(?:href|src)\s*=\s*(?:"(?<a>[^"]*)"|'(?<a>[^']*)')""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex DrawingAddress();

    [GeneratedRegex("""\bxmlns(?::\w+)?\s*=\s*(?:"[^"]*"|'[^']*')""", RegexOptions.CultureInvariant)]
    private static partial Regex Namespace();

    /// <summary>The addresses that a stylesheet asks for, in comments too: what a comment is depends on who reads it.</summary>
    public static IEnumerable<string> InStyle(string style) => StyleAddress().Matches(StyleEscape().Replace(style, Letter)).Select(m => m.Groups["a"].Value).Distinct();

    /// <summary>The words in a script that reach for the network, and the addresses of others.</summary>
    public static IEnumerable<string> InScript(string script) =>
        NetworkCall().Matches(script).Select(m => m.Groups["word"].Value + "()").Concat(ScriptAddress().Matches(script).Select(m => m.Groups["a"].Value)).Distinct();

    /// <summary>The addresses that an SVG file asks for.</summary>
    public static IEnumerable<string> InDrawing(string drawing) =>
        DrawingAddress().Matches(drawing).Select(m => m.Groups["a"].Value).Concat(InStyle(Namespace().Replace(drawing, ""))).Distinct();

    private static string Letter(Match escape)
    {
        if (!escape.Groups["code"].Success) return escape.Groups["letter"].Value;
        var code = int.Parse(escape.Groups["code"].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return code is 0 or > 0x10FFFF or (>= 0xD800 and <= 0xDFFF) ? "\uFFFD" : char.ConvertFromUtf32(code);
    }
}
