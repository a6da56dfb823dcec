using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class AddressToNetworkTests
{
    public static readonly Series<PlantedFault> Faults =
    [
        Body("<img src='https://example.org/a.png' alt=''>"),
        Body("<img src='//example.org/a.png' alt=''>"),
        Body("<img src='http://example.org/a.png' alt=''>"),
        Body("<img src='missing.png' alt=''>"),
        Body("<img srcset='look.css 1x, https://example.org/a.png 2x' alt=''>"),
        Body("<picture><source srcset='https://example.org/a.png'></picture>"),
        Body("<video aria-label='The heel sinks' poster='https://example.org/a.png'></video>"),
        Body("<audio aria-label='A beep'><source src='https://example.org/a.mp3'></audio>"),
        Body("<video aria-label='The heel sinks'><track src='https://example.org/a.vtt'></video>"),
        Body("<video aria-label='The heel sinks'><track src='data:text/html;base64,V0VCVlRU'></video>"),
        Body("<iframe src='https://example.org/'></iframe>"),
        Body("<iframe srcdoc='hello'></iframe>"),
        Body("<iframe src='data:text/html,hello'></iframe>"),
        Body("<object data='https://example.org/a.svg'></object>"),
        Body("<object data='data:image/svg+xml,hello'></object>"),
        Body("<embed src='https://example.org/'>"),
        Body("<form action='https://example.org/'></form>"),
        Body("<form><button formaction='https://example.org/'>x</button></form>"),
        Body("<input type='image' alt='x' src='https://example.org/'>"),
        Body("<svg><image href='https://example.org/a.png'/></svg>"),
        Body("<svg><image xlink:href='https://example.org/a.png'/></svg>"),
        Body("<svg><use href='https://example.org/a.svg#b'/></svg>"),
        Body("<a href='session-1.html' ping='https://example.org/'>x</a>"),
        Body("<p style=\"background:url('https://example.org/a.png')\"></p>"),
        Body("<table background='https://example.org/a.png'></table>"),
        Body("<script src='https://example.org/a.js'></script>"),
        Body("<script src='data:text/javascript,1'></script>"),
        Body("<script>fetch('a')</script>"),
        Body("<script>new XMLHttpRequest()</script>"),
        Body("<script>navigator.sendBeacon('a')</script>"),
        Body("<script>new WebSocket('wss://example.org')</script>"),
        Body("<script type='module'>import 'https://example.org/a.js'</script>"),
        Body("<script>import('./a.js')</script>"),
        Body("<script>new Image().src = 'https://example.org/'</script>"),
        Body("<script>location = `//example.org/`</script>"),
        Body("<p onclick=\"fetch('a')\">x</p>"),
        Body("<img src='' alt='' onerror='new EventSource(1)'>"),
        Head("<link rel='stylesheet' href='https://example.org/a.css'>"),
        Head("<link rel='preconnect' href='https://example.org'>"),
        Head("<link rel='dns-prefetch' href='//example.org'>"),
        Head("<link rel='icon' href='https://example.org/a.ico'>"),
        Head("<link rel='icon' href='missing.ico'>"),
        Head("<link rel='stylesheet' href='data:text/css,x'>"),
        Head("<link rel='preload' as='image' imagesrcset='https://example.org/a.png 1x'>"),
        Head("<meta http-equiv='refresh' content='0;url=https://example.org/'>"),
        Head("<META HTTP-EQUIV='Refresh' content='5'>"),
        Head("<base href='https://example.org/'>"),
        Head("<base href='index.html'>"),
        Head("<style>@import 'https://example.org/a.css';</style>"),
        Head("<style>@import url(https://example.org/a.css) print;</style>"),
        Head("<style>@import\"https://example.org/a.css\";</style>"),
        Head("<style>q{background:URL( \"https://example.org/a.png\" )}</style>"),
        Head("<style>q{background:\\75rl(https://example.org/a.png)}</style>"),
        Head("<style>q{background:image-set('https://example.org/a.png' 1x)}</style>"),
        Head("<style>q::before{content:'/*';background:url(https://example.org/a.png)}q::after{content:'*/'}</style>"),
        Head("<style>@font-face{font-family:a;src:url(//example.org/a.woff2)}</style>"),
        Head("<style>p{cursor:url(missing.cur),auto}</style>"),
        Style("@import 'https://example.org/a.css';"),
        Style("@import url(missing.css);"),
        Style("q { background: url('https://example.org/a.png') }"),
        Style("@import url(data:text/css,x);"),
        Body("<template><img src='https://example.org/a.png' alt=''></template>"),
        Body("<div><template shadowrootmode='open'><p><img src='https://example.org/a.png' alt=''></p></template></div>"),
        Body("<svg><image href='a.png'><set attributeName='href' to='https://example.org/a.png'/></image></svg>"),
        Body("<svg><rect><animate attributeName='xlink:href' values='#a;https://example.org/a.svg'/></rect></svg>"),
        Body("<svg><rect fill='url(https://example.org/a.svg#b)'/></svg>"),
        Body("<svg><g filter='URL(//example.org/a.svg#b)'></g></svg>"),
        Body("<svg><path marker-end='url(missing.svg#b)'/></svg>"),
        Body("<svg><feImage href='https://example.org/a.png'/></svg>"),
        Body("<svg><use href='data:image/svg+xml,a#b'/></svg>"),
        Body("<svg><foreignObject><img src='https://example.org/a.png' alt=''></foreignObject></svg>"),
        Body("<object><param name='movie' value='https://example.org/a.swf'></object>"),
        Body("<object archive='https://example.org/a.jar'></object>"),
        Body("<object codebase='https://example.org/'></object>"),
        Body("<img lowsrc='https://example.org/a.png' alt='' src=''>"),
        Body("<img src='' alt='' attributionsrc='https://example.org/'>"),
        Body("<input type='submit' formaction='https://example.org/'>"),
        Body("<script type='speculationrules'>{\"prefetch\":[{\"source\":\"document\"}]}</script>"),
        Body("<script type='importmap'>{}</script>"),
        Body("<bgsound src='https://example.org/a.mid'>"),
        Body("<img src='\thttps://example.org/a.png' alt=''>"),
        Body("<img src='ht\ntps://example.org/a.png' alt=''>"),
        Body("<img src='&#9;&#1;https&#58;//example.org/a.png' alt=''>"),
        Body("<img src='https:example.org/a.png' alt=''>"),
        Body("<img src='\\\\example.org\\a.png' alt=''>"),
        Body("<img src='/\\example.org/a.png' alt=''>"),
        Body("<img src='file:///a.png' alt=''>"),
        Body("<img src='blob:a' alt=''>"),
        Body("<img src='JaVaScRiPt:1' alt=''>"),
        Body("<img src='da\nta:text/html,x' alt=''>"),
        Body("<img src='look.css?https://example.org/' alt=''>"),
        Body("<img src='../tess/look.css' alt=''>"),
        Body("<iframe src='about:blank'></iframe>"),
        Head("<link rel='manifest' href='https://example.org/a.webmanifest'>"),
        Head("<link rel='prefetch' href='https://example.org/'>"),
        Head("<link rel='modulepreload' href='https://example.org/a.js'>"),
        Head("<link rel='search' href='https://example.org/a.xml'>"),
        Head("<style>@import/**/'missing.css';</style>"),
        Head("<style>@\\69mport 'missing.css';</style>"),
        Head("<style>q{background:u\\72 l(missing.png)}</style>"),
        Head("<style>q{background:url(ht\\\ntps://example.org/a.png)}</style>"),
        Head("<style>@font-face{font-family:a;src:src('missing.woff2')}</style>"),
        Head("<style>q{background:-webkit-image-set('missing.png' 1x)}</style>"),
        Head("<style>q{background:image-set('look.css' type('image/png'), \"missing.png\" 2x)}</style>"),
        Head("<style>p{content:url(missing.png)}</style>"),
        Head("<style>q{background:image('missing.png')}</style>"),
        Head("<style>p{--a:'wss://example.org/'}</style>"),
        Head("<style>p{behavior:url(missing.htc)}</style>"),
        Head("<style>p{-moz-binding:url(//example.org/a)}</style>"),
        Head("<style>q{mask:\\000075rl('missing.svg#a')}</style>"),
        Style("q { background: url(/*a*/missing.png) }"),
        Style("@namespace url(https://example.org/);"),
        Style("p { shape-outside: url( '//example.org/a.png' ) }"),
        Style("@import layer(a) url(missing.css);"),
        Body("<img src='data:image/png;base64,AAAA' alt='Both ankles'>"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Body("<img src='look.css' alt='Both ankles'>") with
        {
            Rules = "",
        },
        Body("<svg><use href='#a'/></svg>") with
        {
            Rules = "",
        },
        Body("<p>https://example.org/, url(https://example.org/), fetch()</p>") with
        {
            Rules = "",
        },
        Body("<p style='background: url(data:image/png;base64,AAAA)'></p>") with
        {
            Rules = "style-not-known address-to-network",
        },
        Body("<script>document.createElementNS('http://www.w3.org/2000/svg', 'g')</script>") with
        {
            Rules = "policy-weak script-or-style-from-author",
        },
        Style("/* see the page of colours */") with
        {
            Rules = "",
        },
        Style("q { background: image-set('look.css' type('image/png') 1x) } s { mask: url(#a) }") with
        {
            Rules = "",
        },
        Style("p::before { content: 'src(x), url: https' }") with
        {
            Rules = "",
        },
        Body("<template><p>x</p></template>") with
        {
            Rules = "",
        },
        Body("<svg><rect fill='url(#a)'/><set attributeName='x' to='1'/></svg>") with
        {
            Rules = "",
        },
        Body("<p data-url='https://example.org/' title='url(https://example.org/)'>x</p>") with
        {
            Rules = "",
        },
        Body("<q cite='https://example.org/'>x</q>") with
        {
            Rules = "",
        },
        Body("<video aria-label='The heel sinks'><track src='data:text/vtt;base64,V0VCVlRU'></video>") with
        {
            Rules = "",
        },
        Head("<link rel='stylesheet' href='look.css'>") with
        {
            Rules = "",
        },
        Head("<meta name='x' content='https://example.org/'>") with
        {
            Rules = "",
        },
        Body("<a href='https://example.org/'>x</a><map><area href='https://example.org/' alt='x'></map>") with
        {
            Rules = "",
        },
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
    [InlineData("foot.svg", "<svg xmlns='http://www.w3.org/2000/svg'><image href='&#104;ttps://example.org/a.png'/></svg>")]
    [InlineData("foot.svg", "<svg xmlns='http://www.w3.org/2000/svg'><rect style='fill:&#117;rl(missing.svg)'/></svg>")]
    [InlineData("foot.svg", "<?xml-stylesheet href='https://example.org/a.css'?><svg xmlns='http://www.w3.org/2000/svg'/>")]
    [InlineData("more.webmanifest", """{"icons": [{"src": "https://example.org/a.png"}]}""")]
    [InlineData("more.webmanifest", """{"icons": [{"src": "missing.png"}]}""")]
    [InlineData("more.webmanifest", """{"start_url": "https:example.org"}""")]
    [InlineData("more.webmanifest", """{"scope_extensions": [{"origin": "https://example.org"}]}""")]
    [InlineData("more.webmanifest", """{"share_target": {"action": "send"}}""")]
    [InlineData("more.webmanifest", "{ 'icons': '//example.org/'")]
    [InlineData("page.js", "navigator.sendBeacon('a')")]
    [InlineData("print.css", "@import 'https://example.org/a.css' print;")]
    [InlineData(
        "more/extra.html",
        "<html lang='en'><title>x</title><h1>x</h1><p><img src='https://example.org/a.png' alt=''></p>"
    )]
    public void It_is_found_in_a_file_that_a_theme_brings(string path, string text) =>
        Assert.Equal(
            [("address-to-network", path)],
            FinishedSite
                .Audit(Bring(path, text))
                .Select(f => (f.Rule.Text, f.At.File))
                .Where(f => f.Text is not ("good-until-missing" or "page-unplanned" or "policy-weak"))
                .Where(f => !PlantedFault.ClosedLists.Contains(f.Text))
                .Distinct()
        );

    /// <summary>A call is none of the site's files, whatever a theme calls a file of its own.</summary>
    [Theory]
    [InlineData("<script>fetch('a')</script>", "fetch()")]
    [InlineData("<iframe srcdoc='hello'></iframe>", "srcdoc:")]
    public void No_file_excuses_a_call(string html, string file) =>
        Assert.Contains(FinishedSite.Audit(FinishedSite.With("index.html", "</body>", html + "</body>").And(file, "x")), f =>
            f.Rule.Text == "address-to-network"
        );

    [Theory]
    [InlineData("play.js", "import { a } from './count.js'; document.title = 'x'")]
    [InlineData("foot.svg", "<svg xmlns='http://www.w3.org/2000/svg'><use href='#a'/></svg>")]
    [InlineData(
        "more.webmanifest",
        """{"name": "x", "start_url": "./index.html", "scope": "./", "icons": [{"src": "look.css", "sizes": "any"}]}"""
    )]
    public void A_file_that_asks_for_nothing_is_fine(string path, string text) =>
        Assert.DoesNotContain(FinishedSite.Audit(Bring(path, text)), f => f.Rule.Text != "file-unplanned");

    private static Site Bring(string path, string text) =>
        new(
            FinishedSite.Site.Client,
            FinishedSite.Site.Pages,
            FinishedSite.Site.Assets.Append(new(path, System.Text.Encoding.UTF8.GetBytes(text)))
        );

    private static PlantedFault Body(string html) => new(html, "index.html", "</body>", html + "</body>", RulesOf(html));

    private static PlantedFault Head(string html) => new(html, "index.html", "</head>", html + "</head>", RulesOf(html));

    /// <summary>A script or a style in a page is a fault of its own.</summary>
    private static string RulesOf(string html) =>
        "address-to-network"
        + (Regex.IsMatch(html, "<(style|script(?! src))") ? " policy-weak" : "")
        + (Regex.IsMatch(html, "<(script|style)") ? " script-or-style-from-author" : "");

    private static PlantedFault Style(string css) =>
        new($"look.css: {css}", "look.css", "body {", css + " body {", "address-to-network");
}
