using System.Text.RegularExpressions;
using Gradus.Tests.House;

namespace Gradus.Tests.Rendering;

/// <summary>The plain theme's styles say start and end, never left and right, so that a page reads from either side.</summary>
public sealed partial class LogicalStyleTests
{
    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    /// <summary>A property or a value that names a side of the screen; a margin, padding or inset of four values whose second and
    /// fourth differ; corners of their own.</summary>
    [GeneratedRegex(
        @"[\w-]*\b(?:left|right)\b[\w-]*(?=\s*[:;}])|(?<=:[^;{}]*)\b(?:left|right)\b"
            + @"|(?:margin|padding|inset|border-(?:width|style|color))\s*:"
            + @"\s*(?:[^\s;}]+ (?<one>[^\s;}]+) [^\s;}]+ (?!\k<one>\s*[;}])[^\s;}]+)(?=\s*[;}!])"
            + @"|border-radius\s*:\s*[^;}\s]+ [^;}]+"
    )]
    private static partial Regex Physical();

    [Theory]
    [InlineData("look.css")]
    [InlineData("intake-sheet.css")]
    public void A_style_names_no_side_of_the_screen(string file) =>
        Assert.Equal(
            "",
            string.Join(
                "\n",
                FoundIn(File.ReadAllText(Repository.Path("themes", "plain", file))).Select(found => $"{file}: {found}")
            )
        );

    [Theory]
    [InlineData("p { margin-left: 1rem; }", "margin-left")]
    [InlineData("p { left: 0 }", "left")]
    [InlineData("p { border-right-color: red; }", "border-right-color")]
    [InlineData("p { text-align: left; }", "left")]
    [InlineData("p { float: right }", "right")]
    [InlineData("p { padding: 0 1rem 0 2rem; }", "padding: 0 1rem 0 2rem")]
    [InlineData("p { border-radius: 4px 0 0 4px; }", "border-radius: 4px 0 0 4px")]
    [InlineData("p { padding: 0 1rem 2rem 1rem; margin: 0; text-align: start; inset-inline-start: 0 }", "")]
    [InlineData("/* Left for the pen */ p { border-radius: 4px; float: inline-start }", "")]
    public void A_side_that_is_named_is_found(string style, string found) =>
        Assert.Equal(found, string.Join("|", FoundIn(style)));

    private static IEnumerable<string> FoundIn(string style) =>
        Physical().Matches(Comment().Replace(style, "")).Select(m => m.Value);
}
