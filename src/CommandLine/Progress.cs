namespace Gradus.CommandLine;

/// <summary>One line that says how far a long run has come, on a terminal only.</summary>
internal static class Progress
{
    private static readonly bool OnTerminal = !Console.IsErrorRedirected && !Console.IsOutputRedirected;

    public static void Show(string what)
    {
        if (OnTerminal)
            Console.Error.Write($"\r\u001b[K{what}");
    }

    public static void Clear()
    {
        if (OnTerminal)
            Console.Error.Write("\r\u001b[K");
    }
}
