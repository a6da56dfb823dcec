using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What a publish that failed or was killed leaves in a target. Only names that Gradus gives are touched.</summary>
internal static class Leftovers
{
    /// <summary>Puts back the site of every client who has none and whose site of before stands beside it; removes everything
    /// else left over.</summary>
    public static void PutRight(string target, IEnumerable<IForm> forms)
    {
        var names = Directory
            .EnumerateFileSystemEntries(target, Places.Mark + "*")
            .Select(path => Path.GetFileName(path))
            .Order(StringComparer.Ordinal)
            .ToSeries();
        var endings = forms.Select(form => form.Ending).ToSeries();
        foreach (var places in endings.SelectMany(ending => PlacesOf(names, Places.NewMark, ending, target)))
            Remove(places.New);
        foreach (var places in endings.SelectMany(ending => PlacesOf(names, Places.OldMark, ending, target)))
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

    private static IEnumerable<Places> PlacesOf(Series<string> names, string mark, string ending, string target) =>
        names
            .Where(name => name.StartsWith(mark, StringComparison.Ordinal))
            .Select(name => Places.ClientOf(name[mark.Length..], ending))
            .OfType<ClientId>()
            .Select(client => Places.Of(target, client, ending));
}
