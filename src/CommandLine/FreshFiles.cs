using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>The door through which new files of a practice reach the disk: whole or not at all, and never over what is there.</summary>
internal static class FreshFiles
{
    private const string Mark = ".gradus-new-";

    /// <summary>Makes a folder that is not there, or fills one that is empty.</summary>
    /// <exception cref="IOException">Something is there already, or the disk refuses; then nothing has changed.</exception>
    public static void WriteFolder(string folder, Series<StarterFile> files)
    {
        var place = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        if (File.Exists(place)) throw new IOException($"'{folder}' is a file. Name a folder that is not there yet, or is empty.");
        var name = Mark + Path.GetFileName(place);
        if (Directory.Exists(place) && Directory.EnumerateFileSystemEntries(place).Any(entry => Path.GetFileName(entry) != name))
            throw new IOException($"'{folder}' is not empty, and nothing in it is written over. Name a folder that is not there yet, or is empty.");
        var stands = Directory.Exists(place);
        var beside = Path.Combine(stands ? place : Path.GetDirectoryName(place) ?? place, name);
        Carefully(folder, beside, () =>
        {
            Build(beside, files);
            if (stands) MoveIn(beside, place);
            else Directory.Move(beside, place);
        });
    }

    /// <summary>Makes one file that is not there.</summary>
    /// <exception cref="IOException">It is there already, or the disk refuses; then nothing has changed.</exception>
    public static void WriteFile(string file, string text)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(file)) ?? "";
        var beside = Path.Combine(folder, Mark + Path.GetFileNameWithoutExtension(file));
        Carefully(file, beside, () =>
        {
            Directory.CreateDirectory(folder);
            Build(beside, [new(Path.GetFileName(file), text)]);
            File.Move(Path.Combine(beside, Path.GetFileName(file)), file, overwrite: false);
        });
    }

    private static void Build(string beside, Series<StarterFile> files)
    {
        Remove(beside);
        foreach (var file in files)
        {
            var path = Path.Combine(beside, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path) ?? beside);
            File.WriteAllText(path, file.Text);
        }
    }

    /// <summary>An empty folder may be the one the coach stands in, so it stays itself. What makes it a practice comes last.</summary>
    private static void MoveIn(string beside, string place)
    {
        var moved = new List<string>();
        try
        {
            foreach (var entry in Directory.EnumerateFileSystemEntries(beside).OrderBy(File.Exists).ThenBy(e => e, StringComparer.Ordinal).ToArray())
            {
                var to = Path.Combine(place, Path.GetFileName(entry));
                Directory.Move(entry, to);
                moved.Add(to);
            }
        }
        catch
        {
            foreach (var entry in moved) Remove(entry);
            throw;
        }
    }

    private static void Carefully(string said, string beside, Action work)
    {
        try
        {
            work();
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new IOException($"'{said}' could not be written, and nothing was: {trouble.Message}", trouble);
        }
        finally
        {
            Remove(beside);
        }
    }

    private static void Remove(string path)
    {
        if (Directory.Exists(path)) Directory.Delete(path, recursive: true);
        else if (File.Exists(path)) File.Delete(path);
    }
}
