using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Refuses to replace what is no site: a mistaken <c>--to</c> must not cost a coach a folder or file that happens to
/// have the name, such as the client's own folder in the practice.</summary>
internal static class InTheWay
{
    private const string MoveIt = "Move it away, or name another folder with --to.";

    /// <summary>A folder with something in it and no front page is nobody's site.</summary>
    /// <exception cref="HandOverException">A link, a file or such a folder stands there.</exception>
    public static void RefuseAtFolder(string folder)
    {
        RefuseLink(folder);
        if (File.Exists(folder))
            throw new HandOverException($"'{folder}' is a file where the client's folder should be.", MoveIt);
        if (
            Directory.Exists(folder)
            && Directory.EnumerateFileSystemEntries(folder).Any()
            && !File.Exists(Path.Combine(folder, SiteFile.FrontPage))
        )
            throw new HandOverException($"'{folder}' holds something that is no site.", MoveIt);
    }

    /// <exception cref="HandOverException">A link or a folder stands there.</exception>
    public static void RefuseAtZip(string zip)
    {
        RefuseLink(zip);
        if (Directory.Exists(zip))
            throw new HandOverException($"'{zip}' is a folder where the client's zip should be.", MoveIt);
    }

    /// <exception cref="HandOverException">A link or a folder stands there.</exception>
    public static void RefuseAtPage(string page)
    {
        RefuseLink(page);
        if (Directory.Exists(page))
            throw new HandOverException($"'{page}' is a folder where the page should be.", "Name a file with --to.");
    }

    /// <summary>What the zip that is to be replaced holds; one that is not there, or has no byte, holds nothing.</summary>
    /// <exception cref="HandOverException">It is something other than a whole zip of a site of this client.</exception>
    public static Series<SiteFile> FilesOfZip(string zip, ClientId client)
    {
        if (!File.Exists(zip) || new FileInfo(zip).Length == 0)
            return [];
        Exception? cause = null;
        try
        {
            var files = PublishedZip.FilesOf(zip, client);
            if (files.Any(file => file.Path == SiteFile.FrontPage))
                return files;
        }
        catch (HandOverException refused)
        {
            cause = refused;
        }
        throw new HandOverException($"'{zip}' is something other than a whole site of '{client}'.", MoveIt, cause);
    }

    private static void RefuseLink(string path)
    {
        if (new FileInfo(path).LinkTarget is not null)
            throw new HandOverException(
                $"'{path}' is a link to another place.",
                "Remove the link, or name another folder with --to."
            );
    }
}
