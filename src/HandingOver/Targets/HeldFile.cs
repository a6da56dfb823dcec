namespace Gradus.HandingOver;

/// <summary>A file that one process holds at a time. It is empty and stays there, so that holding it again changes nothing on the
/// disk; it is let go when the process ends, however it ends.</summary>
internal static class HeldFile
{
    private const int Attempts = 50;
    private static readonly TimeSpan BetweenAttempts = TimeSpan.FromMilliseconds(100);

    /// <summary>"Somebody holds it", as Linux, macOS and Windows number it.</summary>
    private static readonly int[] HeldByAnother = [11, 35, unchecked((int)0x80070020)];

    /// <summary>Waits five seconds for whoever holds it.</summary>
    /// <exception cref="HandOverException">Somebody holds it all that time.</exception>
    public static FileStream Hold(string name, Func<IOException, HandOverException> busyWords)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return new FileStream(name, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException busy) when (HeldByAnother.Contains(busy.HResult))
            {
                if (attempt == Attempts)
                    throw busyWords(busy);
                Thread.Sleep(BetweenAttempts);
            }
        }
    }
}
