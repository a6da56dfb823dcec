using System.Globalization;

namespace Gradus.Tests.Benchmarks;

internal static class Table
{
    /// <summary>A stage whose processor time grows this many times as much as the work grows faster than it: twice the clients
    /// taking three times as long. Caches and a busy machine make a third of difference.</summary>
    private const double TimeAllowance = 1.5;

    /// <summary>The same for what is allocated, which no other program disturbs.</summary>
    private const double MemoryAllowance = 1.1;

    /// <summary>Shorter times are the machine's, not the stage's.</summary>
    private const double Least = 0.05;

    private static readonly string Heading =
        $"{"stage", -20}{"seconds", 10}{"processor", 11}{"MB allocated", 14}{"floor, s", 10}";

    public static void Write(TextWriter to, Run run)
    {
        to.Write(Line($"{run.Clients:N0} clients, 200 exercises: {run.Pages:N0} pages, {run.Bytes / 1e6:N1} MB. "));
        to.Write(Line($"Sites {run.Hash}, the first {Published.First} clients' {run.FirstHash}. "));
        to.WriteLine(Line($"Most memory held {run.Peak:N0} MB."));
        to.WriteLine(Line($"{Heading}{"ratio", 8}{"of processor", 14}  the floor is"));
        foreach (var lap in run.Product)
            Write(to, lap, run.Floors.FirstOrDefault(f => f.Stage == lap.Stage), Stages.Floors.GetValueOrDefault(lap.Stage, ""));
        Write(to, Together(run.Product), Together(run.Floors), "");
        to.WriteLine();
    }

    private static void Write(TextWriter to, Lap lap, Lap? floor, string what)
    {
        var beside = floor is null
            ? ""
            : Line($"{floor.Seconds, 10:N3}{lap.Seconds / floor.Seconds, 8:N1}{lap.Processor / floor.Processor, 14:N1}  {what}")
                .TrimEnd();
        to.WriteLine(Line($"{lap.Stage, -20}{lap.Seconds, 10:N3}{lap.Processor, 11:N3}{lap.Megabytes, 14:N1}{beside}"));
    }

    private static Lap Together(IEnumerable<Lap> laps) =>
        laps.Aggregate(new Lap("together", 0, 0, 0), (sum, lap) =>
            new(sum.Stage, sum.Seconds + lap.Seconds, sum.Processor + lap.Processor, sum.Megabytes + lap.Megabytes)
        );

    /// <returns>Whether nothing grows faster than the work.</returns>
    public static bool WriteGrowth(TextWriter to, Run once, Run twice)
    {
        var work = (double)twice.Bytes / once.Bytes;
        to.Write(
            Line($"From {once.Clients:N0} to {twice.Clients:N0} clients the work (bytes of all sites) grows {work:N2} times, ")
        );
        to.WriteLine(Line($"the most memory held {twice.Peak / once.Peak:N2} times:"));
        to.WriteLine(Heading);
        var growths = once.Product.Zip(twice.Product, Growth.Of).ToArray();
        foreach (var growth in growths)
        {
            var floor = once
                .Floors.Zip(twice.Floors, Growth.Of)
                .Where(f => f.Stage == growth.Stage)
                .Select(f => Line($"{f.Seconds:N2}"))
                .FirstOrDefault("");
            to.WriteLine(
                Line($"{growth.Stage, -20}{growth.Seconds, 10:N2}{growth.Processor, 11:N2}{growth.Megabytes, 14:N2}{floor, 10}")
            );
        }

        var faster = growths
            .Where(g => (g.Long && g.Processor > TimeAllowance * work) || g.Megabytes > MemoryAllowance * work)
            .Select(g => g.Stage)
            .ToArray();
        to.WriteLine(
            faster.Length == 0
                ? "Nothing grows faster than the work."
                : $"Grows faster than the work: {string.Join(", ", faster)}."
        );
        var same = once.Clients < Published.First || once.FirstHash == twice.FirstHash;
        to.WriteLine(
            same
                ? "The sites are the same whatever the run."
                : "The sites are NOT the same: those of the first clients differ between the two sizes."
        );
        return faster.Length == 0 && same;
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <param name="Long">Whether both runs took long enough to be judged by their time.</param>
    private sealed record Growth(string Stage, double Seconds, double Processor, double Megabytes, bool Long)
    {
        public static Growth Of(Lap small, Lap large) =>
            new(
                large.Stage,
                large.Seconds / small.Seconds,
                large.Processor / small.Processor,
                large.Megabytes / small.Megabytes,
                small.Processor > Least
            );
    }
}
