using AngleSharp.Html.Parser;
using Gradus.Rendering;

namespace Gradus.Tests.Rendering;

public sealed class OptionalEndsTests
{
    /// <summary>A parser sees the same elements.</summary>
    [Theory]
    [InlineData("<ul><li>a</li>\n<li>b</li></ul>", "<ul><li>a\n<li>b</ul>")]
    [InlineData("<ol><li class=\"x\"><p>a</p></li> </ol>", "<ol><li class=x><p>a </ol>")]
    [InlineData("<ul><li>a<ul><li>b</li></ul></li></ul><p>c</p>", "<ul><li>a<ul><li>b</ul></ul><p>c</p>")]
    [InlineData("<table><tbody><tr><th>a</th><td>b</td></tr></tbody></table>", "<table><tbody><tr><th>a<td>b</tbody></table>")]
    [InlineData("<ul><li>a</li><!-- between --><li>b</li></ul>", "<ul><li>a</li><!-- between --><li>b</ul>")]
    [InlineData("<div><p>a</p>\n<p>b</p>\n<h2>c</h2></div>", "<div><p>a\n<p>b\n<h2>c</h2></div>")]
    [InlineData("<p>a</p> b <p>c</p><b>d</b>", "<p>a</p> b <p>c</p><b>d</b>")]
    [InlineData("<dl><dt>a</dt><dd>b</dd></dl>", "<dl><dt>a<dd>b</dl>")]
    [InlineData("<p class=\"a b\">", "<p class=\"a b\">")]
    [InlineData("<p class=\"a\" id=\"b\">", "<p class=a id=b>")]
    [InlineData("<p>say class=\"a\"</p>", "<p>say class=\"a\"</p>")]
    [InlineData("<time datetime=\"PT5S\">5 s</time>", "<time datetime=PT5S>5 s</time>")]
    [InlineData("<a href=\"#b-1\" title=\"a\">a</a>", "<a href=#b-1 title=\"a\">a</a>")]
    [InlineData("<a href=\"b/\">a</a>", "<a href=\"b/\">a</a>")]
    [InlineData("<ul><li>a</li><link></ul>", "<ul><li>a</li><link></ul>")]
    public void Only_an_end_that_says_nothing_is_left_out(string html, string expected)
    {
        var found = OptionalEnds.LeftOut(html);
        Assert.Equal(expected, found);
        Assert.Equal(Elements(html), Elements(found));
    }

    private static IEnumerable<string> Elements(string html) =>
        new HtmlParser()
            .ParseDocument(html)
            .All.Select(e =>
                $"{e.LocalName} in {e.ParentElement?.LocalName}: "
                + $"{string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))}"
            );
}
