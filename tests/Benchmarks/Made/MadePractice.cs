using System.Text;

namespace Gradus.Tests.Benchmarks;

/// <summary>A practice of any size that never was: valid, and the same in every run. Its first clients are the same whatever its
/// size.</summary>
/// <param name="Files">Every file by its path in the practice.</param>
internal sealed record MadePractice(int Clients, SortedDictionary<string, string> Files)
{
    /// <summary>Beyond this, names would come twice.</summary>
    public const int Most = 40_000;

    public static readonly DateOnly Today = new(2026, 12, 7);

    public static MadePractice Of(int clients)
    {
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal)
        {
            ["practice.md"] = MadeCard.Practice,
            ["sports/epee.yaml"] = MadeCard.Sport,
            ["conditions.yaml"] = MadeConditions.Yaml(),
        };
        foreach (var caution in MadeCautions.All)
            files[$"cautions/{caution.Id}.md"] = caution.Text;
        foreach (var exercise in MadeExercises.All)
            files[$"exercises/{exercise.Id}.md"] = exercise.Text;
        for (var number = 0; number < clients; number++)
            foreach (var (path, text) in MadeClient.Files(number))
                files[path] = text;
        return new(clients, files);
    }

    public IEnumerable<KeyValuePair<string, byte[]>> Contents() =>
        Files.Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)));

    /// <param name="folder">Made where it is missing.</param>
    public void WriteTo(string folder)
    {
        foreach (var (path, bytes) in Contents())
        {
            var file = Path.Combine(folder, path);
            Directory.CreateDirectory(Path.GetDirectoryName(file) ?? folder);
            File.WriteAllBytes(file, bytes);
        }
    }

    /// <summary>The Markdown of every file that has a header, below it.</summary>
    public string[] Bodies() => [.. Headed().Select(parts => parts.Body)];

    /// <summary>The YAML of every file, headers and whole files.</summary>
    public string[] Yaml() =>
        [
            .. Headed()
                .Select(parts => parts.Header)
                .Concat(Files.Where(f => f.Key.EndsWith(".yaml", StringComparison.Ordinal)).Select(f => f.Value)),
        ];

    private IEnumerable<(string Header, string Body)> Headed() =>
        from file in Files
        where file.Value.StartsWith("---\n", StringComparison.Ordinal)
        let end = file.Value.IndexOf("\n---\n", StringComparison.Ordinal)
        select (file.Value[4..end], file.Value[(end + 5)..]);
}
