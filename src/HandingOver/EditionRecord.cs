using System.Text;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Puts the record of an edition into the practice: whole or not at all, and never over one that is there.</summary>
public static class EditionRecord
{
    /// <param name="practice">The practice's folder.</param>
    /// <returns>Null where it is recorded; else why not, as the end of a sentence.</returns>
    public static string? Write(string practice, ClientId client, Edition edition)
    {
        var place = Path.GetFullPath(Path.Combine(practice, Edition.PathOf(client, edition.Number)));
        var folder = Path.GetDirectoryName(place) ?? place;
        var unfinished = Path.Combine(folder, Places.NewMark + Path.GetFileName(place));
        try
        {
            Directory.CreateDirectory(folder);
            Leftovers.TryRemove(unfinished);
            using (var file = File.OpenHandle(unfinished, FileMode.CreateNew, FileAccess.Write))
            {
                RandomAccess.Write(file, Encoding.UTF8.GetBytes(EditionText.Print(edition)), 0);
                RandomAccess.FlushToDisk(file);
            }

            File.Move(unfinished, place, overwrite: false);
            SystemCalls.FlushFolder(folder);
            return null;
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            Leftovers.TryRemove(unfinished);
            return File.Exists(place) ? "another run has recorded one meanwhile" : DiskTrouble.ReasonOf(cause);
        }
    }
}
