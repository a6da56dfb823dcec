using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

internal static class Folders
{
    /// <summary>The names of the folders in one, in order, without those that Gradus keeps for itself.</summary>
    public static IEnumerable<string> In(string folder) =>
        Directory.GetDirectories(folder).Select(f => Path.GetFileName(f)).Where(n => n[0] != '.').Order(StringComparer.Ordinal);

    /// <summary>Every file of a folder, in another that need not be there yet.</summary>
    public static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var path = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(path) ?? to);
            File.Copy(file, path);
        }
    }

    /// <summary>The demonstration practice with a few of its clients alone: most of what is held does not hang on how many there
    /// are, and each takes its time.</summary>
    public static void CopyDemonstration(string to, params string[] clients)
    {
        Copy(Repository.Path("content"), to);
        Directory.Delete(Path.Combine(to, "groups"), recursive: true);
        foreach (var folder in Directory.GetDirectories(Path.Combine(to, "clients")))
            if (!clients.Contains(Path.GetFileName(folder), StringComparer.Ordinal))
                Directory.Delete(folder, recursive: true);
    }

    /// <summary>Keeps the folders as they are the first time, and puts them back so every other time.</summary>
    public static void PutBack(params string[] folders)
    {
        foreach (var folder in folders)
        {
            var first = folder + "-first";
            if (!Directory.Exists(first))
                Copy(folder, first);
            Directory.Delete(folder, recursive: true);
            Copy(first, folder);
        }
    }
}
