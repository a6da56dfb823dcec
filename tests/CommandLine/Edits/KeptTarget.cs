using Gradus.HandingOver;

namespace Gradus.Tests.CommandLine;

/// <summary>A target that is published into again and again, and what should stand in it: of who is published what a publish into
/// an empty target makes, of anybody else what stood there before.</summary>
internal sealed class KeptTarget(string folder)
{
    private readonly SortedDictionary<string, string> expected = new(StringComparer.Ordinal);

    public string Folder => folder;

    /// <summary>The files that sites are made of, by path.</summary>
    public static SortedDictionary<string, string> In(string folder)
    {
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        if (Directory.Exists(folder))
            foreach (var (path, hash) in FolderBytes.Of(folder))
                files[path.Replace('\\', '/')] = hash;
        return files;
    }

    /// <summary>What Gradus keeps for itself, in the target and beside it.</summary>
    public IEnumerable<string> Records() =>
        Directory
            .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(f => Path.GetRelativePath(folder, f).StartsWith('.'))
            .Concat(
                Directory
                    .EnumerateFileSystemEntries(Path.GetDirectoryName(folder) ?? "", Path.GetFileName(folder) + "*")
                    .Concat(Directory.EnumerateFiles(Path.GetDirectoryName(folder) ?? "", ".*"))
                    .Where(File.Exists)
            )
            .Where(f => !f.EndsWith("-lock", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    /// <summary>The files as they are now are what should stand there: somebody else has changed them.</summary>
    public void Altered()
    {
        expected.Clear();
        foreach (var (path, hash) in In(folder))
            expected[path] = hash;
    }

    public void Forget(string top)
    {
        foreach (var path in expected.Keys.Where(p => TopOf(p) == top).ToArray())
            expected.Remove(path);
    }

    /// <param name="fresh">What a publish into an empty target makes.</param>
    /// <returns>What stands there and should not, or the other way round.</returns>
    public IEnumerable<string> Differences(SortedDictionary<string, string> fresh)
    {
        foreach (var top in fresh.Keys.Select(TopOf).Distinct(StringComparer.Ordinal).ToArray())
            Forget(top);
        foreach (var (path, hash) in fresh)
            expected[path] = hash;
        var kept = In(folder);
        return expected
            .Where(e => !kept.TryGetValue(e.Key, out var hash) || hash != e.Value)
            .Select(e => e.Key)
            .Concat(kept.Keys.Where(k => !expected.ContainsKey(k)));
    }

    /// <summary>What one client's site is in the target; among those that are hosted, each has a folder of its own.</summary>
    private static string TopOf(string path) =>
        path.Split('/') is [LinkForm.FolderName, var hosted, ..] ? $"{LinkForm.FolderName}/{hosted}" : path.Split('/')[0];
}
