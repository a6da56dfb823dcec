namespace Gradus.HandingOver;

/// <summary>What a path inside a site may be: relative, <c>/</c> between folders, and no name that begins with a dot, ends in a
/// dot or space, or holds a sign that some system keeps for itself. So a site cannot reach out of its folder, on any
/// system.</summary>
internal static class SitePath
{
    private const string KeptSigns = "\\:*?\"<>|";

    public static bool IsSafe(string path) => path.Length > 0 && path.Split('/').All(IsSafeName);

    /// <exception cref="HandOverException">A path is not safe, or a file is called like a folder of another.</exception>
    public static void Check(IEnumerable<string> paths)
    {
        var files = paths.ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var path in files)
        {
            if (!IsSafe(path))
                throw new HandOverException(
                    $"'{path}' cannot be the path of a file in a site.",
                    "Give the file a plain name inside the site, in the theme or the practice."
                );
            if (FoldersOf(path).FirstOrDefault(files.Contains) is { } both)
                throw new HandOverException(
                    $"'{both}' is both a file and a folder of one site.",
                    "Give one of them another name, in the theme or the practice."
                );
        }
    }

    /// <summary>The folders that a path leads through, the outermost first: <c>a</c> and <c>a/b</c> for
    /// <c>a/b/c.html</c>.</summary>
    public static IEnumerable<string> FoldersOf(string path) =>
        Enumerable.Range(0, path.Length).Where(i => path[i] == '/').Select(i => path[..i]);

    private static bool IsSafeName(string name) =>
        name.Length > 0
        && name[0] != '.'
        && name[^1] is not '.' and not ' '
        && !name.Any(sign =>
            char.IsControl(sign) || char.IsSurrogate(sign) || KeptSigns.Contains(sign, StringComparison.Ordinal)
        );
}
