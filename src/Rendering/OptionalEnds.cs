using System.Text.RegularExpressions;

namespace Gradus.Rendering;

/// <summary>What the one file may leave out, because every byte of it is carried in a message: the end tags of paragraphs, list
/// items, rows and cells where what follows says it as well (HTML Standard, 13.1.2.4), the quotation marks round what is one
/// plain word (13.1.2.3), and lines with nothing on them.</summary>
public static partial class OptionalEnds
{
    public static string LeftOut(string html) => Blank().Replace(Quotes().Replace(Ends().Replace(html, ""), "$1"), "\n");

    [GeneratedRegex(
        @"</li>(?=\s*(?:<li[\s>]|</[ou]l>))|</t[dh]>(?=\s*(?:<t[dh][\s>]|</tr>))|</tr>(?=\s*(?:<tr[\s>]|</t(?:head|body|able)>))"
            + @"|</d[td]>(?=\s*(?:<d[td][\s>]|</dl>))|</option>(?=\s*(?:<option[\s>]|</select>))"
            + @"|</p>(?=\s*(?:<(?:p|h[1-6]|[ou]l|dl|div|section|article|table|form|fieldset|details|footer)[\s>]"
            + @"|</(?:div|section|article|li|td|th|dd|form|fieldset|details|footer|main)>))",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Ends();

    [GeneratedRegex("\\n\\s*\\n", RegexOptions.CultureInvariant)]
    private static partial Regex Blank();

    /// <summary>In a tag of ours: a text has no quotation mark that is not escaped. Before the end of a tag that closes itself
    /// they stay: the slash would belong to the word.</summary>
    [GeneratedRegex(
        "(?<=<[a-z][^<>]* (?:aria-(?:labelledby|pressed)|class|colspan|data-(?:about|act|alarm|choose-week|do|done|dose|doses"
            + "|fill|guide|kind|later|log|panel|say|version|week-now|weeks|why)|datetime|height|href|id|name|role|rowspan|scope"
            + "|tabindex|type|value|width|x|y)=)\"([#A-Za-z0-9.-]+)\"(?!/)",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Quotes();
}
