using System.Runtime.InteropServices;

namespace Gradus.HandingOver;

/// <summary>The calls of a Unix system that .NET has no word for. Each says false, or does nothing, where the system has no such
/// call.</summary>
internal static class SystemCalls
{
    private const int CurrentFolder = -100;
    private const uint ExchangeFlag = 2;
    private const int CloseOnExec = 0x80000;
    private const int NotForThisFile = 22;

    /// <summary>"No such call", "no such flag" and "not on this disk", as Linux numbers them.</summary>
    private static readonly int[] NoExchange = [38, NotForThisFile, 95];

    /// <summary>Gives a file a second name. False where that cannot be done: another disk, too many names, a system that forbids
    /// it.</summary>
    public static bool TryLink(string file, string name) => !OperatingSystem.IsWindows() && Link(file, name) == 0;

    /// <summary>Exchanges two folders in one step that nobody can see half done (<c>renameat2</c> with the exchange flag, Linux
    /// 3.15 and glibc 2.28 on). False where there is no such call; then nothing has changed.</summary>
    /// <exception cref="IOException">The system has the call and refused it.</exception>
    public static bool TryExchange(string one, string other)
    {
        if (!OperatingSystem.IsLinux())
            return false;
        try
        {
            if (RenameAt2(CurrentFolder, one, CurrentFolder, other, ExchangeFlag) == 0)
                return true;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
        var error = Marshal.GetLastPInvokeError();
        return NoExchange.Contains(error) ? false : throw Refused(other, error);
    }

    /// <summary>Makes the disk keep a folder's own list of names. Windows has no such call and needs none.</summary>
    /// <exception cref="IOException">The folder is not there, or the disk failed.</exception>
    public static void FlushFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
            return;
        var opened = Open(folder, OperatingSystem.IsLinux() ? CloseOnExec : 0);
        if (opened < 0)
            throw Refused(folder, Marshal.GetLastPInvokeError());
        try
        {
            // Some shared disks do not flush folders and say so; there is nothing more to be had from them.
            if (Flush(opened) != 0 && Marshal.GetLastPInvokeError() is not NotForThisFile and var error)
                throw Refused(folder, error);
        }
        finally
        {
            _ = Close(opened);
        }
    }

    private static Exception Refused(string path, int error)
    {
        var words = $"{Marshal.GetPInvokeErrorMessage(error)} ('{path}')";
        return error switch
        {
            1 or 13 => new UnauthorizedAccessException(words),
            2 => new DirectoryNotFoundException(words),
            36 => new PathTooLongException(words),
            _ => new IOException(words, error),
        };
    }

    [DllImport("libc", EntryPoint = "link", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Link(
        [MarshalAs(UnmanagedType.LPUTF8Str)] string file,
        [MarshalAs(UnmanagedType.LPUTF8Str)] string name
    );

    [DllImport("libc", EntryPoint = "renameat2", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int RenameAt2(
        int fromFolder,
        [MarshalAs(UnmanagedType.LPUTF8Str)] string from,
        int toFolder,
        [MarshalAs(UnmanagedType.LPUTF8Str)] string to,
        uint flags
    );

    [DllImport("libc", EntryPoint = "open", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Flush(int opened);

    [DllImport("libc", EntryPoint = "close", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int opened);
}
