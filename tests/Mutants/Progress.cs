namespace Gradus.Tests.Mutants;

/// <summary>What was judged so far, a line each, written as it goes: a run that is cut off goes on from there. Where anything
/// was built anew since, it only says which test to ask first.</summary>
internal sealed class Progress
{
    private readonly string path;

    /// <summary>By <see cref="Mutant.Spot"/>.</summary>
    private readonly Dictionary<string, (Fate Fate, string Test)> judged = new(StringComparer.Ordinal);

    /// <summary>By <see cref="Mutant.Name"/>: the test that noticed it last time.</summary>
    private readonly Dictionary<string, string> noticed = new(StringComparer.Ordinal);

    /// <param name="path">Made where it is missing.</param>
    /// <param name="build">Stands for everything that was built; the first line.</param>
    public Progress(string path, string build)
    {
        this.path = path;
        var lines = File.Exists(path) ? File.ReadAllLines(path) : [];
        var isSame = lines.FirstOrDefault() == build;
        foreach (var cells in lines.Skip(1).Select(l => l.Split('\t')).Where(c => c.Length == 4))
        {
            if (isSame && Enum.TryParse(cells[0], out Fate fate))
                judged[cells[1]] = (fate, cells[2]);
            if (cells[2].Length > 0)
                noticed[cells[1][(cells[1].IndexOf(' ', StringComparison.Ordinal) + 1)..]] = cells[2];
        }

        if (isSame)
            return;
        Directory.CreateDirectory(Path.GetDirectoryName(path) ?? "");
        File.WriteAllLines(path, [build, .. noticed.Select(n => $"#before\t0:0 {n.Key}\t{n.Value}\t0")]);
    }

    public Judged? Before(Mutant mutant) =>
        judged.TryGetValue(mutant.Spot, out var known) ? new(mutant, known.Fate, known.Test) : null;

    /// <returns>The name of a test; null where none is known.</returns>
    public string? First(Mutant mutant) => noticed.GetValueOrDefault(mutant.Name);

    public void Add(Judged one, long milliseconds) =>
        File.AppendAllText(path, $"{one.Fate}\t{one.Mutant.Spot}\t{OnOneLine(one.Test)}\t{milliseconds}\n");

    /// <summary>Says something beside the judged ones.</summary>
    public void Say(string text) => File.AppendAllText(path, $"# {OnOneLine(text)}\n");

    /// <summary>As a name of a test stands in the file.</summary>
    public static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null));
}
