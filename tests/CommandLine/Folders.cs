namespace Gradus.Tests.CommandLine;

internal static class Folders
{
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
