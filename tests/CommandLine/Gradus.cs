using System.Diagnostics;
using Gradus.CommandLine;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>The real command: words in, words and exit status out.</summary>
internal static class Gradus
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>Inside this process, where what one test has warmed up serves the next, and several may run at once; under
    /// <c>tests/run --long</c> in a process of its own.</summary>
    public static Answer Run(params string[] words) => LongProof.Whole ? RunApart([], words) : RunHere(words);

    /// <summary>In a process of its own, as at a coach's: for what the surroundings may change, and for what the process itself
    /// does.</summary>
    public static Answer RunApart(IEnumerable<KeyValuePair<string, string>> environment, params string[] words) =>
        RunApart(environment, "", words);

    /// <summary>The same, with what is piped in.</summary>
    public static Answer RunPiped(string input, params string[] words) => RunApart([], input, words);

    /// <summary>The same, with the passphrases that are typed, a line for each; inside this process as
    /// <see cref="Run"/>.</summary>
    public static Answer RunTyped(string input, params string[] words)
    {
        if (LongProof.Whole)
            return RunPiped(input, words);
        var (status, output, error) = Overheard.While(() =>
        {
            AskPassphrase.Typed.Value = new StringReader(input);
            return Commands.All().RunAsync(words);
        });
        return new(status, output, error);
    }

    private static Answer RunApart(IEnumerable<KeyValuePair<string, string>> environment, string input, string[] words)
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
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"gradus {string.Join(' ', words)} did not end");
        }

        return new(process.ExitCode, output.Result, error.Result);
    }

    private static Answer RunHere(string[] words)
    {
        var (status, output, error) = Overheard.While(() => Commands.All().RunAsync(words));
        return new(status, output, error);
    }
}

internal sealed record Answer(int Status, string Output, string Error);
