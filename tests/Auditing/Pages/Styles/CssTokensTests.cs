using Gradus.Auditing;

namespace Gradus.Tests.Auditing.Pages.Styles;

/// <summary>tests/Browser holds thousands of sheets against npm css-tree.</summary>
public sealed class CssTokensTests
{
    [Theory]
    [InlineData("a{b:c}", "Ident a|OpenCurly {|Ident b|Colon :|Ident c|CloseCurly }")]
    [InlineData("1.5rem -2e3% +.5 1.", "Dimension 1.5rem|Blank  |Percentage -2e3%|Blank  |Number +.5|Blank  |Number 1|Delim .")]
    [InlineData("1e3 1e-3rem 1em", "Number 1e3|Blank  |Dimension 1e-3rem|Blank  |Dimension 1em")]
    [InlineData("--x -x - -->", "Ident --x|Blank  |Ident -x|Blank  |Delim -|Blank  |Cdc -->")]
    [InlineData("<!-- <", "Cdo <!--|Blank  |Delim <")]
    [InlineData("d\\69splay \\", "Ident d\\69splay|Blank  |Delim \\")]
    [InlineData("\"a\\\"b\" 'c", "Text \"a\\\"b\"|Blank  |Text 'c")]
    [InlineData("\"a\nb", "BadText \"a|Blank \n|Ident b")]
    [InlineData(
        "url(a) url( 'a') url(a b) URL(",
        "Url url(a)|Blank  |Function url(|Blank  |Text 'a'|CloseRound )|Blank  |BadUrl url(a b)|Blank  |Url URL("
    )]
    [InlineData("\"a\\\nb\" 'a\\\r\nb' \"a\\", "Text \"a\\\nb\"|Blank  |Text 'a\\\r\nb'|Blank  |Text \"a\\")]
    [InlineData("'a\\62 c' 'a\\", "Text 'a\\62 c'|Blank  |Text 'a\\")]
    [InlineData("url(a\\)b) url( a ) url(a", "Url url(a\\)b)|Blank  |Url url( a )|Blank  |Url url(a")]
    [InlineData("url(a ", "Url url(a ")]
    [InlineData("url(a'b) url(a\\\nb)", "BadUrl url(a'b)|Blank  |BadUrl url(a\\\nb)")]
    [InlineData("/* a */b/*", "Comment /* a */|Ident b|Comment /*")]
    [InlineData(
        "#1a #- # @media @1",
        "Hash #1a|Blank  |Hash #-|Blank  |Delim #|Blank  |AtKeyword @media|Blank  |Delim @|Number 1"
    )]
    [InlineData("U+26 u+4??", "Ident U|Number +26|Blank  |Ident u|Number +4|Delim ?|Delim ?")]
    [InlineData("ä\u0001", "Ident ä|Delim \u0001")]
    public void A_sheet_is_cut_as_the_specification_says(string css, string tokens) =>
        Assert.Equal(tokens, string.Join('|', CssTokens.Of(css).Select(t => $"{t.Kind} {t.In(css)}")));

    [Fact]
    public void Nothing_is_dropped()
    {
        foreach (var css in StyleTable.Read("breaks.txt").Select(r => r.Line).Concat(StyleTable.Files.Select(StyleTable.Plain)))
            Assert.Equal(css, string.Concat(CssTokens.Of(css).Select(t => t.In(css).ToString())));
    }
}
