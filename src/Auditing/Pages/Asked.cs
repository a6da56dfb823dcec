using System.Text.Json;
using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>What the text of a style, a script or a drawing asks for.</summary>
internal static partial class Asked
{
    [GeneratedRegex(
        """url\(\s*(?:"(?<a>[^"]*)"|'(?<a>[^']*)'|(?<a>[^)\s]*))\s*\)"""
            + """|@import\s*(?:"(?<a>[^"]*)"|'(?<a>[^']*)')"""
            + """|["'(=]\s*(?<a>(?:[a-z][a-z0-9+.-]*:)?[/\\]{2}[^"')\s]+)""",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex StyleAddress();

    /// <summary>The functions of a style that take an address as a text: image-set("a.png" 1x).</summary>
    [GeneratedRegex(
        @"(?<![\w-])(?:src|image|(?:-webkit-)?image-set|cross-fade)\(",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex StyleFunction();

    [GeneratedRegex(
        """(?<kind>type\(\s*)?(?:"(?<a>[^"]*)"|'(?<a>[^']*)')""",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex StyleQuote();

    [GeneratedRegex(
        @"\b(?<word>fetch|XMLHttpRequest|WebSocket|EventSource|sendBeacon|RTCPeerConnection|importScripts|WebTransport)\b"
            + @"|\b(?<word>import)\s*\(",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex NetworkCall();

    [GeneratedRegex(
        """["'`]\s*(?<a>(?:(?:https?|wss?):)?//(?!www\.w3\.org/)[^"'`\s]+)""",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex ScriptAddress();

    [GeneratedRegex(
        """\b(?:href|src)\s*=\s*(?:"(?<a>[^"]*)"|'(?<a>[^']*)')""",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex DrawingAddress();

    [GeneratedRegex("""["'](?<a>[^"']*)["']""", RegexOptions.CultureInvariant)]
    private static partial Regex ManifestText();

    [GeneratedRegex("""\bxmlns(?::\w+)?\s*=\s*(?:"[^"]*"|'[^']*')""", RegexOptions.CultureInvariant)]
    private static partial Regex Namespace();

    /// <summary>The addresses that a stylesheet asks for, in comments too: what a comment is depends on who reads it.</summary>
    public static IEnumerable<string> InStyle(string style) =>
        new[] { style, StyleText.WithoutComments(style) }
            .Distinct(StringComparer.Ordinal)
            .Select(StyleText.Unescaped)
            .SelectMany(InPlain)
            .Distinct();

    private static IEnumerable<string> InPlain(string plain)
    {
        var texts = StyleFunction()
            .Matches(plain)
            .SelectMany(f => StyleQuote().Matches(plain[(f.Index + f.Length)..StyleText.EndOf(plain, f.Index + f.Length)]))
            .Where(t => !t.Groups["kind"].Success);
        return StyleAddress().Matches(plain).Concat(texts).Select(m => m.Groups["a"].Value);
    }

    /// <summary>The words in a script that reach for the network, and the addresses of others.</summary>
    public static IEnumerable<string> InScript(string script) =>
        NetworkCall()
            .Matches(script)
            .Select(m => m.Groups["word"].Value + "()")
            .Concat(ScriptAddress().Matches(script).Select(m => m.Groups["a"].Value))
            .Distinct();

    /// <summary>The addresses that an SVG file asks for.</summary>
    public static IEnumerable<string> InDrawing(string drawing) =>
        DrawingAddress()
            .Matches(drawing)
            .Select(m => m.Groups["a"].Value)
            .Concat(InStyle(Namespace().Replace(drawing, "")))
            .Distinct();

    /// <summary>The addresses in a file that tells a phone how to install the pages: those under the names that are addresses,
    /// and whatever else looks like one.</summary>
    public static IEnumerable<string> InManifest(string manifest)
    {
        try
        {
            using var read = JsonDocument.Parse(manifest);
            return Addresses(read.RootElement, "").Distinct().ToArray();
        }
        catch (JsonException)
        {
            return ManifestText().Matches(manifest).Select(m => m.Groups["a"].Value).Where(IsAbsolute).Distinct();
        }
    }

    private static IEnumerable<string> Addresses(JsonElement element, string name) =>
        element.ValueKind switch
        {
            JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Addresses(p.Value, p.Name)),
            JsonValueKind.Array => element.EnumerateArray().SelectMany(e => Addresses(e, name)),
            JsonValueKind.String
                when element.GetString() is { } text
                    && (name is "src" or "url" or "action" or "start_url" or "scope" || IsAbsolute(text)) => [Local(text)],
            _ => [],
        };

    /// <summary>The folder itself is no request to anybody else.</summary>
    private static string Local(string address) =>
        address is "." or "./" ? ""
        : address.StartsWith("./", StringComparison.Ordinal) ? address[2..]
        : address;

    private static bool IsAbsolute(string text) =>
        text.Contains("//", StringComparison.Ordinal) || text.Contains("\\\\", StringComparison.Ordinal);
}
