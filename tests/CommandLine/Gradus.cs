using System.Diagnostics;

namespace Gradus.Tests.CommandLine;

/// <summary>The real command, in a process of its own.</summary>
internal static class Gradus
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    public static Answer Run(params string[] words) => Run(new Dictionary<string, string>(StringComparer.Ordinal), words);

    public static Answer Run(IReadOnlyDictionary<string, string> environment, params string[] words)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        foreach (var word in words.Prepend(Path.Combine(AppContext.BaseDirectory, "gradus.dll")))
            start.ArgumentList.Add(word);
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        using var process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start");
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"gradus {string.Join(' ', words)} did not end");
        }

        return new(process.ExitCode, output.Result, error.Result);
    }
}

internal sealed record Answer(int Status, string Output, string Error);
