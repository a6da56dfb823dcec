using System.Text;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>Hands over a page that is one file by itself, in one step: whoever looks sees the whole page of before or the whole
/// new one.</summary>
public static class SingleFile
{
    /// <exception cref="HandOverException">It could not be done; a file that stood there still stands whole.</exception>
    public static void Write(string path, string page)
    {
        if (!path.EndsWith(PagePath.Ending, StringComparison.OrdinalIgnoreCase) || path.Contains('\0', StringComparison.Ordinal))
            throw new HandOverException(
                $"'{path}' is no name for a page.",
                $"Name a file that ends in {PagePath.Ending} with --to."
            );
        DiskTrouble.Writing(path, () =>
        {
            var place = Path.GetFullPath(path);
            var folder = Path.GetDirectoryName(place) ?? place;
            if (!Directory.Exists(folder))
                throw new HandOverException(
                    $"There is no folder '{folder}' to write '{Path.GetFileName(place)}' into.",
                    "Make it first, or name another file with --to."
                );
            InTheWay.RefuseAtPage(place);
            var places = new Places(place, Path.Combine(folder, Places.NewMark + Path.GetFileName(place)), "");
            places.Replace(() => NewFile.Build(places, Encoding.UTF8.GetBytes(page)), NewFile.Put);
            return place;
        });
    }
}
