using System.Diagnostics;
using Gradus.Reading;
using Gradus.Tests.HandingOver;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>A receive is killed at moments that are chosen by chance, the same on every run; where in a receive each falls is up
/// to the machine.</summary>
[Trait("Slow", "yes")]
public sealed class KilledReceiveTests(ITestOutputHelper output)
{
    private const int Files = 400;

    private static readonly int Kills = LongProof.Cases(100);

    [Theory]
    [InlineData("whole", 11)]
    [InlineData("adding", 13)]
    public void A_killed_receive_loses_no_line_and_the_next_one_goes_on(string how, ulong seed)
    {
        var kills = Kill(how, seed).Take(Kills).ToArray();
        Show(kills);
        Assert.All(kills, kill => Assert.True(kill.IsWhole, $"{kill}"));
        Assert.All(kills, kill => Assert.True(kill.GoesOn, $"{kill}"));
        Assert.All(kills.Where(kill => kill.Finished), kill => Assert.Equal(kill.Number, kill.Sessions));
        Assert.True(kills.Count(kill => !kill.Finished) >= Kills / 4, "Too few kills fell inside a receive to prove anything.");
    }

    [Fact]
    public void A_careless_receive_is_seen_to_be_cut_off()
    {
        var kills = new List<Killed>();
        foreach (var kill in Kill("careless", 12).Take(100))
        {
            kills.Add(kill);
            if (!kill.IsWhole)
                break;
        }

        Show(kills);
        Assert.False(kills[^1].IsWhole);
    }

    private static IEnumerable<Killed> Kill(string how, ulong seed)
    {
        using var folder = new ReceivingFolder(inMemory: true);
        var sent = Enumerable.Range(1, Files).Select(n => ReceivingFolder.Session(folder.Perrin, 7 + (n % 20), n)).ToArray();
        foreach (var (index, entry) in sent.Index())
            folder.Sent($"{index + 1}.csv", entry);
        var chance = new Chance(seed);
        while (true)
        {
            File.Delete(folder.LogOf("perrin"));
            using var receiving = new ReceivingProcess(how, folder.Root);
            WaitFor(receiving.One * chance.Below(10_000) / 1000);
            var (number, finished) = receiving.Kill();
            var log = File.ReadAllText(folder.LogOf("perrin"));
            var halfMade = TemporaryFolder.LeftoversIn(Path.GetDirectoryName(folder.LogOf("perrin"))!).Any();
            var sessions = LogReader.Read("x", File.ReadAllBytes(folder.LogOf("perrin"))).Entries.Count;
            var isWhole = new[] { number, number - 1 }.Any(n => log == LogWriter.Write(sent[..n]));
            yield return new(number, finished, halfMade, sessions, isWhole, GoesOn(folder, Math.Min(number + 1, Files)));
        }
    }

    /// <summary>Whether the next receive takes what the killed one did not, and leaves nothing else behind.</summary>
    private static bool GoesOn(ReceivingFolder folder, int until)
    {
        var files = Enumerable.Range(1, until).Select(n => Path.Combine(folder.Root, $"{n}.csv"));
        var answer = folder.Receive([.. files]);
        var client = Path.GetDirectoryName(folder.LogOf("perrin"))!;
        return answer.Status == 0 && folder.Kept("perrin").Count == until && !TemporaryFolder.LeftoversIn(client).Any();
    }

    /// <summary>More exactly than by sleeping, because a whole receive takes only a few milliseconds.</summary>
    private static void WaitFor(TimeSpan time)
    {
        for (var watch = Stopwatch.StartNew(); watch.Elapsed < time; )
            Thread.SpinWait(20);
    }

    private void Show(IReadOnlyCollection<Killed> kills) =>
        output.WriteLine(
            $"{kills.Count} kills, {kills.Count(k => !k.Finished)} inside a receive, {kills.Count(k => k.HalfMade)} "
                + "with a new log begun beside the one that stands; with the sessions of before "
                + $"{kills.Count(k => k.IsWhole && k.Sessions < k.Number)}, with those after it "
                + $"{kills.Count(k => k.IsWhole && k.Sessions == k.Number)}, torn {kills.Count(k => !k.IsWhole)}"
        );

    /// <summary>What one kill came to.</summary>
    /// <param name="Number">Of the receive that was begun last.</param>
    /// <param name="HalfMade">Whether a new log was begun beside the one that stands.</param>
    /// <param name="Sessions">That stand in the log.</param>
    /// <param name="IsWhole">Whether the log is, to the byte, that of before this receive or that after it.</param>
    /// <param name="GoesOn">Whether the next receive takes the rest.</param>
    private sealed record Killed(int Number, bool Finished, bool HalfMade, int Sessions, bool IsWhole, bool GoesOn);
}
