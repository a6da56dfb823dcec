using System.Diagnostics;

namespace Gradus.Tests.Benchmarks;

/// <summary>One practice of that many clients read, checked and published, and the floors beside it.</summary>
/// <param name="Hash">Of every file of every site, and of the order they come in.</param>
/// <param name="FirstHash">The same of the first clients alone, who are the same at any size.</param>
/// <param name="Peak">The most memory that the process has held so far, in MB, when the sites were written.</param>
internal sealed record Run(
    int Clients,
    int Pages,
    long Bytes,
    string Hash,
    string FirstHash,
    double Peak,
    IReadOnlyList<Lap> Product,
    IReadOnlyList<Lap> Floors
)
{
    /// <summary>The run with, for each stage, the median of several runs.</summary>
    public static Run Median(int clients, int runs)
    {
        var made = MadePractice.Of(clients);
        Run[] all = [.. Enumerable.Range(0, runs).Select(_ => Of(made))];
        SameSites.Expect(all.Select(r => r.Hash).Distinct().Count() == 1, "the sites are not the same in every run");
        return all[0] with { Product = Medians(all, r => r.Product), Floors = Medians(all, r => r.Floors) };
    }

    public static Run Of(MadePractice made)
    {
        var folder = Directory.CreateTempSubdirectory("gradus-benchmarks-").FullName;
        try
        {
            Settle();
            var product = new Laps();
            var published = Publishing.Run(made, Path.Combine(folder, "sites"), product);
            using var process = Process.GetCurrentProcess();
            var peak = process.PeakWorkingSet64 / 1e6;
            Settle();
            var floors = new Laps();
            FloorRun.Of(made, published.Clients, Path.Combine(folder, "sites"), Path.Combine(folder, "floor"), floors);
            SameSites.Check(made, published);
            return new(
                made.Clients,
                published.Pages,
                published.Bytes,
                published.Hash(),
                published.FirstHash(),
                peak,
                [.. product.All],
                [.. floors.All]
            );
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Lap[] Medians(Run[] runs, Func<Run, IReadOnlyList<Lap>> laps) =>
        [
            .. laps(runs[0])
                .Index()
                .Select(lap => runs.Select(r => laps(r)[lap.Index]).OrderBy(l => l.Seconds).ElementAt(runs.Length / 2)),
        ];

    private static void Settle()
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
    }
}
