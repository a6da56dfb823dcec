using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>practice-format.md</c>: what it says of each key, and the files that it shows.</summary>
internal static partial class FormatPage
{
    private const string Page = "practice-format.md",
        More = "specimens.md";

    [GeneratedRegex("Keys of ([a-z -]+)(,.*:|, each.*:)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^\| `([a-z-]+)`(?: \*)? \|(?: ([^|]*) \|)? ([^|]*) \|$", RegexOptions.CultureInvariant)]
    private static partial Regex Row();

    [GeneratedRegex(
        "^```[a-z]+ (\\S+)\n(.*?)^```$",
        RegexOptions.CultureInvariant | RegexOptions.Multiline | RegexOptions.Singleline
    )]
    private static partial Regex Fence();

    /// <summary>By the group and the key: "a session", "days".</summary>
    public static IReadOnlyDictionary<(string Group, string Key), string> Rows()
    {
        var rows = new Dictionary<(string, string), string>();
        var group = "";
        foreach (var line in Text(Page).Split('\n'))
        {
            if (Heading().Match(line) is { Success: true } named)
                group = named.Groups[1].Value;
            else if (line.StartsWith('#') || line.StartsWith("```", StringComparison.Ordinal))
                group = "";
            if (group.Length > 0 && Row().Match(line) is { Success: true } row)
                rows.TryAdd((group, row.Groups[1].Value), Said(row.Groups[2].Value.Trim(), row.Groups[3].Value.Trim()));
        }

        return rows;
    }

    /// <summary>Files that have every group of keys, in sets that are a practice each as far as reading goes.</summary>
    public static IEnumerable<SourceFolder> Specimens()
    {
        var sets = new List<Dictionary<string, byte[]>>();
        foreach (var page in (string[])[Page, More])
        foreach (Match fence in Fence().Matches(Text(page)))
        {
            var path = fence.Groups[1].Value;
            var set = sets.FirstOrDefault(s => !s.ContainsKey(path));
            if (set is null)
                sets.Add(set = new(StringComparer.Ordinal));
            set[path] = Encoding.UTF8.GetBytes(fence.Groups[2].Value);
        }

        return sets.Select(SourceFolder.Of);
    }

    /// <param name="usual">What holds where the key is left out; empty where the table does not say.</param>
    private static string Said(string usual, string what) => usual.Length > 0 ? $"{what}. Usually {usual}." : $"{what}.";

    private static string Text(string name) =>
        BuiltIn.Text(Assembly.GetExecutingAssembly(), name).Replace("\r\n", "\n", StringComparison.Ordinal);
}
