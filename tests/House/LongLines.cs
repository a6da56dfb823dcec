using System.Text.RegularExpressions;

namespace Gradus.Tests.House;

/// <summary>The lines of a C# text that are longer than a screen is wide. What stands between the two ends of a raw string
/// literal is the text of something else, a file or a page, and is as long as that is.</summary>
internal static partial class LongLines
{
    public const int Most = 130;

    /// <summary>What may hold quotes that begin no raw literal, so that it is passed over, and the raw literals.</summary>
    [GeneratedRegex(
        """//[^\n]*|/\*.*?\*/|'(?:\\[^'\n]+|\\'|[^'\\\n])'|(?<raw>(?<quotes>"{3,}).*?\k<quotes>"*)"""
            + """|(?:@\$?|\$@)"(?:[^"]|"")*"|"(?:\\.|[^"\\\n])*"(?!")""",
        RegexOptions.Singleline | RegexOptions.CultureInvariant
    )]
    private static partial Regex Token();

    /// <summary>Their numbers, from 1.</summary>
    public static IEnumerable<int> In(string code)
    {
        var inside = new HashSet<int>();
        foreach (Match literal in Token().Matches(code).Where(token => token.Groups["raw"].Success))
        {
            var first = 1 + code.AsSpan(0, literal.Index).Count('\n');
            var last = first + literal.ValueSpan.Count('\n');
            inside.UnionWith(Enumerable.Range(first, last - first + 1).Where(line => line > first && line < last));
        }

        return code.Split('\n').Index().Where(l => l.Item.Length > Most).Select(l => l.Index + 1).Where(l => !inside.Contains(l));
    }
}
