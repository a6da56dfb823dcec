using System.Diagnostics;

namespace Gradus.Tests.HandingOver;

/// <summary>A folder on the real disk, or in memory where the system has a place for that, which is gone after the test; what was
/// mounted in it is unmounted first.</summary>
internal sealed class TemporaryFolder(bool inMemory = false) : IDisposable
{
    private const string Memory = "/dev/shm";
    private static int count;
    private readonly List<string> mounts = [];

    public string Root { get; } =
        inMemory && Directory.Exists(Memory)
            ? Directory
                .CreateDirectory($"{Memory}/gradus-hand-over-{Environment.ProcessId}-{Interlocked.Increment(ref count)}")
                .FullName
            : Directory.CreateTempSubdirectory("gradus-hand-over-").FullName;

    public string this[string path] => Path.Combine(Root, path);

    /// <summary>The names in a folder that begin with a dot, without the file that holds a target.</summary>
    public static IEnumerable<string> LeftoversIn(string target) =>
        Directory
            .EnumerateFileSystemEntries(target, ".*")
            .Select(path => Path.GetFileName(path))
            .Where(name => name != ".gradus-lock");

    /// <summary>A disk of its own of so many KiB. Skips the test, with the reason, where this may not be done.</summary>
    public string Mount(string name, int kibibytes)
    {
        var folder = Directory.CreateDirectory(this[name]).FullName;
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && Run("mount", "-t", "tmpfs", "-o", $"size={kibibytes}k", "tmpfs", folder).Exit == 0,
            "A small disk can be made only on Linux by somebody who may mount (root)."
        );
        mounts.Add(folder);
        return folder;
    }

    public static (int Exit, string Output) Run(string program, params string[] words)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, words) { RedirectStandardOutput = true, RedirectStandardError = true }
        )!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }

    public void Dispose()
    {
        foreach (var mount in mounts)
            Run("umount", mount);
        Directory.Delete(Root, recursive: true);
    }
}
