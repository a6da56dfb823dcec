using System.Collections.Frozen;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Every address that a page asks for by itself, without anybody following a link.</summary>
internal sealed class LoadParser(Func<PageElement?, Location> at)
{
    private static readonly string[] Attributes =
    [
        "src",
        "poster",
        "data",
        "background",
        "action",
        "formaction",
        "ping",
        "attributionsrc",
        "xlink:href",
        "manifest",
        "codebase",
        "archive",
        "classid",
        "dynsrc",
        "lowsrc",
    ];

    /// <summary>Attributes of a drawing in which a style may be written: <c>fill="url(…)"</c>.</summary>
    private static readonly string[] Painting =
    [
        "style",
        "fill",
        "stroke",
        "filter",
        "mask",
        "clip-path",
        "marker",
        "marker-start",
        "marker-mid",
        "marker-end",
        "cursor",
    ];

    /// <summary>The values that an animation of an address runs through.</summary>
    private static readonly string[] Running = ["to", "from", "by", "values"];

    private static readonly FrozenSet<string> Asking = Attributes
        .Concat(["srcset", "imagesrcset", "href", "srcdoc", "http-equiv", "attributename", .. Painting])
        .ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <param name="textOf">What stands in a style or a script.</param>
    public Series<LoadSeen> Read(IEnumerable<PageElement> elements, Func<PageElement, string> textOf) =>
        All(elements).Where(e => MayAsk(e) && !IsPlainLink(e)).SelectMany(e => Of(e, textOf)).ToSeries();

    /// <summary>The elements, and those in a tree of their own below one: a browser may put them on the page by itself, or a
    /// script may.</summary>
    private static IEnumerable<PageElement> All(IEnumerable<PageElement> elements)
    {
        foreach (var element in elements)
        {
            yield return element;
            foreach (var inner in element.Aside)
                yield return inner;
        }
    }

    /// <summary>Most elements have a class or an id at most, and need no closer look.</summary>
    public static bool MayAsk(PageElement element)
    {
        if (element.LocalName is "style" or "script" or "template" or "param")
            return true;
        foreach (var attribute in element.Attributes)
            if (Asks(attribute.Name))
                return true;
        return false;
    }

    private static bool Asks(string attribute) =>
        Asking.Contains(attribute) || attribute.StartsWith("on", StringComparison.OrdinalIgnoreCase);

    /// <summary>A link that somebody may follow asks for nothing by itself, and a page has many.</summary>
    private static bool IsPlainLink(PageElement element)
    {
        if (element.LocalName != "a")
            return false;
        foreach (var attribute in element.Attributes)
            if (attribute.Name != "href" && Asks(attribute.Name))
                return false;
        return true;
    }

    private IEnumerable<LoadSeen> Of(PageElement element, Func<PageElement, string> textOf)
    {
        foreach (var name in Attributes)
            if (element.Value(name) is { } address)
                yield return Seen($"{element.LocalName} {name}", address);
        foreach (var name in (string[])["srcset", "imagesrcset"])
        {
            foreach (
                var candidate in (element.Value(name) ?? "").Split(
                    ',',
                    StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
                )
            )
                yield return Seen($"{element.LocalName} {name}", candidate.Split(' ')[0]);
        }

        if (element.Value("href") is { } href && element.LocalName is not ("a" or "area"))
            yield return Seen($"{element.LocalName} href", href);
        if (
            element.LocalName == "param"
            && element.Value("name")?.ToLowerInvariant() is "src" or "movie" or "data" or "code" or "url" or "filename"
        )
            yield return Seen("param value", element.Value("value") ?? "");
        if (
            (element.Value("attributeName") ?? element.Value("attributename"))?.EndsWith(
                "href",
                StringComparison.OrdinalIgnoreCase
            ) == true
        )
        {
            foreach (
                var address in Running.SelectMany(name =>
                    (element.Value(name) ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries)
                )
            )
                yield return Seen($"{element.LocalName} of an address", address);
        }

        if (
            element.LocalName == "script"
            && element.Value("type")?.Trim().ToLowerInvariant() is "speculationrules" or "importmap"
        )
            yield return Seen("script", element.Value("type") ?? "");
        if (element.LocalName == "iframe" && element.Has("srcdoc"))
            yield return Seen("iframe srcdoc", "srcdoc:");
        if (
            element.LocalName == "meta"
            && string.Equals(element.Value("http-equiv"), "refresh", StringComparison.OrdinalIgnoreCase)
        )
            yield return Seen("meta refresh", element.Value("content") ?? "");
        foreach (
            var address in Painting
                .Select(name => element.Value(name) ?? "")
                .Append(element.LocalName == "style" ? textOf(element) : "")
                .Where(t => t.Length > 0)
                .SelectMany(Asked.InStyle)
        )
            yield return Seen("style", address);
        var handlers = element
            .Attributes.Where(a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase))
            .Select(a => a.Value);
        foreach (
            var call in handlers
                .Append(element.LocalName == "script" && !OwnScripts.Hold(textOf(element)) ? textOf(element) : "")
                .SelectMany(Asked.InScript)
        )
            yield return Seen("script", call);

        LoadSeen Seen(string by, string address) => new(by, address.Trim(), at(element));
    }
}
