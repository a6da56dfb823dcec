using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Every address that a page asks for by itself, without anybody following a link.</summary>
internal sealed partial class LoadParser(Func<IElement?, Location> at)
{
    private static readonly string[] Attributes = ["src", "poster", "data", "background", "action", "formaction", "ping", "xlink:href", "manifest", "codebase", "archive", "classid", "dynsrc", "lowsrc"];

    [GeneratedRegex("""url\(\s*(?:"(?<a>[^"]*)"|'(?<a>[^']*)'|(?<a>[^)\s]*))\s*\)|@import\s+(?:"(?<a>[^"]*)"|'(?<a>[^']*)')""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex StyleAddress();

    [GeneratedRegex(@"\b(fetch|XMLHttpRequest|WebSocket|EventSource|sendBeacon|RTCPeerConnection|importScripts|WebTransport)\b|\bimport\s*\(", RegexOptions.CultureInvariant)]
    private static partial Regex NetworkCall();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex StyleComment();

    public Series<LoadSeen> Read(IDocument document) => document.All.SelectMany(Of).ToSeries();

    /// <summary>The addresses that a stylesheet asks for.</summary>
    public static IEnumerable<string> InStyle(string style) =>
        StyleAddress().Matches(StyleComment().Replace(style, " ")).Select(m => m.Groups["a"].Value);

    /// <summary>The words in a script that reach for the network.</summary>
    public static IEnumerable<string> InScript(string script) => NetworkCall().Matches(script).Select(m => m.Value);

    private IEnumerable<LoadSeen> Of(IElement element)
    {
        foreach (var name in Attributes)
            if (element.GetAttribute(name) is { } address) yield return Seen($"{element.LocalName} {name}", address);
        foreach (var name in (string[])["srcset", "imagesrcset"])
        {
            foreach (var candidate in (element.GetAttribute(name) ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
                yield return Seen($"{element.LocalName} {name}", candidate.Split(' ')[0]);
        }

        if (element.GetAttribute("href") is { } href && element.LocalName is not ("a" or "area")) yield return Seen($"{element.LocalName} href", href);
        if (element.GetAttribute("style") is { } style)
            foreach (var address in InStyle(style)) yield return Seen("style", address);
        if (element.LocalName == "style")
            foreach (var address in InStyle(element.TextContent)) yield return Seen("style", address);
        if (element.LocalName == "script")
            foreach (var call in InScript(element.TextContent)) yield return Seen("script", call + "()");
        if (element.LocalName == "iframe" && element.HasAttribute("srcdoc")) yield return Seen("iframe srcdoc", "srcdoc:");
        if (element.LocalName == "meta" && string.Equals(element.GetAttribute("http-equiv"), "refresh", StringComparison.OrdinalIgnoreCase))
            yield return Seen("meta refresh", element.GetAttribute("content") ?? "");

        LoadSeen Seen(string by, string address) => new(by, address.Trim(), at(element));
    }
}
