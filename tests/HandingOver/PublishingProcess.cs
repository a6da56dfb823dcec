using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>This same test program, started once more to publish one edition after the other and be killed. It does so instead of
/// running tests when a variable of its environment says how and where.</summary>
internal sealed class PublishingProcess : IDisposable
{
    private const string How = "GRADUS_TEST_PUBLISH_HOW";
    private const string Where = "GRADUS_TEST_PUBLISH_WHERE";

    private readonly Process process;
    private string lastLine = "end 0";

    /// <summary>Starts it and returns once it has published, or holds the target.</summary>
    public PublishingProcess(string how, string where, params (string Name, string Value)[] environment)
    {
        var dotnet = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "../../../dotnet"));
        var start = new ProcessStartInfo(dotnet, [typeof(PublishingProcess).Assembly.Location]) { RedirectStandardOutput = true };
        start.Environment[How] = how;
        start.Environment[Where] = where;
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        process = Process.Start(start)!;
        Zone = process.StandardOutput.ReadLine();
        Assert.Equal("at work", process.StandardOutput.ReadLine());
    }

    /// <summary>How far the clocks where it runs are ahead of Greenwich.</summary>
    public string? Zone { get; }

    /// <summary>Lets it publish so many editions, and says how long the last of them took.</summary>
    public TimeSpan WaitFor(int publishes)
    {
        var watch = Stopwatch.StartNew();
        while (lastLine != $"end {publishes}")
        {
            lastLine = process.StandardOutput.ReadLine() ?? throw new EndOfStreamException("The publishing ended by itself.");
            if (lastLine == $"begin {publishes}")
                watch.Restart();
        }
        return watch.Elapsed;
    }

    /// <summary>Kills it as <c>kill -9</c> does. Says the number of the last edition whose publish it had begun, and whether it
    /// had also finished.</summary>
    public (int Edition, bool Finished) Kill()
    {
        process.Kill();
        var last = process
            .StandardOutput.ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .LastOrDefault(lastLine)
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
    internal static void PublishInsteadOfTesting()
    {
        if (Environment.GetEnvironmentVariable(How) is not { } how || Environment.GetEnvironmentVariable(Where) is not { } target)
            return;
        Console.WriteLine(TimeZoneInfo.Local.BaseUtcOffset);
        if (how == "hold")
            Hold(target);
        PublishOnce(how, target, 0);
        Console.WriteLine("at work");
        if (how == "zip once")
            Thread.Sleep(Timeout.Infinite);
        for (var n = 1; n < 100_000; n++)
        {
            Console.WriteLine($"begin {n}");
            PublishOnce(how, target, n);
            Console.WriteLine($"end {n}");
            // So that a few kills fall outside, where the new site must already stand.
            if (n % 20 == 0)
                Thread.Sleep(1);
        }
        Environment.Exit(1);
    }

    private static void Hold(string target)
    {
        using var held = TargetFolder.Open(target);
        Console.WriteLine("at work");
        Thread.Sleep(Timeout.Infinite);
    }

    private static void PublishOnce(string how, string target, int n)
    {
        var site = ExampleSite.Long(n);
        if (how == "cleared and written again")
            CarelessPublication.ClearAndWrite(site, target);
        else if (how == "zip in place")
            CarelessPublication.ZipInPlace(site, target);
        else if (how is "zip" or "zip once")
            Publication.Write(site, target, new ZipForm());
        else
            PublishFolder(how, site, target);
    }

    private static void PublishFolder(string how, Site site, string target)
    {
        using var held = TargetFolder.Open(target);
        FolderForm.Write(site, held, how == "exchange" ? Exchange.Put : Exchange.PutByTwoRenames);
    }
}
