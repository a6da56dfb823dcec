namespace Gradus.HandingOver;

/// <summary>The folder of <c>--to</c>, held by one publish at a time until it is disposed. The file that holds it,
/// <c>.gradus-lock</c>, is empty and stays there, so that holding it again changes nothing on the disk.</summary>
public sealed class TargetFolder : IDisposable
{
    private const string LockName = Places.Mark + "lock";
    private readonly FileStream held;

    private TargetFolder(string root, FileStream held)
    {
        Root = root;
        this.held = held;
    }

    /// <summary>The whole path, with no separator at its end.</summary>
    public string Root { get; }

    /// <summary>Makes the folder if need be, holds it, and puts right what a publish that was killed left behind: a site caught
    /// between two renames is put back, unfinished folders are removed. Waits five seconds for another publish.</summary>
    /// <exception cref="HandOverException">The folder cannot be used, or another publish holds it.</exception>
    public static TargetFolder Open(string path)
    {
        var root = Checked(path);
        return DiskTrouble.Writing(root, () =>
        {
            MakeFolder(root);
            var held = Hold(root);
            try
            {
                Leftovers.PutRight(root, name => Forms.All.InOrder.Any(f => Places.ClientOf(name, f.Ending) is not null));
                LinkForm.PutRight(root);
                return new TargetFolder(root, held);
            }
            catch
            {
                held.Dispose();
                throw;
            }
        });
    }

    /// <summary>A folder that was removed, or whose disk was taken away, must not come into being again as an empty one that
    /// nobody holds.</summary>
    internal void RefuseVanished()
    {
        if (!File.Exists(held.Name))
            throw new HandOverException(
                $"'{Root}' vanished while it was being published into.",
                "See that the folder and its disk are there, and publish again."
            );
    }

    public void Dispose() => held.Dispose();

    private static string Checked(string path)
    {
        if (path.Length == 0 || path.Contains('\0'))
            throw new HandOverException("The folder to publish into has no name.", "Name a folder with --to.");
        var root = DiskTrouble.Writing(path, () => Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));
        if (new FileInfo(root).LinkTarget is { } elsewhere)
            throw new HandOverException($"'{root}' is a link to '{elsewhere}'.", "Name the folder itself with --to.");
        for (var part = root; part is not null; part = Path.GetDirectoryName(part))
        {
            if (File.Exists(part))
                throw new HandOverException($"'{part}' is a file, not a folder.", "Name a folder with --to.");
        }
        return root;
    }

    private static void MakeFolder(string root)
    {
        if (Directory.Exists(root))
            return;
        Directory.CreateDirectory(root);
        if (Path.GetDirectoryName(root) is { } parent)
            SystemCalls.FlushFolder(parent);
    }

    private static FileStream Hold(string root) =>
        HeldFile.Hold(Path.Combine(root, LockName), busy =>
            new($"Another publish is at work in '{root}'.", "Wait until it is done, and publish again.", busy)
        );
}
