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
}
