using System.Text;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.CommandLine;

/// <summary>What <c>begin</c> writes, with one of each that <c>new</c> adds, as text.</summary>
public sealed class BegunPractice : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-begin-").FullName;

    public BegunPractice()
    {
        var practice = Path.Combine(folder, "practice");
        Run("begin", practice, "--today", "2026-12-03");
        Run("new", "exercise", "hip-rock", "--in", practice);
        Run("new", "caution", "heavy-head", "--in", practice);
        Run("new", "client", "ada-wren", "--in", practice, "--today", "2026-12-03");
        var client = Path.Combine(practice, "clients", "ada-wren", "client.yaml");
        File.WriteAllText(client, Told(File.ReadAllText(client)));
        foreach (var file in Directory.EnumerateFiles(practice, "*", SearchOption.AllDirectories))
            Texts[Path.GetRelativePath(practice, file).Replace('\\', '/')] = File.ReadAllText(file);
    }

    public SortedDictionary<string, string> Texts { get; } = new(StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>The client's file once the coach has asked what only the client knows.</summary>
    public static string Told(string client) =>
        client
            .Replace("stance: right or left", "stance: right", StringComparison.Ordinal)
            .Replace("born: YYYY", "born: 1990", StringComparison.Ordinal)
            .Replace("YYYY-MM-DD", "2026-12-03", StringComparison.Ordinal);

    /// <summary>The coach says who it is, in the place of what a new practice has.</summary>
    /// <param name="practice">Its folder.</param>
    public static void SayWho(string practice)
    {
        var card = Path.Combine(practice, "practice.md");
        File.WriteAllText(
            card,
            File.ReadAllText(card)
                .Replace("Your practice", "The far hall", StringComparison.Ordinal)
                .Replace("Your name", "Ottoline Marsh", StringComparison.Ordinal)
                .Replace("you@example.org", "coach@example.org", StringComparison.Ordinal)
                .Replace("960000", "960001", StringComparison.Ordinal)
        );
    }

    /// <summary>What reading finds when one file has another text.</summary>
    public Series<Finding> Findings(string path, string text)
    {
        var findings = new Findings();
        var files = Texts
            .Where(f => f.Key != path)
            .Append(new(path, text))
            .Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)));
        PracticeReader.Read(SourceFolder.Of(files), findings);
        return findings.InOrder().ToSeries();
    }

    private static void Run(params string[] words)
    {
        var answer = Gradus.Run(words);
        Assert.True(answer.Status == 0, answer.Error);
    }
}
