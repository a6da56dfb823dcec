namespace Gradus.Tests.CommandLine;

/// <summary>The little practice in a folder of its own, with a place to publish to; gone after the test.</summary>
internal sealed class SentFolder : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("gradus-sent-").FullName;

    public SentFolder()
    {
        foreach (var (path, text) in Auditing.LittlePractice.Files)
        {
            var to = Path.Combine(Practice, path);
            Directory.CreateDirectory(Path.GetDirectoryName(to) ?? Practice);
            File.WriteAllText(to, text);
        }
    }

    public string Practice => Path.Combine(root, "practice");

    public string To => Path.Combine(root, "to");

    public string this[string path] => Path.Combine(root, path);

    public Answer Publish(params string[] words) =>
        Gradus.Run(["publish", Practice, "--to", To, "--today", "2026-12-07", .. words]);

    public Answer Piped(string input, params string[] words) =>
        Gradus.RunTyped(input, ["publish", Practice, "--to", To, "--today", "2026-12-07", .. words]);

    /// <summary>A text of the practice with something in the place of something else that stands there.</summary>
    public void Edit(string path, string from, string to)
    {
        var file = Path.Combine(Practice, path);
        var text = File.ReadAllText(file);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    public void Dispose() => Directory.Delete(root, recursive: true);
}
