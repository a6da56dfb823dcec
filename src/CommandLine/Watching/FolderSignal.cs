namespace Gradus.CommandLine;

/// <summary>Wakes somebody when the system says that something in a folder changed. It may say too little, or nothing: whoever
/// waits looks by himself too.</summary>
internal sealed class FolderSignal : IDisposable
{
    private readonly FileSystemWatcher? watcher;

    /// <param name="wake">May be called from any thread, and often.</param>
    public FolderSignal(string folder, Action wake)
    {
        try
        {
            watcher = new(folder)
            {
                IncludeSubdirectories = true,
                NotifyFilter =
                    NotifyFilters.FileName | NotifyFilters.DirectoryName | NotifyFilters.LastWrite | NotifyFilters.Size,
                InternalBufferSize = 64 * 1024,
            };
            watcher.Changed += (_, _) => wake();
            watcher.Created += (_, _) => wake();
            watcher.Deleted += (_, _) => wake();
            watcher.Renamed += (_, _) => wake();
            watcher.Error += (_, _) => wake();
            watcher.EnableRaisingEvents = true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // The folder is gone, or the system watches as many as it will.
            watcher?.Dispose();
            watcher = null;
        }
    }

    public void Dispose() => watcher?.Dispose();
}
