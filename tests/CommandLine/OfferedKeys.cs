using System.Text.RegularExpressions;

namespace Gradus.Tests.CommandLine;

/// <summary>A starter file's notes begin with "# "; a key that it offers has its # right before it, and what belongs to that key
/// has two blanks or more behind its own #.</summary>
internal static partial class OfferedKeys
{
    [GeneratedRegex("^ *#[^ #]")]
    private static partial Regex Offer();

    [GeneratedRegex("^ *#  ")]
    private static partial Regex Below();

    /// <summary>The text once for every offered key, with that one key in use, beside the line that offers it.</summary>
    public static IEnumerable<(string Offer, string Text)> EachInUse(string path, string text)
    {
        var lines = text.Split('\n');
        for (var from = 0; from < Yaml(path, lines); from++)
        {
            if (!Offer().IsMatch(lines[from]))
                continue;
            var until = from + 1;
            while (until < lines.Length && Below().IsMatch(lines[until]))
                until++;
            yield return (
                lines[from].Trim(),
                string.Join('\n', lines.Select((line, i) => i >= from && i < until ? InUse(line) : line))
            );
        }
    }

    /// <summary>The text with every offered key in use.</summary>
    public static string AllInUse(string path, string text)
    {
        var lines = text.Split('\n');
        return string.Join(
            '\n',
            lines.Select(
                (line, i) => i < Yaml(path, lines) && (Offer().IsMatch(line) || Below().IsMatch(line)) ? InUse(line) : line
            )
        );
    }

    private static string InUse(string line) => line.Remove(line.IndexOf('#', StringComparison.Ordinal), 1);

    /// <summary>How many lines are YAML: all, or the header.</summary>
    private static int Yaml(string path, string[] lines) =>
        path.EndsWith(".yaml", StringComparison.Ordinal) ? lines.Length : Math.Max(0, Array.IndexOf(lines, "---", 1));
}
