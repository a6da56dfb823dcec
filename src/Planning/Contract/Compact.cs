using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using NUglify;

namespace Gradus.Planning;

/// <summary>A script or a style as it stands in a page that holds everything, where each byte is carried in a message.</summary>
public static partial class Compact
{
    /// <summary>Every client of a practice has the same ones.</summary>
    private static readonly ConcurrentDictionary<string, string> Scripts = new(StringComparer.Ordinal);

    /// <summary>A style with each rule on a line, without comments and without blanks that say nothing.</summary>
    public static string Style(string text) =>
        Colon()
            .Replace(Lines().Replace(Blanks().Replace(Comment().Replace(text, ""), "$1"), "$1"), ":")
            .Replace(";}", "}", StringComparison.Ordinal)
            .Trim();

    /// <summary>A script that does the same in fewer letters. What is no script stays as it is: the auditor says that it is none
    /// of ours.</summary>
    public static string Script(string text) =>
        Scripts.GetOrAdd(text, static text => Uglify.Js(text) is { HasErrors: false, Code: { } code } ? code : text);

    /// <summary>No text of a style of ours has the two letters with which a comment begins.</summary>
    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Comment();

    [GeneratedRegex(@"[ \t]*([{};])[ \t]*|(?<=\n)[ \t]+", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();

    /// <summary>Behind the name of a property.</summary>
    [GeneratedRegex(@"(?<=[{;][a-z-]+): ", RegexOptions.CultureInvariant)]
    private static partial Regex Colon();

    [GeneratedRegex(@"([{;])\n+|\n+(?=[\n}])", RegexOptions.CultureInvariant)]
    private static partial Regex Lines();
}
