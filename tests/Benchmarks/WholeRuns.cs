using System.Diagnostics;
using System.Globalization;

namespace Gradus.Tests.Benchmarks;

/// <summary>The finished command as a coach runs it, each time as a process of its own: how long a first publish takes beside the
/// floors, and what the next one takes after one change.</summary>
internal static class WholeRuns
{
    /// <summary>So many clients do the exercise that is changed.</summary>
    private const int Doers = 10;

    private const string Changed = "changed-between";

    /// <param name="alone">Whether a first publish and the next one are all: beside nothing, for many clients.</param>
    public static void Run(TextWriter to, int clients, bool alone)
    {
        var folder = Directory.CreateTempSubdirectory("gradus-whole-").FullName;
        try
        {
            var made = MadePractice.Of(clients);
            var practice = Path.Combine(folder, "practice");
            made.WriteTo(practice);
            var doers = GiveExercise(made, practice);
            var floor = alone ? double.NaN : Benchmarks.Run.Of(made).Floors.Sum(f => f.Seconds);
            to.WriteLine(Line($"{clients:N0} clients, {Environment.ProcessorCount} processors"));
            if (!alone)
                to.WriteLine(Line($"The floors together take {floor:N1} s on one thread."));
            to.WriteLine(Line($"{"run", -58}{"seconds", 9}{"processor", 11}{"memory, MB", 12}{"beside", 9}  what"));
            var first = Row("publish, the first time", floor, "floors", "publish", practice, "--to", Path.Combine(folder, "a"));
            Row("publish, nothing changed", first, "first", "publish", practice, "--to", Path.Combine(folder, "a"));
            if (alone)
                return;
            File.AppendAllText(Path.Combine(practice, "exercises", Changed + ".md"), "\nBreathe out as you go.\n");
            Row(
                $"publish, one exercise of {doers} clients changed",
                first,
                "first",
                "publish",
                practice,
                "--to",
                Path.Combine(folder, "a")
            );
            Row(
                "publish in three forms, the first time",
                first,
                "first",
                "publish",
                practice,
                "--to",
                Path.Combine(folder, "b"),
                "--as",
                "folder,zip,file"
            );
            Row("audit of the sources and of pages made anew", first, "first", "audit", practice);
            Row("audit of the sites that stand", first, "first", "audit", practice, "--site", Path.Combine(folder, "a"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        double Row(string what, double beside, string whose, params string[] words)
        {
            var (seconds, processor, memory) = Timed([
                .. words,
                "--today",
                MadePractice.Today.ToString("O", CultureInfo.InvariantCulture),
            ]);
            to.WriteLine(
                Line($"{what, -58}{seconds, 9:N2}{processor, 11:N2}{memory, 12:N0}{seconds / beside, 9:N2}  of {whose}")
            );
            return seconds;
        }
    }

    /// <summary>Gives some clients an exercise that nobody else does.</summary>
    private static int GiveExercise(MadePractice made, string folder)
    {
        var exercise = MadeExercises.All[0].Id;
        var use = $"- use: {exercise}\n";
        var doers = made
            .Files.Where(f =>
                f.Key.EndsWith("programme.md", StringComparison.Ordinal) && f.Value.Contains(use, StringComparison.Ordinal)
            )
            .Take(Doers)
            .ToArray();
        foreach (var (path, text) in doers)
            File.WriteAllText(Path.Combine(folder, path), text.Replace(use, $"- use: {Changed}\n", StringComparison.Ordinal));
        File.WriteAllText(Path.Combine(folder, "exercises", Changed + ".md"), made.Files[$"exercises/{exercise}.md"]);
        return doers.Length;
    }

    private static (double Seconds, double Processor, double Memory) Timed(string[] words)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "gradus.dll"), .. words])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start.");
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        var (memory, processor) = (0.0, TimeSpan.Zero);
        while (!process.WaitForExit(20))
        {
            process.Refresh();
            try
            {
                (memory, processor) = (Math.Max(memory, process.WorkingSet64 / 1e6), process.TotalProcessorTime);
            }
            catch (InvalidOperationException)
            {
                break; // It ended meanwhile.
            }
        }

        process.WaitForExit();
        var seconds = watch.Elapsed.TotalSeconds;
        return process.ExitCode == 0
            ? (seconds, processor.TotalSeconds, memory)
            : throw new InvalidOperationException(
                $"{string.Join(' ', words)}: {process.ExitCode}\n{output.Result}\n{error.Result}"
            );
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
