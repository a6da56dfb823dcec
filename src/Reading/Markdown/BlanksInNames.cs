using System.Text.RegularExpressions;

namespace Gradus.Reading;

/// <summary>Lets a coach write the name of a picture or a clip as it is: <c>![The heel is down](Heel down (2).jpg)</c>.
/// CommonMark wants angle brackets around a name with blanks, which nobody knows. Every letter keeps its place.</summary>
internal static partial class BlanksInNames
{
    /// <summary>Of no language (Unicode, private use), while a text is parsed.</summary>
    private const char Stand = '\uE0A0';

    [GeneratedRegex(
        @"(?<=!\[[^\]\n]*\]\()(?:[^()<>""\n]|\([^()\n]*\))*\.(?:jpe?g|png|webp|mp4|webm|m4v|mov|avi|mkv|ogv)(?= *\))",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex Name();

    public static string Held(string markdown) =>
        markdown.Contains("](", StringComparison.Ordinal)
            ? Name().Replace(markdown, name => name.Value.TrimStart(' ').Replace(' ', Stand).PadLeft(name.Length))
            : markdown;

    public static string GivenBack(string text) => text.Replace(Stand, ' ');
}
