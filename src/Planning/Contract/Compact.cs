namespace Gradus.Planning;

/// <summary>A script or a style as it stands in a page that holds everything: without indentation, and without lines that are
/// empty or a comment. Ours have no text over several lines, so nothing else changes.</summary>
public static class Compact
{
    public static string Of(string text) =>
        string.Join('\n', text.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0 && !IsComment(line)));

    private static bool IsComment(string line) =>
        line.StartsWith("//", StringComparison.Ordinal)
        || (line.StartsWith("/*", StringComparison.Ordinal) && line.IndexOf("*/", StringComparison.Ordinal) == line.Length - 2);
}
