using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.CommandLine;

/// <summary>The door through which new files of a practice reach the disk: whole or not at all, and never over what is
/// there.</summary>
internal static class FreshFiles
{
    private const string Mark = ".gradus-new-";

    /// <summary>Makes a folder that is not there, or fills one that is empty.</summary>
    /// <exception cref="IOException">Something is there already, or the disk refuses; then nothing has changed.</exception>
    public static void WriteFolder(string folder, Series<StarterFile> files) => WriteFolder(folder, files, File.WriteAllText);

    /// <param name="write">How a text reaches a path; a test lets the disk vanish here.</param>
    internal static void WriteFolder(string folder, Series<StarterFile> files, Action<string, string> write)
    {
        var place = PlaceOf(folder);
        if (File.Exists(place))
            throw new IOException($"'{folder}' is a file. Name a folder that is not there yet, or is empty.");
        var name = Mark + Path.GetFileName(place);
        if (Directory.Exists(place) && Directory.EnumerateFileSystemEntries(place).Any(entry => Path.GetFileName(entry) != name))
            throw new IOException(
                $"'{folder}' is not empty, and nothing in it is written over. Name a folder that is not there yet, or is empty."
            );
        var stands = Directory.Exists(place);
        var beside = Path.Combine(stands ? place : Path.GetDirectoryName(place) ?? place, name);
        Carefully(folder, beside, () =>
        {
            Build(beside, files, write);
            if (stands)
                MoveIn(beside, place);
            else
                Directory.Move(beside, place);
        });
    }

    /// <summary>Makes one file that is not there.</summary>
    /// <exception cref="IOException">It is there already, or the disk refuses; then nothing has changed.</exception>
    public static void WriteFile(string file, string text)
    {
        var folder = Path.GetDirectoryName(PlaceOf(file)) ?? "";
        var beside = Path.Combine(folder, Mark + Path.GetFileNameWithoutExtension(file));
        Carefully(file, beside, () =>
        {
            Build(beside, [new(Path.GetFileName(file), text)], File.WriteAllText);
            File.Move(Path.Combine(beside, Path.GetFileName(file)), file, overwrite: false);
        });
    }

    /// <summary>The whole path, with no separator at its end.</summary>
    private static string PlaceOf(string said)
    {
        if (said.Length == 0)
            throw new IOException("The folder has no name. Name one that is not there yet, or is empty.");
        try
        {
            return Path.TrimEndingDirectorySeparator(Path.GetFullPath(said));
        }
        catch (IOException gone)
        {
            throw Refused(said, gone);
        }
    }

    private static void Build(string beside, Series<StarterFile> files, Action<string, string> write)
    {
        Remove(beside);
        foreach (var file in files)
        {
            var path = Path.Combine(beside, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path) ?? beside);
            write(path, file.Text);
        }

        // Where the folder vanished meanwhile, what came later would stand in a new one without what came before.
        if (files.Any(file => !File.Exists(Path.Combine(beside, file.Path))))
            throw new DirectoryNotFoundException();
    }

    /// <summary>An empty folder may be the one the coach stands in, so it stays itself. What makes it a practice comes
    /// last.</summary>
    private static void MoveIn(string beside, string place)
    {
        var moved = new List<string>();
        try
        {
            foreach (
                var entry in Directory
                    .EnumerateFileSystemEntries(beside)
                    .OrderBy(File.Exists)
                    .ThenBy(e => e, StringComparer.Ordinal)
                    .ToArray()
            )
            {
                var to = Path.Combine(place, Path.GetFileName(entry));
                Directory.Move(entry, to);
                moved.Add(to);
            }
        }
        catch
        {
            foreach (var entry in moved)
                Remove(entry);
            throw;
        }
    }

    private static void Carefully(string said, string beside, Action work)
    {
        var made = MissingAbove(beside).ToArray();
        try
        {
            work();
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw Refused(said, trouble);
        }
        finally
        {
            Remove(beside);
            foreach (
                var folder in made.Where(Directory.Exists).Where(folder => !Directory.EnumerateFileSystemEntries(folder).Any())
            )
                Directory.Delete(folder);
        }
    }

    private static IOException Refused(string said, Exception trouble) =>
        new($"'{said}' could not be written, and nothing was: {DiskTrouble.ReasonOf(trouble).TrimEnd('.')}.", trouble);

    /// <summary>The folders above a path that are not there yet, the innermost first.</summary>
    private static IEnumerable<string> MissingAbove(string path)
    {
        for (
            var folder = Path.GetDirectoryName(path);
            folder is not null && !Directory.Exists(folder);
            folder = Path.GetDirectoryName(folder)
        )
            yield return folder;
    }

    private static void Remove(string path)
    {
        if (Directory.Exists(path))
            Directory.Delete(path, recursive: true);
        else if (File.Exists(path))
            File.Delete(path);
    }
}
