using Gradus.Domain;

namespace Gradus.Tests.HandingOver;

/// <summary>All that a disk keeps about a folder and what stands in it: inode, number of names, size, time of change of content
/// and of entry.</summary>
internal static class DiskState
{
    public static Series<string> Of(string folder)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Inodes are looked up with GNU find.");
        var (exit, output) = TemporaryFolder.Run("find", folder, "-printf", "%P %i %n %s %T@ %C@\n");
        Assert.Equal(0, exit);
        return output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal).ToSeries();
    }

    /// <summary>The inode of every file by its path.</summary>
    public static Dictionary<string, string> Inodes(string folder)
    {
        var (exit, output) = TemporaryFolder.Run("find", folder, "-type", "f", "-printf", "%P %i\n");
        Assert.Equal(0, exit);
        return output
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split(' '))
            .ToDictionary(p => p[0], p => p[1]);
    }
}
