using System.Text.RegularExpressions;
using Gradus.Planning;
using Gradus.Tests.House;

namespace Gradus.Tests.Rendering;

/// <summary>A style in fewer letters is the same to a parser of styles.</summary>
public sealed partial class CompactTests
{
    [Theory]
    [InlineData("a { b: c; }\n\n/* said\n   twice */\n.d > e { f: g h; i: j }", "a{b:c}\n.d > e{f:g h;i:j}")]
    [InlineData(
        "@media screen and (min-width: 4rem) {\n  a:hover { b: c; }\n}",
        "@media screen and (min-width: 4rem){a:hover{b:c}}"
    )]
    [InlineData("a::before { content: \"/ \"; }", "a::before{content:\"/ \"}")]
    public void Only_what_says_nothing_is_left_out(string style, string expected) => Assert.Equal(expected, Compact.Style(style));

    [Theory]
    [InlineData("look.css")]
    [InlineData("guide.css")]
    [InlineData("print.css")]
    public void A_theme_says_the_same(string file)
    {
        var style = File.ReadAllText(Repository.Path("themes", "plain", file));
        var compact = Compact.Style(style);
        Assert.InRange(compact.Length, 1, style.Length - 300);
        Assert.Equal(Words(style), Words(compact));
    }

    /// <summary>What stands between blanks and the signs of the grammar, without comments.</summary>
    private static string[] Words(string style) =>
        WordEnd().Split(Comment().Replace(style, "")).Where(word => word.Length > 0).ToArray();

    [GeneratedRegex(@"[\s{};:]+", RegexOptions.CultureInvariant)]
    private static partial Regex WordEnd();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Comment();
}
