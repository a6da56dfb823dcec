using Gradus.Auditing;

namespace Gradus.Tests.Auditing.Pages;

/// <summary>What a browser would fetch for a style, a script, a drawing or a manifest (CSS Values 4, CSS Images 4).</summary>
public sealed class AskedAddressesTests
{
    [Theory]
    [InlineData("a { background: url(a.png) }", "a.png")]
    [InlineData("a { background: url( 'a.png' ) }", "a.png")]
    [InlineData("a { background: URL(\"a.png\") }", "a.png")]
    [InlineData("@import 'a.css';", "a.css")]
    [InlineData("@import url(a.css) print;", "a.css")]
    [InlineData("a { background: image-set('a.png' 1x, \"b.png\" 2x) }", "a.png|b.png")]
    [InlineData("a { background: image-set('a.png' type('image/png')) } b::after { content: 'c' }", "a.png")]
    [InlineData("a { background: image-set('a.png' 1x", "a.png")]
    [InlineData("a { background: cross-fade(image('a.png'), 'b.png') } q { quotes: 'c' 'd' }", "a.png|b.png")]
    [InlineData("a { src: src('a.woff2') }", "a.woff2")]
    [InlineData("a { b: '//example.org/a' }", "//example.org/a")]
    [InlineData("/* url(a.png) */", "a.png")]
    [InlineData("a { background: u/**/rl(a.png) } b { background: \\75rl(b.png) }", "b.png")]
    [InlineData("a::after { content: 'a.png' }", "")]
    [InlineData("my-image-set('a.png')", "")]
    [InlineData("", "")]
    public void A_style_asks_for(string style, string addresses) =>
        Assert.Equal(
            addresses.Split('|', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal),
            Asked.InStyle(style).Order(StringComparer.Ordinal)
        );

    [Theory]
    [InlineData("fetch('a')", "fetch()")]
    [InlineData("new XMLHttpRequest()", "XMLHttpRequest()")]
    [InlineData("import('./a.js')", "import()")]
    [InlineData("import { a } from './a.js'", "")]
    [InlineData("const a = 'https://example.org/'", "https://example.org/")]
    [InlineData("const a = \"//example.org/\" + b", "//example.org/")]
    [InlineData("const a = 'http://www.w3.org/2000/svg'", "")]
    [InlineData("prefetched('a')", "")]
    public void A_script_asks_for(string script, string addresses) =>
        Assert.Equal(addresses, string.Join('|', Asked.InScript(script)));

    [Theory]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><image href='a.png'/></svg>", "a.png")]
    [InlineData("<svg><image xlink:href=\"a.png\"/><style>@import 'b.css';</style></svg>", "a.png|b.css")]
    [InlineData("<svg><rect fill='url(a.svg#b)'/></svg>", "a.svg#b")]
    [InlineData("<svg><rect width='1'/></svg>", "")]
    public void A_drawing_asks_for(string drawing, string addresses) =>
        Assert.Equal(addresses, string.Join('|', Asked.InDrawing(drawing)));

    [Theory]
    [InlineData("""{"icons": [{"src": "a.png", "sizes": "any"}]}""", "a.png")]
    [InlineData("""{"start_url": "./index.html", "scope": "./", "name": "x"}""", "index.html|")]
    [InlineData("""{"scope": "."}""", "")]
    [InlineData("""{"share_target": {"action": "send"}}""", "send")]
    [InlineData("""{"more": {"url": "a"}, "name": "b"}""", "a")]
    [InlineData("""{"name": "https://example.org/", "short_name": "\\\\example.org"}""", "https://example.org/|\\\\example.org")]
    [InlineData("{ 'icons': '//example.org/', 'name': 'x'", "//example.org/")]
    public void A_manifest_asks_for(string manifest, string addresses) =>
        Assert.Equal(addresses, string.Join('|', Asked.InManifest(manifest)));
}
