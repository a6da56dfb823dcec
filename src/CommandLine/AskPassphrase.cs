using Gradus.HandingOver;

namespace Gradus.CommandLine;

/// <summary>Asks the person at the keyboard for a passphrase, or takes the next line of a pipe. It is never a word of the command
/// line, which other programs see and a shell remembers.</summary>
internal static class AskPassphrase
{
    private static readonly Lock OneAtATime = new();

    /// <summary>What is typed where several commands run in one process, which has one keyboard; else nothing.</summary>
    internal static readonly AsyncLocal<TextReader?> Typed = new();

    /// <summary>The locked form, as <c>--passphrase</c> says.</summary>
    public static LockedForm FormOf(string said) =>
        said switch
        {
            "ask" => new(client => For($"Passphrase for {client}"), anew: true),
            "anew" => new(anew: true),
            _ => new(),
        };

    /// <summary>Several clients may be asked for at the same time; each gets the keyboard to itself.</summary>
    /// <param name="what">What stands before the colon.</param>
    /// <exception cref="HandOverException">There is no further line.</exception>
    public static string For(string what)
    {
        lock (OneAtATime)
        {
            Progress.Clear();
            if (!Console.IsInputRedirected)
                Console.Error.Write($"{what}: ");
            return (Typed.Value ?? Console.In).ReadLine()
                ?? throw new HandOverException(
                    "A passphrase is asked for, and there is no line to take it from.",
                    "Type it, or put one line for each into a pipe."
                );
        }
    }
}
