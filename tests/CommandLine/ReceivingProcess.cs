using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.CommandLine;

/// <summary>This same test program, started once more to receive one file after the other and be killed. It does so instead of
/// running tests when a variable of its environment says what and where.</summary>
internal sealed class ReceivingProcess : IDisposable
{
    private const string How = "GRADUS_TEST_RECEIVE_HOW";
    private const string Where = "GRADUS_TEST_RECEIVE_WHERE";

    private readonly Process process;

    /// <summary>Starts it and returns once it has received the first file, and knows how long the second took.</summary>
    /// <param name="how">"whole" as the command does it, "adding" as it does at its end, "careless" over the log that
    /// stands.</param>
    /// <param name="root">A folder with a practice and files to receive, 1.csv and so on.</param>
    public ReceivingProcess(string how, string root)
    {
        var dotnet = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "../../../dotnet"));
        var start = new ProcessStartInfo(dotnet, [typeof(ReceivingProcess).Assembly.Location]) { RedirectStandardOutput = true };
        start.Environment[How] = how;
        start.Environment[Where] = root;
        process = Process.Start(start)!;
        var watch = Stopwatch.StartNew();
        for (var line = ""; line != "end 2"; )
        {
            line = process.StandardOutput.ReadLine() ?? throw new EndOfStreamException("The receiving ended by itself.");
            if (line == "begin 2")
                watch.Restart();
        }

        One = watch.Elapsed;
    }

    /// <summary>How long one receive takes.</summary>
    public TimeSpan One { get; }

    /// <summary>Kills it as <c>kill -9</c> does. Says the number of the last file it had begun to receive, and whether it had
    /// also finished.</summary>
    public (int Number, bool Finished) Kill()
    {
        process.Kill();
        var last = process
            .StandardOutput.ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .LastOrDefault("end 2")
            .Split(' ');
        process.WaitForExit();
        return (int.Parse(last[1], CultureInfo.InvariantCulture), last[0] == "end");
    }

    public void Dispose()
    {
        if (!process.HasExited)
            process.Kill();
        process.WaitForExit();
        process.Dispose();
    }

    [ModuleInitializer]
    internal static void ReceiveInsteadOfTesting()
    {
        if (Environment.GetEnvironmentVariable(How) is not { } how || Environment.GetEnvironmentVariable(Where) is not { } root)
            return;
        var told = Console.Out;
        Console.SetOut(TextWriter.Null);
        var practice = Path.Combine(root, "practice");
        var client = PracticeReader.Read(SourceFolder.Open(practice), []).Practice?.Clients.Single(c => c.Id.Text == "perrin");
        for (var n = 1; File.Exists(Path.Combine(root, $"{n}.csv")); n++)
        {
            told.WriteLine($"begin {n}");
            if (how == "careless")
                ReceiveCarelessly(practice, Path.Combine(root, $"{n}.csv"));
            else if (how == "adding" && client is not null)
                Add(practice, client, Path.Combine(root, $"{n}.csv"));
            else
                Commands.All().RunAsync(["receive", practice, Path.Combine(root, $"{n}.csv")]).GetAwaiter().GetResult();
            told.WriteLine($"end {n}");
        }

        Environment.Exit(1);
    }

    /// <summary>What a receive does once it knows whose the log is: most of its time goes into reading the practice.</summary>
    private static void Add(string practice, Client client, string file)
    {
        using var addition = LogAddition.Begin(practice, client);
        foreach (var entry in LogReader.Read(file, File.ReadAllBytes(file)).Entries)
            addition.Add(entry);
        addition.Prepare();
        addition.Write();
    }

    /// <summary>What is not done: the log that stands is opened and written anew.</summary>
    private static void ReceiveCarelessly(string practice, string file)
    {
        var log = Path.Combine(practice, "clients", "perrin", "log.csv");
        var lines = File.ReadLines(file).Skip(File.Exists(log) ? 1 : 0).ToArray();
        var all = (File.Exists(log) ? File.ReadAllLines(log) : []).Concat(lines);
        using var over = new StreamWriter(log) { NewLine = "\r\n", AutoFlush = true };
        foreach (var line in all)
            over.WriteLine(line);
    }
}
