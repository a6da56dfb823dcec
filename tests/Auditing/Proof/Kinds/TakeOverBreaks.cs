using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>The page is another one a moment later, or runs something.</summary>
internal static class TakeOverBreaks
{
    private const string PolicyMeta = "meta[http-equiv='Content-Security-Policy' i]";

    public static readonly Series<Sketch> All =
    [
        InHead("base address", "<base href=\"https://example.org/\">"),
        InHead("refresh to another page", "<meta http-equiv=\"refresh\" content=\"0; url=weeks.html\">"),
        InHead("refresh to elsewhere", "<meta http-equiv=\"Refresh\" content=\"5;https://example.org\">"),
        At("another charset", Top, (_, e) => e.QuerySelector("meta[charset]")?.SetAttribute("charset", "utf-7")),
        At("no charset", Top, (_, e) => e.QuerySelector("meta[charset]")?.Remove()),
        At("no zoom", Top, (spot, e) =>
        {
            e.QuerySelector("meta[name=viewport]")?.Remove();
            e.Append(spot.Raw("<meta name=\"viewport\" content=\"width=device-width, user-scalable=no, maximum-scale=1\">"));
        }),
        At("no policy", Top, (_, e) => e.QuerySelector(PolicyMeta)?.Remove()),
        At("policy wide open", Top, (_, e) => e.QuerySelector(PolicyMeta)?.SetAttribute("content", "default-src *")),
        At("policy allows one address", Top, (_, e) =>
        {
            var policy = e.QuerySelector(PolicyMeta);
            policy?.SetAttribute(
                "content",
                policy.GetAttribute("content")!.Replace("img-src", "img-src https://example.org", StringComparison.Ordinal)
            );
        }),
        Behind("frame of another page", "<iframe src=\"weeks.html\"></iframe>"),
        Behind("object of another page", "<object data=\"weeks.html\" type=\"text/html\"></object>"),
        Behind("embedded page", "<embed src=\"weeks.html\">"),
        .. AtEach("runs when pressed", [Steps, Emergency], (_, e) => e.SetAttribute("onclick", "this.remove()")),
        Behind("runs when it fails", "<img src=\"none.png\" alt=\"\" onerror=\"document.body.remove()\">"),
        At("runs when it is opened", Places.All, (_, e) => e.SetAttribute("onload", "document.body.remove()")),
        Behind("form to elsewhere", "<form action=\"https://example.org/\"><button>Next</button></form>"),
        At("styled beside it", Body, (_, e) => e.SetAttribute("style", "color: transparent")),
    ];

    private static Sketch InHead(string name, string markup) => At(name, Top, (spot, e) => spot.Inside(e, markup));

    private static Sketch Behind(string name, string markup) => At(name, Cautions, (spot, e) => spot.After(e, markup));
}
