namespace Gradus.HandingOver;

/// <summary>Says what a disk refuses in plain words.</summary>
public static class DiskTrouble
{
    private const int ReadOnlyDisk = 30;

    /// <summary>No space, over quota (numbers of Unix), and the two ways Windows says that a disk is full.</summary>
    private static readonly int[] Full = [28, 122, unchecked((int)0x80070070), unchecked((int)0x80070027)];

    /// <summary>Why something new could not be written, as the end of a sentence: "there is no room left on that disk".</summary>
    public static string ReasonOf(Exception cause) =>
        cause switch
        {
            UnauthorizedAccessException => "Gradus may not write there",
            PathTooLongException => "its path is longer than this system allows",
            DirectoryNotFoundException or FileNotFoundException => "its place is not there, or vanished meanwhile",
            _ when Full.Contains(cause.HResult) => "there is no room left on that disk",
            _ when cause.HResult == ReadOnlyDisk => "that disk cannot be written",
            _ => cause.Message,
        };

    /// <summary>Does the work of writing in a folder; what the disk refuses comes out as a sentence about that folder.</summary>
    internal static T Writing<T>(string folder, Func<T> work) => Told(work, cause => cause switch
            {
                UnauthorizedAccessException => new(
                    $"Gradus may not write in '{folder}'.",
                    "Get leave to write there, or name another folder with --to.",
                    cause
                ),
                PathTooLongException => new(
                    $"A path in '{folder}' is longer than this system allows.",
                    "Name a folder with a shorter path with --to.",
                    cause
                ),
                DirectoryNotFoundException or FileNotFoundException => new(
                    $"Something in '{folder}' vanished while it was being written.",
                    "See that the folder and its disk are still there, and publish again.",
                    cause
                ),
                _ when Full.Contains(cause.HResult) => new(
                    $"There is no room left for '{folder}'.",
                    "Free some space on that disk, and publish again.",
                    cause
                ),
                _ when cause.HResult == ReadOnlyDisk => new(
                    $"'{folder}' is on a disk that cannot be written.",
                    "Name a folder on another disk with --to.",
                    cause
                ),
                _ => new($"'{folder}' could not be written: {cause.Message}", "Put that right, and publish again.", cause),
            });

    /// <summary>Does the work of reading a folder; what the disk refuses comes out as a sentence about that folder.</summary>
    internal static T Reading<T>(string folder, Func<T> work) => Told(work, cause => cause switch
            {
                UnauthorizedAccessException => new($"Gradus may not read all of '{folder}'.", "Get leave to read it.", cause),
                DirectoryNotFoundException or FileNotFoundException => new(
                    $"Something in '{folder}' is not there, or vanished while it was being read.",
                    "See that the folder is there and nobody is publishing, and try again.",
                    cause
                ),
                _ => new($"'{folder}' could not be read: {cause.Message}", "Put that right, and try again.", cause),
            });

    private static T Told<T>(Func<T> work, Func<Exception, HandOverException> words)
    {
        try
        {
            return work();
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            throw words(cause);
        }
    }
}
