namespace Gradus.CommandLine;

/// <summary>Does a work for many things on all processors, and gives what comes of it in the order of the things, one after
/// another: what is said and written is the same on any machine.</summary>
internal static class AtOnce
{
    /// <summary>How many are begun ahead of the one that is waited for, for each processor: what is made waits in memory until
    /// its turn comes.</summary>
    private const int Ahead = 2;

    /// <param name="work">May be done for several of them at the same time.</param>
    public static IEnumerable<TMade> InOrder<T, TMade>(IEnumerable<T> things, Func<T, TMade> work)
    {
        if (Environment.ProcessorCount == 1)
        {
            foreach (var thing in things)
                yield return work(thing);
            yield break;
        }

        var begun = new Queue<Task<TMade>>();
        foreach (var thing in things)
        {
            begun.Enqueue(Task.Run(() => work(thing)));
            if (begun.Count > Ahead * Environment.ProcessorCount)
                yield return begun.Dequeue().GetAwaiter().GetResult();
        }

        while (begun.TryDequeue(out var next))
            yield return next.GetAwaiter().GetResult();
    }
}
