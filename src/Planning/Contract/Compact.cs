using System.Collections.Concurrent;
using NUglify;

namespace Gradus.Planning;

/// <summary>A script or a style as it stands in a page that holds everything, where each byte is carried in a message.</summary>
public static class Compact
{
    /// <summary>Every client of a practice has the same ones.</summary>
    private static readonly ConcurrentDictionary<string, string> Scripts = new(StringComparer.Ordinal);

    /// <summary>A style without indentation, and without lines that are empty or a comment.</summary>
    public static string Style(string text) =>
        string.Join('\n', text.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0 && !IsComment(line)));

    /// <summary>A script that does the same in fewer letters. What is no script stays as it is: the auditor says that it is none
    /// of ours.</summary>
    public static string Script(string text) =>
        Scripts.GetOrAdd(text, static text => Uglify.Js(text) is { HasErrors: false, Code: { } code } ? code : text);

    private static bool IsComment(string line) =>
        line.StartsWith("/*", StringComparison.Ordinal) && line.IndexOf("*/", StringComparison.Ordinal) == line.Length - 2;
}
