using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class RequestToNetworkTests
{
    public static readonly Series<PlantedFault> Faults =
    [
        Body("<img src='https://example.org/a.png' alt=''>"), Body("<img src='//example.org/a.png' alt=''>"), Body("<img src='http://example.org/a.png' alt=''>"),
        Body("<img src='missing.png' alt=''>"), Body("<img srcset='look.css 1x, https://example.org/a.png 2x' alt=''>"), Body("<picture><source srcset='https://example.org/a.png'></picture>"),
        Body("<video poster='https://example.org/a.png'></video>"), Body("<audio><source src='https://example.org/a.mp3'></audio>"), Body("<video><track src='https://example.org/a.vtt'></video>"),
        Body("<iframe src='https://example.org/'></iframe>"), Body("<iframe srcdoc='hello'></iframe>"), Body("<iframe src='data:text/html,hello'></iframe>"),
        Body("<object data='https://example.org/a.svg'></object>"), Body("<object data='data:image/svg+xml,hello'></object>"), Body("<embed src='https://example.org/'>"),
        Body("<form action='https://example.org/'></form>"), Body("<form><button formaction='https://example.org/'>x</button></form>"), Body("<input type='image' alt='x' src='https://example.org/'>"),
        Body("<svg><image href='https://example.org/a.png'/></svg>"), Body("<svg><image xlink:href='https://example.org/a.png'/></svg>"), Body("<svg><use href='https://example.org/a.svg#b'/></svg>"),
        Body("<a href='session-1.html' ping='https://example.org/'>x</a>"), Body("<p style=\"background:url('https://example.org/a.png')\">x</p>"), Body("<table background='https://example.org/a.png'></table>"),
        Body("<script src='https://example.org/a.js'></script>"), Body("<script src='data:text/javascript,1'></script>"), Body("<script>fetch('a')</script>"),
        Body("<script>new XMLHttpRequest()</script>"), Body("<script>navigator.sendBeacon('a')</script>"), Body("<script>new WebSocket('wss://example.org')</script>"),
        Body("<script type='module'>import 'https://example.org/a.js'</script>"), Body("<script>import('./a.js')</script>"), Body("<script>new Image().src = 'https://example.org/'</script>"),
        Body("<script>location = `//example.org/`</script>"), Body("<p onclick=\"fetch('a')\">x</p>"), Body("<img src='' alt='' onerror='new EventSource(1)'>"),
        Head("<link rel='stylesheet' href='https://example.org/a.css'>"), Head("<link rel='preconnect' href='https://example.org'>"), Head("<link rel='dns-prefetch' href='//example.org'>"),
        Head("<link rel='icon' href='https://example.org/a.ico'>"), Head("<link rel='icon' href='missing.ico'>"), Head("<link rel='stylesheet' href='data:text/css,x'>"),
        Head("<link rel='preload' as='image' imagesrcset='https://example.org/a.png 1x'>"), Head("<meta http-equiv='refresh' content='0;url=https://example.org/'>"), Head("<META HTTP-EQUIV='Refresh' content='5'>"),
        Head("<base href='https://example.org/'>"), Head("<base href='index.html'>"), Head("<style>@import 'https://example.org/a.css';</style>"), Head("<style>@import url(https://example.org/a.css) print;</style>"),
        Head("<style>@import\"https://example.org/a.css\";</style>"), Head("<style>p{background:URL( \"https://example.org/a.png\" )}</style>"), Head("<style>p{background:\\75rl(https://example.org/a.png)}</style>"),
        Head("<style>p{background:image-set('https://example.org/a.png' 1x)}</style>"), Head("<style>p::before{content:'/*';background:url(https://example.org/a.png)}q{content:'*/'}</style>"),
        Head("<style>@font-face{font-family:a;src:url(//example.org/a.woff2)}</style>"), Head("<style>p{cursor:url(missing.cur),auto}</style>"),
        Style("@import 'https://example.org/a.css';"), Style("@import url(missing.css);"), Style("p { background: url('https://example.org/a.png') }"), Style("@import url(data:text/css,x);"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Body("<img src='data:image/png;base64,AAAA' alt=''>") with { Rules = "" }, Body("<img src='look.css' alt=''>") with { Rules = "" }, Body("<svg><use href='#a'/></svg>") with { Rules = "" },
        Body("<p>https://example.org/, url(https://example.org/), fetch()</p>") with { Rules = "" }, Body("<p style='background: url(data:image/png;base64,AAAA)'>x</p>") with { Rules = "script-or-style-from-author" },
        Body("<script>document.createElementNS('http://www.w3.org/2000/svg', 'g')</script>") with { Rules = "script-or-style-from-author" }, Style("/* see the page of colours */") with { Rules = "" },
        Head("<link rel='stylesheet' href='look.css'>") with { Rules = "" }, Head("<meta name='x' content='https://example.org/'>") with { Rules = "" },
        Body("<a href='https://example.org/'>x</a><map><area href='https://example.org/' alt='x'></map>") with { Rules = "" },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_whatever_asks(PlantedFault fault) => fault.MustBeFound();

    [Theory]
    [InlineData("play.js", "fetch('a')")]
    [InlineData("play.js", "export { a } from \"https://example.org/a.js\"")]
    [InlineData("play.mjs", "importScripts('a.js')")]
    [InlineData("foot.svg", "<svg xmlns='http://www.w3.org/2000/svg'><image href='https://example.org/a.png'/></svg>")]
    [InlineData("foot.svg", "<svg xmlns='http://www.w3.org/2000/svg'><style>@import 'https://example.org/a.css';</style></svg>")]
    [InlineData("more/extra.html", "<html lang='en'><title>x</title><h1>x</h1><p><img src='https://example.org/a.png' alt=''></p>")]
    public void It_is_found_in_a_file_that_a_theme_brings(string path, string text) =>
        Assert.Equal(("request-to-network", path), Assert.Single(FinishedSite.Audit(Bring(path, text)).Select(f => (f.Rule.Text, f.At.File)), f => f.Text != "good-until-missing"));

    [Theory]
    [InlineData("play.js", "import { a } from './count.js'; document.title = 'x'")]
    [InlineData("foot.svg", "<svg xmlns='http://www.w3.org/2000/svg'><use href='#a'/></svg>")]
    public void A_file_that_asks_for_nothing_is_fine(string path, string text) => Assert.Empty(FinishedSite.Audit(Bring(path, text)));

    private static Site Bring(string path, string text) => new(FinishedSite.Site.Client, FinishedSite.Site.Pages, FinishedSite.Site.Assets.Append(new(path, System.Text.Encoding.UTF8.GetBytes(text))));

    private static PlantedFault Body(string html) => new(html, "index.html", "</body>", html + "</body>", RulesOf(html));

    private static PlantedFault Head(string html) => new(html, "index.html", "</head>", html + "</head>", RulesOf(html));

    /// <summary>A script or a style in a page is a fault of its own.</summary>
    private static string RulesOf(string html) => Regex.IsMatch(html, "<(script|style)| (style|on[a-z]+)=") ? "request-to-network script-or-style-from-author" : "request-to-network";

    private static PlantedFault Style(string css) => new($"look.css: {css}", "look.css", "body {", css + " body {", "request-to-network");
}
