using System.Text.RegularExpressions;

namespace Gradus.Rendering;

/// <summary>The end tags that a page may leave out, where every byte is carried in a message: that of a list item or a cell where
/// the next one, or the end of the list or row, says it as well (HTML Standard, 13.1.2.4).</summary>
public static partial class OptionalEnds
{
    public static string LeftOut(string html) => Ends().Replace(html, "");

    [GeneratedRegex(@"</li>(?=\s*(?:<li[\s>]|</[ou]l>))|</t[dh]>(?=\s*(?:<t[dh][\s>]|</tr>))", RegexOptions.CultureInvariant)]
    private static partial Regex Ends();
}
