using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing.Pages;

/// <summary>What is not on the list of known markup (known-markup.txt) is told in words, each thing by its own.</summary>
public sealed class MarkupParserTests
{
    [Theory]
    [InlineData("<p>x</p>", "")]
    [InlineData("<blink>x</blink>", "the element 'blink'")]
    [InlineData("<p onclick=x>x</p>", "the attribute 'onclick' on 'p'")]
    [InlineData("<p id=a>x</p><p id=b>x</p>", "")]
    [InlineData("<p id=a>x</p><p id=a>x</p>", "the id 'a' a second time")]
    [InlineData("<p id=''>x</p><p id=''>x</p>", "")]
    [InlineData("<p hidden>x</p>", "the attribute 'hidden' where no script shows it again")]
    [InlineData("<p><span aria-hidden=true>x</span></p>", "the attribute 'aria-hidden' around words")]
    [InlineData("<p><span aria-hidden=true> </span>x</p>", "")]
    [InlineData("<p><span aria-hidden=yes></span>x</p>", "aria-hidden=\"yes\" on 'span'")]
    [InlineData("<main>x</main><main>y</main>", "the element 'main' a second time")]
    [InlineData("<ul><p>x</p></ul>", "the element 'p' in 'ul'")]
    [InlineData("<input>", "the element 'input' in this place")]
    public void It_is_told_what_is_strange(string html, string strange) =>
        Assert.Equal(
            strange,
            string.Join(
                '|',
                PageParser
                    .Read(new Page("x.html", $"<!doctype html><head><meta charset=utf-8></head><body>{html}"))
                    .Shape.Strange.Select(s => s.What)
            )
        );

    [Theory]
    [InlineData("<head><title>x</title></head>", true)]
    [InlineData("<head><meta charset=utf-8><title>x</title></head>", false)]
    [InlineData("<head><title>x</title><meta charset=utf-8></head>", true)]
    public void A_head_begins_with_its_charset(string head, bool isStrange) =>
        Assert.Equal(
            isStrange,
            PageParser
                .Read(new Page("x.html", $"<!doctype html>{head}<body><p>x</p>"))
                .Shape.Strange.Any(s => s.What == "a head that does not begin with its charset")
        );
}
