namespace Gradus.Tests.CommandLine;

/// <summary>A copy of the demonstration practice that somebody watches, to be written in; Maud and Rufus train there.</summary>
internal sealed class WatchedCopy : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("gradus-watch-").FullName;

    public WatchedCopy(params string[] words)
    {
        Folders.CopyDemonstration(Practice, "maud", "rufus");
        Watch = WatchProcess.Of(Practice, [.. words, "--today", "2026-12-07"]);
    }

    public string Practice => Path.Combine(root, "practice");

    public WatchProcess Watch { get; }

    public string this[string path] => Path.Combine(Practice, path);

    /// <summary>Waits until a page, or what stands beside one, says something.</summary>
    public void WaitFor(string path, string words) =>
        WatchProcess.Wait(
            () => Watch.Get(path).Text.Contains(words, StringComparison.Ordinal),
            () => $"'{words}' never came:\n{Watch.Get(path).Text}\n{Watch.Output}"
        );

    /// <summary>Changes one passage of a file, written in one go.</summary>
    public void Edit(string path, string passage, string words)
    {
        var text = File.ReadAllText(this[path]);
        Assert.Contains(passage, text, StringComparison.Ordinal);
        File.WriteAllText(this[path], text.Replace(passage, words, StringComparison.Ordinal));
    }

    public void Dispose()
    {
        Watch.Dispose();
        Directory.Delete(root, recursive: true);
    }
}
