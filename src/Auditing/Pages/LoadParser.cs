using System.Collections.Frozen;
using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Every address that a page asks for by itself, without anybody following a link.</summary>
internal sealed class LoadParser(Func<IElement?, Location> at)
{
    private static readonly string[] Attributes =
    [
        "src", "poster", "data", "background", "action", "formaction", "ping", "attributionsrc", "xlink:href", "manifest", "codebase", "archive", "classid",
        "dynsrc", "lowsrc",
    ];

    private static readonly FrozenSet<string> Asking = Attributes.Concat(["srcset", "imagesrcset", "href", "srcdoc", "http-equiv", "style"]).ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    public Series<LoadSeen> Read(IDocument document) => document.All.Where(MayAsk).SelectMany(Of).ToSeries();

    /// <summary>Most elements have a class or an id at most, and need no closer look.</summary>
    private static bool MayAsk(IElement element)
    {
        if (element.LocalName is "style" or "script") return true;
        for (var i = 0; i < element.Attributes.Length; i++)
            if (element.Attributes[i] is { } own && (Asking.Contains(own.Name) || own.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase))) return true;
        return false;
    }

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
        if (element.LocalName == "iframe" && element.HasAttribute("srcdoc")) yield return Seen("iframe srcdoc", "srcdoc:");
        if (element.LocalName == "meta" && string.Equals(element.GetAttribute("http-equiv"), "refresh", StringComparison.OrdinalIgnoreCase))
            yield return Seen("meta refresh", element.GetAttribute("content") ?? "");
        foreach (var address in ((string[])[element.GetAttribute("style") ?? "", element.LocalName == "style" ? element.TextContent : ""]).SelectMany(Asked.InStyle))
            yield return Seen("style", address);
        var handlers = element.Attributes.Where(a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase)).Select(a => a.Value);
        foreach (var call in handlers.Append(element.LocalName == "script" ? element.TextContent : "").SelectMany(Asked.InScript))
            yield return Seen("script", call);

        LoadSeen Seen(string by, string address) => new(by, address.Trim(), at(element));
    }
}
