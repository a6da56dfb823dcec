using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.Json;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>A script of this folder, run by node: what it is asked goes in and what it answers comes out as JSON.</summary>
internal static class Node
{
    private static readonly ConcurrentDictionary<string, Lazy<Standing>> Standings = new(StringComparer.Ordinal);

    public static async Task<TAnswer> Ask<TAsked, TAnswer>(string script, TAsked asked)
    {
        using var asking = Started(script);
        var stop = TestContext.Current.CancellationToken;
        var (said, trouble) = (asking.StandardOutput.ReadToEndAsync(stop), asking.StandardError.ReadToEndAsync(stop));
        await asking.StandardInput.WriteAsync(JsonSerializer.Serialize(asked, JsonSerializerOptions.Web).AsMemory(), stop);
        asking.StandardInput.Close();
        await asking.WaitForExitAsync(stop);
        Assert.True((await trouble).Length == 0, $"{script} ended with:\n{await trouble}");
        return Read<TAnswer>(await said);
    }

    /// <summary>A script that answers one line with one line, and is started once for everybody who asks. It ends with this
    /// process, when nothing more can come in.</summary>
    public static Task<TAnswer> AskAgain<TAsked, TAnswer>(string script, TAsked asked) =>
        Task.Run(() =>
            Read<TAnswer>(
                Standings
                    .GetOrAdd(script, name => new(() => new(Started(name))))
                    .Value.Ask(JsonSerializer.Serialize(asked, JsonSerializerOptions.Web))
            )
        );

    private static Process Started(string script)
    {
        var start = new ProcessStartInfo("node", script)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Repository.Path("tests", "Browser"),
        };
        return Process.Start(start) ?? throw new InvalidOperationException("node did not start");
    }

    private static TAnswer Read<TAnswer>(string said) =>
        JsonSerializer.Deserialize<TAnswer>(said, JsonSerializerOptions.Web)
        ?? throw new InvalidOperationException("node said nothing");

    private sealed class Standing(Process process)
    {
        private readonly Lock turn = new();

        public string Ask(string line)
        {
            lock (turn)
            {
                process.StandardInput.WriteLine(line);
                process.StandardInput.Flush();
                return process.StandardOutput.ReadLine()
                    ?? throw new InvalidOperationException(process.StandardError.ReadToEnd());
            }
        }
    }
}
