using System.Diagnostics;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>What <c>src/release</c> makes, made once: under <c>tests/run --long</c> only, because it compiles everything twice
/// more.</summary>
public sealed class ReleasedProgram : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-released-").FullName;
    private readonly Lazy<string> made;

    public ReleasedProgram() =>
        made = new(() =>
        {
            var place = Path.Combine(folder, "released");
            var answer = Run(Repository.Path("src/release"), place);
            Assert.True(answer.Status == 0, answer.Output + answer.Error);
            return place;
        });

    public void Dispose() => Directory.Delete(folder, recursive: true);

    internal string Folder => made.Value;

    /// <summary>The native program with what lies beside it.</summary>
    internal string Native => Assert.Single(Directory.GetDirectories(Folder));

    /// <summary>A folder that nothing is in yet.</summary>
    internal string Empty(string name) => Directory.CreateDirectory(Path.Combine(folder, name)).FullName;

    internal Answer Gradus(params string[] words) => Run(Path.Combine(Native, "gradus"), words);

    internal static Answer Run(string program, params string[] words)
    {
        var start = new ProcessStartInfo(program, words)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start");
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        process.WaitForExit();
        return new(process.ExitCode, output.Result, error.Result);
    }
}
