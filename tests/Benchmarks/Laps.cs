using System.Diagnostics;

namespace Gradus.Tests.Benchmarks;

/// <summary>What one stage took on this thread, all its parts together.</summary>
/// <param name="Seconds">By the clock on the wall.</param>
/// <param name="Processor">Seconds of processor time of the whole process, which others on the machine disturb less.</param>
/// <param name="Megabytes">Allocated, whether or not it was freed again.</param>
internal sealed record Lap(string Stage, double Seconds, double Processor, double Megabytes);

/// <summary>The stop watch: adds up the time and the memory of each stage, however often it is begun.</summary>
internal sealed class Laps
{
    private readonly Dictionary<string, Lap> sums = new(StringComparer.Ordinal);

    /// <summary>In the order in which the stages were first begun.</summary>
    public IEnumerable<Lap> All => sums.Values;

    public T Time<T>(string stage, Func<T> work)
    {
        var (ticks, processor, bytes) = (
            Stopwatch.GetTimestamp(),
            Environment.CpuUsage.TotalTime,
            GC.GetAllocatedBytesForCurrentThread()
        );
        var made = work();
        var before = sums.GetValueOrDefault(stage) ?? new(stage, 0, 0, 0);
        sums[stage] = new(
            stage,
            before.Seconds + Stopwatch.GetElapsedTime(ticks).TotalSeconds,
            before.Processor + (Environment.CpuUsage.TotalTime - processor).TotalSeconds,
            before.Megabytes + ((GC.GetAllocatedBytesForCurrentThread() - bytes) / 1e6)
        );
        return made;
    }
}
