using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing.Pages;

/// <summary>What a screen reader stops at has a name (WAI-ARIA 1.2, "accessible name required"; from memory).</summary>
public sealed class LabelParserTests
{
    [Theory]
    [InlineData("button link checkbox radio switch tab menuitem option")]
    public void What_is_pressed_is_named_by_what_stands_in_it(string roles) => Assert.All(roles.Split(' '), role =>
        {
            Assert.Equal([$"an element with the role '{role}'"], Nameless($"<div role={role}></div>"));
            Assert.Empty(Nameless($"<div role={role}>x</div>"));
        });

    [Theory]
    [InlineData("region dialog form")]
    public void A_region_is_named_by_a_title(string roles) => Assert.All(roles.Split(' '), role =>
        {
            Assert.Equal([$"an element with the role '{role}'"], Nameless($"<div role={role}>x</div>"));
            Assert.Empty(Nameless($"<div role={role} aria-label=x>y</div>"));
        });

    [Theory]
    [InlineData("<label for=a>x</label><input id=a>", 0)]
    [InlineData("<label for=b>x</label><input id=a>", 1)]
    [InlineData("<label for=a></label><input id=a>", 1)]
    [InlineData("<label>x <input></label>", 0)]
    [InlineData("<label><input></label>", 1)]
    [InlineData("<input type=checkbox>", 1)]
    [InlineData("<input type=submit>", 0)]
    [InlineData("<input type=button>", 1)]
    [InlineData("<input type=button value=x>", 0)]
    [InlineData("<input type=image src=x alt=y>", 0)]
    public void A_field_is_named_by_its_label(string html, int found) => Assert.Equal(found, Nameless(html).Length);

    [Theory]
    [InlineData("<a href=x><span aria-hidden=true>y</span></a>", 1)]
    [InlineData("<a href=x><span hidden>y</span></a>", 1)]
    [InlineData("<a href=x><span>y</span></a>", 0)]
    [InlineData("<a href=x><img src=y alt=''></a>", 1)]
    [InlineData("<a href=x><img src=y alt=z></a>", 0)]
    [InlineData("<a href=x><style>y</style></a>", 1)]
    [InlineData("<a href=x title=y></a>", 0)]
    [InlineData("<a href=x aria-label=y></a>", 0)]
    [InlineData("<a href=x aria-labelledby='b c'></a><p id=c>y</p>", 0)]
    public void A_name_is_what_a_screen_reader_says(string html, int found) => Assert.Equal(found, Nameless(html).Length);

    private static string[] Nameless(string html) =>
        [.. PageParser.Read(new Page("x.html", $"<!doctype html><body>{html}")).Shape.Nameless.Select(n => n.What)];
}
