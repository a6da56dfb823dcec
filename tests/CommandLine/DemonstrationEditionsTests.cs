using System.Text.RegularExpressions;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>The demonstration holds its editions, so that publishing it writes nothing into it: other tests read it at the same
/// time. With <c>GRADUS_WRITE_EDITIONS=1</c> this test writes them anew, which a change of what the demonstration asks and says
/// needs; then the sample is to be published again.</summary>
[Trait("Slow", "yes")]
public sealed partial class DemonstrationEditionsTests : IDisposable
{
    private static readonly string Content = Repository.Path("content");

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-editions-of-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_demonstration_holds_the_editions_that_publishing_it_records()
    {
        var practice = Path.Combine(folder, "practice");
        Folders.Copy(Content, practice);
        foreach (
            var records in Directory.GetDirectories(Path.Combine(practice, "clients"), "editions", SearchOption.AllDirectories)
        )
            Directory.Delete(records, recursive: true);
        var programme = Path.Combine(practice, "clients", "maud", "programme.md");
        var now = File.ReadAllText(programme);
        // Maud is the one who has had an edition before: it had no side reach on Sundays.
        const string Differences = "differences:\n";
        Assert.Contains(Differences, now, StringComparison.Ordinal);
        File.WriteAllText(
            programme,
            now.Replace(
                Differences,
                Differences + "  - leave-out: seated-side-reach\n    because: not yet\n",
                StringComparison.Ordinal
            )
        );
        Publish(practice, "2026-11-30");
        File.WriteAllText(programme, now);
        Publish(practice, "2026-12-05", "--client", "maud");
        var made = EditionsIn(practice);
        if (Environment.GetEnvironmentVariable("GRADUS_WRITE_EDITIONS") == "1")
            foreach (var (path, text) in made)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(Content, path)) ?? Content);
                File.WriteAllText(Path.Combine(Content, path), text);
            }

        Assert.Equal(7, made.Count);
        // What was hashed of a training is told only: a new kind of fact in it makes no edition.
        Assert.Equal(made.Select(Compared), EditionsIn(Content).Select(Compared));
    }

    [Fact]
    public void Publishing_the_demonstration_writes_nothing_into_it()
    {
        var practice = Path.Combine(folder, "practice");
        Folders.Copy(Content, practice);
        var before = FolderBytes.Of(practice);
        Publish(practice, "2026-12-07");
        Assert.Equal(before, FolderBytes.Of(practice));
    }

    private void Publish(string practice, string today, params string[] more)
    {
        var sites = Path.Combine(folder, "sites");
        var (status, _, error) = Gradus.Run(["publish", practice, "--to", sites, "--today", today, .. more]);
        Assert.Equal((0, ""), (status, error));
    }

    private static SortedDictionary<string, string> EditionsIn(string practice)
    {
        var editions = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in Directory.GetFiles(Path.Combine(practice, "clients"), "*.yaml", SearchOption.AllDirectories))
            if (Path.GetFileName(Path.GetDirectoryName(file)) == "editions")
                editions[Path.GetRelativePath(practice, file).Replace('\\', '/')] = File.ReadAllText(file);
        return editions;
    }

    private static string Compared(KeyValuePair<string, string> edition) =>
        edition.Key + "\n" + TrainingLine().Replace(edition.Value, "");

    [GeneratedRegex("^training: .*$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex TrainingLine();
}
