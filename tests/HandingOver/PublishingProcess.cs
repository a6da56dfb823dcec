using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>This same test program, started once more to publish and be killed. It does so instead of running tests when a variable of its
/// environment says how and where.</summary>
internal sealed class PublishingProcess : IDisposable
{
    private const string How = "GRADUS_TEST_PUBLISH_HOW";
    private const string Where = "GRADUS_TEST_PUBLISH_WHERE";

    private readonly Process process;

    /// <summary>Starts it and returns once it has published, or holds the target.</summary>
    public PublishingProcess(string how, string where)
    {
        var dotnet = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "../../../dotnet"));
        var start = new ProcessStartInfo(dotnet, [typeof(PublishingProcess).Assembly.Location]) { RedirectStandardOutput = true };
        start.Environment[How] = how;
        start.Environment[Where] = where;
        process = Process.Start(start)!;
        Assert.Equal("at work", process.StandardOutput.ReadLine());
    }

    public void Kill()
    {
        process.Kill();
        process.WaitForExit();
    }

    public void Dispose()
    {
        Kill();
        process.Dispose();
    }

    [ModuleInitializer]
    internal static void PublishInsteadOfTesting()
    {
        if (Environment.GetEnvironmentVariable(How) is not { } how || Environment.GetEnvironmentVariable(Where) is not { } target) return;
        using var held = how == "hold" ? TargetFolder.Open(target) : null;
        for (var n = 0; n < 100_000; n++)
        {
            if (held is null) PublishOnce(how, target, n);
            else Thread.Sleep(10);
            if (n == 0) Console.WriteLine("at work");
        }
        Environment.Exit(1);
    }

    private static void PublishOnce(string how, string target, int n)
    {
        var site = ExampleSite.Long(n % 2 == 0 ? "even" : "odd");
        if (how == "careless")
        {
            CarelessPublication.ClearAndWrite(site, target);
            return;
        }
        using var held = TargetFolder.Open(target);
        Publication.Write(site, held, how == "exchange" ? Exchange.Put : Exchange.PutByTwoRenames);
    }
}
