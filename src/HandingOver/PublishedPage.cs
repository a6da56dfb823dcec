using System.Text;

namespace Gradus.HandingOver;

/// <summary>A site that is one page, as it stands in a target.</summary>
internal static class PublishedPage
{
    public const string Ending = ".html";

    /// <summary>What every such page says of its first part.</summary>
    private const string Mark = "data-page=\"index.html\"";

    /// <summary>Whether a page that holds a whole site stands there. What cannot be read is none.</summary>
    public static bool IsSite(string path)
    {
        try
        {
            return File.Exists(path)
                && new FileInfo(path).Length <= PublishedSite.LargestWhole
                && File.ReadAllText(path, Encoding.UTF8).Contains(Mark, StringComparison.Ordinal);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <exception cref="HandOverException">A link, a folder, or a file that is no site stands there.</exception>
    public static void RefuseOther(string path)
    {
        InTheWay.RefuseAtPage(path);
        if (File.Exists(path) && new FileInfo(path).Length > 0 && !IsSite(path))
            throw new HandOverException(
                $"'{path}' is something other than a whole site.",
                "Move it away, or name another folder with --to."
            );
    }
}
