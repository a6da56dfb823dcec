using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>What Gradus wrote is not what runs.</summary>
internal static partial class ScriptBreaks
{
    private static readonly string[] Own = ["page.js", "session.js", "hosted.js"];
    private static readonly Place Asked = new("head", Any, s => s.Document.QuerySelectorAll("script[src]"));

    public static readonly Series<Sketch> All =
    [
        .. Own.Select(file => Filed("one letter changed", file, OneLetter)),
        .. Own.Select(file => Filed("last line gone", file, text => text.TrimEnd()[..^6])),
        .. Own.Select(file => Filed("empty", file, _ => "")),
        Whole("foreign file", "head", (site, chance) =>
        {
            if (site.IsOneFile)
                return null;
            var page = chance.Of(site.Site.Pages);
            var html = page.Html.Replace("</head>", "<script src=\"more.js\"></script></head>", StringComparison.Ordinal);
            return site.Listed(
                site.Site.Pages.Select(p => p == page ? p with { Html = html } : p),
                [.. site.Site.Assets, new("more.js", "document.body.remove()"u8.ToArray())]
            );
        }),
        .. AtEach("written into the page", [Places.All, Top], (spot, e) =>
            spot.Inside(e, "<script>document.title = 'x'</script>")
        ),
        .. Own.Select(file =>
            Whole("file gone", file, (site, _) =>
                site.Text(file) is null ? null : site.Listed(site.Site.Pages, site.Site.Assets.Where(a => a.Path != file))
            )
        ),
        At("not asked for", Asked, (_, e) => e.Remove()),
        At("asked for twice", Asked, (_, e) => e.After(e.Clone(true))),
        At("as a module", Asked, (_, e) => e.SetAttribute("type", "module")),
        At("only for old browsers", Asked, (_, e) => e.SetAttribute("nomodule", "")),
        At("runs too early", Asked, (_, e) => e.RemoveAttribute("defer")),
        At("before another", Asked, (_, e) =>
        {
            if (e.NextElementSibling is not { LocalName: "script" } next)
                return false;
            e.Before(next);
            return true;
        }),
        Filed("worker changed", "offline.js", OneLetter),
        Whole("one letter changed and its hash with it", "one file", (site, chance) =>
        {
            if (!site.IsOneFile)
                return null;
            var html = site.Site.Pages[0].Html;
            var script = chance.Of(Script().Matches(html).ToArray()).Groups[1].Value;
            var other = OneLetter(script);
            return site.With(
                site.Site.Pages[0].Path,
                html.Replace(script, other, StringComparison.Ordinal).Replace(Hash(script), Hash(other), StringComparison.Ordinal)
            );
        }),
    ];

    private static Sketch Filed(string name, string file, Func<string, string> change) =>
        Whole(name, file, (site, _) => site.WithFile(file, change), bytes: true);

    private static string OneLetter(string script) => Spot.Once(script, "return", "retvrn");

    private static string Hash(string text) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    [GeneratedRegex("<script>(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex Script();
}
