using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What a publish that failed or was killed leaves in a target. Only names that Gradus gives are touched.</summary>
internal static class Leftovers
{
    /// <summary>Puts back every site that is missing and whose state of before stands beside its place; removes everything else
    /// left over.</summary>
    /// <param name="isSite">Whether a site, or a file beside sites, may have that name.</param>
    public static void PutRight(string folder, Func<string, bool> isSite)
    {
        var names = Directory
            .EnumerateFileSystemEntries(folder, Places.Mark + "*")
            .Select(path => Path.GetFileName(path))
            .Order(StringComparer.Ordinal)
            .ToSeries();
        foreach (var places in PlacesOf(Places.NewMark))
            Remove(places.New);
        foreach (var places in PlacesOf(Places.OldMark))
        {
            if (!Path.Exists(places.Site))
            {
                Directory.Move(places.Old, places.Site);
                continue;
            }
            // Renamed first: a removal that is cut off must not leave a half folder under the name that is put back.
            Directory.Move(places.Old, places.New);
            Remove(places.New);
        }

        IEnumerable<Places> PlacesOf(string mark) =>
            names
                .Where(name => name.StartsWith(mark, StringComparison.Ordinal))
                .Select(name => name[mark.Length..])
                .Where(isSite)
                .Select(name => Places.In(folder, name));
    }

    /// <summary>Removes a folder with all in it, or whatever else has the name. Links are removed, never followed.</summary>
    public static void Remove(string path)
    {
        if (Directory.Exists(path))
            Directory.Delete(path, recursive: true);
        else
            File.Delete(path);
    }

    /// <summary>As <see cref="Remove"/>, where the work is done and what cannot be removed now is left for the next
    /// publish.</summary>
    public static void TryRemove(string path)
    {
        try
        {
            Remove(path);
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            // The next publish removes it, or says why it cannot.
        }
    }
}
