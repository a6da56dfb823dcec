namespace Gradus.HandingOver;

/// <summary>Refuses to replace what is no site: a mistaken <c>--to</c> must not cost a coach a folder or file that happens to
/// have the name, such as the client's own folder in the practice. What else is no site, each form says.</summary>
internal static class InTheWay
{
    public const string MoveIt = "Move it away, or name another folder with --to.";

    /// <exception cref="HandOverException">A link or a folder stands there.</exception>
    public static void RefuseAtPage(string page)
    {
        RefuseLink(page);
        if (Directory.Exists(page))
            throw new HandOverException($"'{page}' is a folder where the page should be.", "Name a file with --to.");
    }

    /// <exception cref="HandOverException">A link stands there.</exception>
    public static void RefuseLink(string path)
    {
        if (new FileInfo(path).LinkTarget is not null)
            throw new HandOverException(
                $"'{path}' is a link to another place.",
                "Remove the link, or name another folder with --to."
            );
    }
}
