using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>What was worked out of a client's sources is not worked out again from the same, and is told all the same.</summary>
[Trait("Slow", "yes")]
public sealed class PublishSourcesAgainTests : IDisposable
{
    private const string Planted = "Planted among what was found.";

    private static readonly ClientId Nuala = new("nuala");

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-again-").FullName;

    private string To => Path.Combine(folder, "site");

    private string Content => Path.Combine(folder, "content");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>What the record says that the rules on sources found is said as long as nothing is other that it came from; a
    /// file of somebody else is no such thing.</summary>
    [Fact]
    public void What_was_found_in_the_sources_is_said_until_one_of_them_is_other()
    {
        (string What, bool IsAnother, Action Change, string[] Words)[] changes =
        [
            ("nothing", false, () => { }, []),
            ("an exercise of others", false, () => Append("exercises/two-foot-hops.md", "\n\nBreathe out.\n"), []),
            ("a letter to somebody else", false, () => Append("clients/rufus/programme.md", "\nSee you soon.\n"), []),
            ("an exercise", true, () => Append("exercises/tape-to-wall.md", "\n\nBreathe out.\n"), []),
            ("a translation", true, () => Write("exercises/tape-to-wall.fr.md", "---\ntitle: Le mur\n---\n"), []),
            ("an exercise more", true, () => Write("exercises/unread.md", "---\ntitle: Cut\n"), []),
            ("the coach's own notes", true, () => Append("clients/nuala/notes.md", "\nAsk again.\n"), []),
            ("a caution", true, () => Append("cautions/tingling.md", "\n\nWrite to me.\n"), []),
            ("what all share", true, () => Append("practice.md", "\n\nWrite to me.\n"), []),
            ("the day", true, () => { }, ["--today", "2026-12-08"]),
        ];
        Folders.CopyDemonstration(Content, "nuala", "rufus");
        Publish();
        foreach (var (what, isAnother, change, words) in changes)
        {
            Folders.PutBack(Content, To);
            PlantInSources();
            change();
            Assert.True(Publish(words).Output.Contains(Planted, StringComparison.Ordinal) != isAnother, what);
        }
    }

    /// <summary>The first run records editions, which the second one reads: nothing is worked out again for that.</summary>
    [Fact]
    public void The_second_run_already_takes_what_the_first_recorded()
    {
        Folders.Copy(Repository.Path("content"), Content);
        foreach (var editions in Directory.GetDirectories(Content, "editions", SearchOption.AllDirectories))
            Directory.Delete(editions, recursive: true);
        Publish();
        Assert.NotEmpty(Directory.GetDirectories(Content, "editions", SearchOption.AllDirectories));
        PlantInSources();
        Assert.Contains(Planted, Publish().Output, StringComparison.Ordinal);
    }

    /// <summary>Writes into the record of one client's sources that something was found which was not.</summary>
    private void PlantInSources()
    {
        var records = new SiteRecords(To);
        var record = records.Read(Nuala) ?? throw new InvalidOperationException("There is no record.");
        var place = new Location("clients/nuala/programme.md", 3, 1);
        records.Keep(
            Nuala,
            record with
            {
                Found = [.. record.Found, new(new("large-step"), Level.Warning, Nuala, place, Planted, "Take it out.")],
            }
        );
    }

    private Answer Publish(params string[] words) =>
        Gradus.Run(["publish", Content, "--to", To, .. words.Contains("--today") ? words : [.. words, "--today", "2026-12-07"]]);

    private void Append(string file, string text) => File.AppendAllText(Path.Combine(Content, file), text);

    private void Write(string file, string text) => File.WriteAllText(Path.Combine(Content, file), text);
}
