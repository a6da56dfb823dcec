using System.Collections.Concurrent;

namespace Gradus.Domain;

/// <summary>Answers that take long and are asked for again, while there are not too many of them: what a practice of any size
/// asks never fills the memory. When there are, all are forgotten, and what is asked for again is worked out again. Any number
/// of threads at a time.</summary>
/// <param name="most">How many are remembered.</param>
public sealed class Remembered<TAsked, TAnswer>(int most, IEqualityComparer<TAsked>? comparer = null)
    where TAsked : notnull
{
    private readonly ConcurrentDictionary<TAsked, TAnswer> known = new(comparer);

    /// <summary>Counted here, because asking a dictionary of many threads how much it holds stops all of them.</summary>
    private int count;

    /// <summary>The answer, worked out now where it is not remembered. Two threads that ask at the same time may both work it
    /// out, and get the same one.</summary>
    public TAnswer Of(TAsked asked, Func<TAsked, TAnswer> work)
    {
        if (known.TryGetValue(asked, out var before))
            return before;
        var answer = work(asked);
        if (Volatile.Read(ref count) >= most)
        {
            known.Clear();
            Volatile.Write(ref count, 0);
        }

        while (!known.TryAdd(asked, answer))
            if (known.TryGetValue(asked, out var other))
                return other;
        Interlocked.Increment(ref count);
        return answer;
    }
}
