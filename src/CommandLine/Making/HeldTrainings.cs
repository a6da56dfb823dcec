namespace Gradus.CommandLine;

/// <summary>Of how many clients what was worked out is held, so that memory does not grow with the practice: of the last ones
/// that were asked for. What is let go is worked out again where it is asked for again.</summary>
internal sealed class HeldTrainings
{
    /// <summary>More clients than most coaches have; what is held of each is about half a megabyte.</summary>
    private const int Most = 64;

    private readonly Queue<CheckedClient> held = new();

    /// <summary>One more is held; the oldest may be let go for it.</summary>
    public void Hold(CheckedClient client)
    {
        lock (held)
        {
            held.Enqueue(client);
            if (held.Count > Most)
                held.Dequeue().LetGo();
        }
    }
}
