using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Planning;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Something is missing, added or of somebody else.</summary>
internal static partial class FileBreaks
{
    public static readonly Series<Sketch> All =
    [
        Pages("page missing", (site, chance) => Without(site, chance.Of(site.Site.Pages).Path)),
        Pages("page added", (site, chance) =>
            site.Listed([.. site.Site.Pages, new("session-8.html", chance.Of(site.Site.Pages).Html)], site.Site.Assets)
        ),
        Pages("page of another client", (site, chance) =>
        {
            var path = chance.Of(site.Paths);
            return Other(site).Site.Pages.FirstOrDefault(p => p.Path == path) is { } page ? site.With(path, page.Html) : null;
        }),
        Pages("two pages swapped", (site, chance) =>
        {
            var one = chance.Of(site.Site.Pages);
            var other = chance.Of(site.Site.Pages.Where(p => p != one).ToArray());
            return site.Listed(
                site.Site.Pages.Select(p =>
                    p == one ? p with { Html = other.Html }
                    : p == other ? p with { Html = one.Html }
                    : p
                ),
                site.Site.Assets
            );
        }),
        Pages("list missing", (site, _) => Has(site, PagePath.FileList) ? Without(site, PagePath.FileList) : null),
        Listing("line of the list gone", text => text.Replace("index.html\n", "", StringComparison.Ordinal)),
        Listing("line of the list added", text => text + "more.html\n"),
        Listing("edition of the list", text => "0123456789abcdef" + text[16..]),
        Pages("calendar missing", (site, _) => Has(site, PagePath.Calendar) ? Without(site, PagePath.Calendar) : null),
        InCalendar("day of the calendar", text => Day().Replace(text, m => m.Groups[1].Value + "20270301", 1)),
        InCalendar("length in the calendar", text => Length().Replace(text, "DURATION:PT9999S", 1)),
        InCalendar("appointment gone", text => Event().Replace(text, "", 1)),
        InCalendar("appointment added", text => Event().Replace(text, m => m.Value + Day().Replace(m.Value, "${1}20270302"), 1)),
        InCalendar("words of the calendar", text => Spot.Once(text, "SUMMARY:", "SUMMARY:Run a mile\\, then ")),
        InCalendar("alarm in the calendar", text =>
            Spot.Once(
                text,
                "END:VEVENT",
                "BEGIN:VALARM\r\nACTION:DISPLAY\r\nDESCRIPTION:Go\r\nTRIGGER:PT0S\r\nEND:VALARM\r\nEND:VEVENT"
            )
        ),
        Pages("calendar of another client", (site, _) =>
            Other(site).Text(PagePath.Calendar) is { } text ? site.WithFile(PagePath.Calendar, _ => text) : null
        ),
        Filed("begin of the manifest", PagePath.Manifest, text => Spot.Once(text, "\"index.html\"", "\"https://example.org/\"")),
        Filed("name in the manifest", PagePath.Manifest, text => Spot.Once(text, "\"name\":\"", "\"name\":\"Not ")),
        Added("file that can be run", "setup.exe", "MZ"),
        Added(
            "page under another ending",
            "more.xhtml",
            "<html xmlns=\"http://www.w3.org/1999/xhtml\"><body>Go on</body></html>"
        ),
        Pages("style missing", (site, chance) =>
            Without(
                site,
                chance.Of(site.Site.Assets.Where(a => a.Path.EndsWith(".css", StringComparison.Ordinal)).ToArray()).Path
            )
        ),
        Filed("icon changed", "icon.svg", text => Spot.Once(text, "</svg>", "<text y=\"9\">Go on</text></svg>")),
        Pages("name in other letters", (site, chance) =>
        {
            var page = chance.Of(site.Site.Pages);
            return site.Listed(
                site.Site.Pages.Select(p => p == page ? p with { Path = "S" + p.Path[1..].ToUpperInvariant() } : p),
                site.Site.Assets
            );
        }),
        Added("notes of the coach", "notes.md", "Bad knee. Do not tell."),
    ];

    private static Sketch Pages(string name, Func<ProofSite, Chance, Site?> make) =>
        Whole(name, "folder", (site, chance) => site.IsOneFile ? null : make(site, chance));

    /// <summary>Not made true again: that is the break.</summary>
    private static Sketch Listing(string name, Func<string, string> change) =>
        Pages(name, (site, _) =>
            site.Text(PagePath.FileList) is { } text
                ? new Site(
                    site.Site.Client,
                    site.Site.Pages,
                    site.Site.Assets.Select(a =>
                        a.Path == PagePath.FileList ? new Asset(a.Path, Encoding.UTF8.GetBytes(change(text))) : a
                    )
                )
                : null
        );

    private static Sketch Filed(string name, string file, Func<string, string> change) =>
        Whole(name, file, (site, _) => site.WithFile(file, change), bytes: true);

    private static Sketch InCalendar(string name, Func<string, string> change) => Filed(name, PagePath.Calendar, change);

    private static Sketch Added(string name, string path, string text) =>
        Pages(name, (site, _) => site.Listed(site.Site.Pages, [.. site.Site.Assets, new(path, Encoding.UTF8.GetBytes(text))]));

    private static bool Has(ProofSite site, string path) => site.Site.Assets.Any(a => a.Path == path);

    private static Site Without(ProofSite site, string path) =>
        site.Listed(site.Site.Pages.Where(p => p.Path != path), site.Site.Assets.Where(a => a.Path != path));

    private static ProofSite Other(ProofSite site) =>
        ProofSite.All.First(o => !o.IsOneFile && o.Plan.Client != site.Plan.Client && Has(o, PagePath.Calendar));

    [GeneratedRegex(@"(DTSTART[^:\r\n]*:)\d{8}")]
    private static partial Regex Day();

    [GeneratedRegex(@"DURATION:PT\d+S")]
    private static partial Regex Length();

    [GeneratedRegex(@"BEGIN:VEVENT.*?END:VEVENT\r?\n", RegexOptions.Singleline)]
    private static partial Regex Event();
}
