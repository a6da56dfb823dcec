using System.IO.Compression;
using System.Text;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>What a coach notes for nobody else: a phrase is planted in every client's notes and looked for in every byte that is
/// handed over.</summary>
[Trait("Slow", "yes")]
public sealed class NotesTests : IDisposable
{
    private const string Phrase = "the heron stood in the weir all winter";

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-notes-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("folder")]
    [InlineData("zip")]
    public void They_are_in_no_form_of_hand_over(string form)
    {
        var practice = Copy("clients/rufus/notes.md", "clients/hedley/notes.md");
        Assert.Equal(
            0,
            Gradus.Run("publish", practice, "--to", Path.Combine(folder, "sites"), "--as", form, "--today", "2026-12-07").Status
        );
        var handed = HandedOver().ToArray();
        Assert.True(handed.Length > 50, "Too little was handed over to prove anything.");
        Assert.All(handed, file => Assert.False(Holds(file.Bytes), file.Name));
    }

    /// <summary>A letter is for the client: the same search finds it there, so it would find the notes.</summary>
    [Theory]
    [InlineData("folder")]
    [InlineData("zip")]
    public void The_search_finds_a_phrase_that_is_handed_over(string form)
    {
        var practice = Copy("clients/rufus/programme.md");
        Assert.Equal(
            0,
            Gradus
                .Run(
                    "publish",
                    practice,
                    "--to",
                    Path.Combine(folder, "sites"),
                    "--as",
                    form,
                    "--client",
                    "rufus",
                    "--today",
                    "2026-12-07"
                )
                .Status
        );
        Assert.Contains(HandedOver(), file => Holds(file.Bytes));
    }

    private string Copy(params string[] planted)
    {
        var practice = Path.Combine(folder, "practice");
        Folders.Copy(Repository.Path("content"), practice);
        foreach (var path in planted)
            File.AppendAllText(Path.Combine(practice, path), $"\n{char.ToUpperInvariant(Phrase[0])}{Phrase[1..]}.\n");
        return practice;
    }

    private IEnumerable<(string Name, byte[] Bytes)> HandedOver()
    {
        foreach (var path in Directory.EnumerateFiles(Path.Combine(folder, "sites"), "*", SearchOption.AllDirectories))
        {
            if (!path.EndsWith(".zip", StringComparison.Ordinal))
            {
                yield return (path, File.ReadAllBytes(path));
                continue;
            }

            using var zip = ZipFile.OpenRead(path);
            foreach (var entry in zip.Entries)
            {
                using var bytes = new MemoryStream();
                using (var stream = entry.Open())
                    stream.CopyTo(bytes);
                yield return ($"{path}/{entry.FullName}", bytes.ToArray());
            }
        }
    }

    private static bool Holds(byte[] bytes) => Encoding.UTF8.GetString(bytes).Contains(Phrase[1..], StringComparison.Ordinal);
}
