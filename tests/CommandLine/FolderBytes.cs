using System.Security.Cryptography;

namespace Gradus.Tests.CommandLine;

internal static class FolderBytes
{
    /// <summary>Every file of a published tree with the hash of its bytes; what begins with a dot is the publisher's own and left
    /// out.</summary>
    public static SortedDictionary<string, string> Of(string folder)
    {
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(folder, file);
            if (!path.StartsWith('.'))
                files[path] = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)));
        }

        return files;
    }
}
