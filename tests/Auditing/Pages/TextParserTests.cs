using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing.Pages;

/// <summary>What somebody reads of a page, line by line: the words of the HTML Standard's phrasing content run on in their line,
/// and what a browser shows as something else, or not at all, is no text.</summary>
public sealed class TextParserTests
{
    [Theory]
    [InlineData("a abbr b bdi bdo cite code data dfn em i ins kbd label mark q samp small span strong sub sup time u var")]
    public void Words_in_a_line_stay_in_it(string elements) =>
        Assert.All(elements.Split(' '), e => Assert.Equal(["one two three"], Said($"<p>one <{e}>two</{e}> three</p>")));

    [Theory]
    [InlineData("<p>one<br>two</p>", "one two")]
    [InlineData("<p>one <img src=x alt=y>two</p>", "one two")]
    [InlineData("<p>one <wbr>two</p>", "one two")]
    [InlineData("<p>one</p><p>two</p>", "one|two")]
    [InlineData("<p>one</p>two<p>three</p>", "one|two|three")]
    [InlineData("<ul><li>one<li>two</ul>", "one|two")]
    [InlineData("<table><tr><td>one<td>two</table>", "one|two")]
    [InlineData("<h2>one</h2>two", "one|two")]
    [InlineData("<div>one<div>two</div>three</div>", "one|two|three")]
    [InlineData("<p> one\n  two\t</p>", "one two")]
    [InlineData("<p>one <s>two</s> three</p>", "one|two|three")]
    [InlineData("<p>one <del>two</del> three</p>", "one|two|three")]
    public void A_line_is_what_a_block_holds(string html, string lines) => Assert.Equal(lines, string.Join('|', Said(html)));

    [Theory]
    [InlineData("script style template iframe object canvas video audio datalist meter noembed noframes progress title")]
    public void What_a_browser_shows_otherwise_is_no_text(string elements) =>
        Assert.All(elements.Split(' '), e => Assert.Equal(["one"], Said($"<p>one</p><{e}>two</{e}>")));

    [Theory]
    [InlineData("title")]
    [InlineData("desc")]
    [InlineData("defs")]
    [InlineData("metadata")]
    [InlineData("symbol")]
    public void Of_a_drawing_its_words_are_text_and_what_waits_in_it_is_not(string element) =>
        Assert.Equal(["one"], Said($"<svg><text>one</text><{element}><text>two</text></{element}></svg>"));

    /// <summary>Each in its own words, so that a coach finds it.</summary>
    [Theory]
    [InlineData("<p hidden>one</p>", "the attribute 'hidden'")]
    [InlineData("<p inert>one</p>", "the attribute 'inert'")]
    [InlineData("<p popover>one</p>", "the attribute 'popover'")]
    [InlineData("<p aria-hidden=true>one</p>", "'aria-hidden'")]
    [InlineData("<p aria-hidden=false>one</p>", null)]
    [InlineData("<p style='color: red'>one</p>", "the attribute 'style', which nobody judges")]
    [InlineData("<div hidden><p>one</p></div>", "the attribute 'hidden'")]
    [InlineData("<noscript><p>one</p></noscript>", "the element 'noscript', which is not shown where scripts run")]
    [InlineData("<dialog>one</dialog>", "a dialog that is closed")]
    [InlineData("<dialog open>one</dialog>", null)]
    [InlineData("<details><p>one</p></details>", "details that are closed")]
    [InlineData("<details>one</details>", "details that are closed")]
    [InlineData("<details open><p>one</p></details>", null)]
    [InlineData("<details><summary>one</summary></details>", null)]
    [InlineData("<p><del>one</del></p>", "the element 'del', which strikes it out")]
    [InlineData("<p><s>one</s></p>", "the element 's', which strikes it out")]
    [InlineData("<p>one</p>", null)]
    public void What_not_everybody_gets_says_why(string html, string? why) =>
        Assert.Equal([why], Read(html).Lines.Select(l => l.HiddenBy));

    /// <summary>What a style may leave out, in print or anywhere, counts as left out.</summary>
    [Fact]
    public void What_a_style_may_leave_out_is_not_for_everybody()
    {
        var classes = KnownStyles
            .List.LeftOut.Select(place => place.Selector)
            .Where(s => s[0] == '.' && s[1..].All(c => char.IsAsciiLetterOrDigit(c) || c == '-'))
            .Distinct()
            .ToArray();
        Assert.NotEmpty(classes);
        Assert.All(classes, c =>
        {
            var lines = Read($"<p class='{c[1..]}'>one</p><p>two</p>").Lines;
            Assert.Equal([$"what a style may do with '{c}'", null], lines.Select(l => l.HiddenBy));
        });
    }

    private static IEnumerable<string> Said(string html) => Read(html).Lines.Select(l => l.Text);

    private static PageSeen Read(string html) => PageParser.Read(new Page("x.html", $"<!doctype html><body>{html}"));
}
