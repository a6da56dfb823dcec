namespace Gradus.Tests.Benchmarks;

/// <summary>Numbers that look drawn and are the same in every run: SplitMix64 (Steele, Lea and Flood, OOPSLA 2014).</summary>
internal sealed class Draws(ulong start)
{
    private ulong state = start;

    /// <summary>From 0 to the limit, which is left out.</summary>
    public int Below(int limit) => (int)(Next() % (ulong)limit);

    /// <summary>Both ends included.</summary>
    public int From(int low, int high) => low + Below(high - low + 1);

    public T One<T>(IReadOnlyList<T> all) => all[Below(all.Count)];

    /// <summary>So many different ones, in the order of the list.</summary>
    public IReadOnlyList<T> Some<T>(IReadOnlyList<T> all, int count)
    {
        var left = Enumerable.Range(0, all.Count).ToList();
        while (left.Count > count)
            left.RemoveAt(Below(left.Count));
        return [.. left.Select(i => all[i])];
    }

    private ulong Next()
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
