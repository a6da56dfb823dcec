using System.Text;
using System.Text.RegularExpressions;
using Gradus.Reading;

namespace Gradus.ThemeCheck;

/// <summary>A whole catalogue for a language that Gradus has none for: the file that <c>gradus new words</c> writes, with every
/// word filled in by the English one in other letters. It is no language.</summary>
internal static partial class MadeUpWords
{
    private const char FirstLetter = 'א';
    private const int Letters = 27;

    [GeneratedRegex(
        "^# (?<key>[a-z0-9-]+): (?:\\{.* other: )?\"?(?<text>.*?)\"?(?: \\})?$\n^(?<entry>\\k<key>: .*)$",
        RegexOptions.CultureInvariant | RegexOptions.Multiline
    )]
    private static partial Regex ToFillIn();

    public static string In(string language) =>
        ToFillIn()
            .Replace(FreshWords.Text(language), entry =>
                entry
                    .Groups["entry"]
                    .Value.Replace("\"\"", $"\"{InOtherLetters(entry.Groups["text"].Value)}\"", StringComparison.Ordinal)
            );

    /// <summary>What stands in braces stays.</summary>
    public static string InOtherLetters(string text)
    {
        var (said, inBraces) = (new StringBuilder(), false);
        foreach (var c in text)
        {
            inBraces = c == '{' || (inBraces && c != '}');
            said.Append(
                char.IsAsciiLetter(c) && !inBraces ? (char)(FirstLetter + ((char.ToLowerInvariant(c) - 'a') % Letters)) : c
            );
        }

        return said.ToString();
    }
}
