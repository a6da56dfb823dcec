using System.Text;

namespace Gradus.HandingOver;

/// <summary>A site that is one page in a target, known by something that stands in every such page.</summary>
internal static class MarkedPage
{
    /// <param name="largest">The most bytes that it may have, inclusive.</param>
    public static bool Stands(string place, string mark, long largest)
    {
        try
        {
            return File.Exists(place)
                && new FileInfo(place).Length <= largest
                && File.ReadAllText(place, Encoding.UTF8).Contains(mark, StringComparison.Ordinal);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <param name="what">What should stand there, in a sentence: "a whole site".</param>
    /// <exception cref="HandOverException">A link, a folder, or a file that is something else stands there.</exception>
    public static void RefuseOther(string place, string what, string mark, long largest)
    {
        InTheWay.RefuseAtPage(place);
        if (File.Exists(place) && new FileInfo(place).Length > 0 && !Stands(place, mark, largest))
            throw new HandOverException($"'{place}' is something other than {what}.", InTheWay.MoveIt);
    }
}
