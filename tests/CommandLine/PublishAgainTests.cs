using System.Text.Json;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>What stands as it was made is neither made nor judged again, and is told all the same.</summary>
[Trait("Slow", "yes")]
public sealed class PublishAgainTests(PublishedDemonstration published) : IDisposable
{
    private const string Planted = "Planted among what was found.";

    private static readonly ClientId Nuala = new("nuala");

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-again-").FullName;

    private string To => Path.Combine(folder, "site");

    private string Content => Path.Combine(folder, "content");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>What the record says was found is said: so nothing was judged again.</summary>
    [Fact]
    public void What_was_found_is_said_from_the_record()
    {
        published.CopyTo(To);
        Plant();
        var answer = Publish();
        Assert.Contains(Planted, answer.Output, StringComparison.Ordinal);
        Assert.Contains("nuala: 18 pages, nothing changed", answer.Output, StringComparison.Ordinal);
        Assert.Contains(Planted, Publish().Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_was_altered_is_put_right_from_the_same_record()
    {
        published.CopyTo(To);
        Plant();
        var before = FolderBytes.Of(To);
        File.AppendAllText(Path.Combine(To, "nuala", "session-1.html"), "<p>Never mind the pain.");
        File.Delete(Path.Combine(To, "nuala", "files.txt"));
        File.WriteAllText(Path.Combine(To, "nuala", "more.html"), "");
        var answer = Publish();
        Assert.Contains("nuala: 18 pages, 2 files new or changed", answer.Output, StringComparison.Ordinal);
        Assert.Contains(Planted, answer.Output, StringComparison.Ordinal);
        Assert.Equal(before, FolderBytes.Of(To));
    }

    [Fact]
    public void Whatever_a_page_comes_from_makes_it_anew()
    {
        Folders.CopyDemonstration(Content, "nuala", "rufus");
        var theme = Path.Combine(folder, "theme");
        Folders.Copy(Repository.Path("themes/plain"), theme);
        File.AppendAllText(Path.Combine(theme, "README.md"), "\nMine.\n");
        (string What, Action Change, string[] Words)[] changes =
        [
            ("an exercise", () => Append("exercises/tape-to-wall.md", "\n\nBreathe out.\n"), []),
            ("the client's name", () => Change("clients/nuala/client.yaml", "name: Nuala", "name: Nualah"), []),
            ("a name of somebody else", () => Change("clients/rufus/client.yaml", "name: Rufus", "name: Rufuss"), []),
            ("a theme", () => { }, ["--theme", theme]),
            ("another form", () => { }, ["--as", "file"]),
        ];
        Publish();
        foreach (var (what, change, words) in changes)
        {
            Folders.PutBack(Content, To);
            Plant();
            Assert.True(Publish().Output.Contains(Planted, StringComparison.Ordinal), $"{what}: before");
            change();
            Assert.False(Publish(words).Output.Contains(Planted, StringComparison.Ordinal), what);
        }
    }

    [Fact]
    public void The_day_is_judged_anew()
    {
        published.CopyTo(To);
        Plant();
        var answer = Publish("--today", "2031-12-01");
        Assert.Contains("programme-over", answer.Output, StringComparison.Ordinal);
        Assert.Contains(Planted, answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_acceptance_holds_for_what_is_recorded_too()
    {
        Folders.Copy(Repository.Path("content"), Content);
        published.CopyTo(To);
        Plant();
        Assert.Contains(Planted, Publish().Output, StringComparison.Ordinal);
        File.WriteAllText(
            Path.Combine(Content, "accepted.yaml"),
            $"""
            - rule: heading-skipped
              file: session-1.html
              saw: "{Planted}"
              because: It was planted.
              by: Ottoline Marsh
              until: 2027-06-30
            """
        );
        var answer = Publish();
        Assert.DoesNotContain(Planted, answer.Output, StringComparison.Ordinal);
    }

    /// <summary>The one file, the zip and the folder come of one making, and are those that each makes by itself.</summary>
    [Fact]
    public void Several_forms_in_one_run_are_those_of_several_runs()
    {
        var answer = Publish("--as", "folder,zip,file");
        Assert.Equal(0, answer.Status);
        Assert.Contains(
            "nuala: 18 pages, 30 files new or changed: " + Path.Combine(To, "nuala.zip"),
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "nuala: one page, new or changed: " + Path.Combine(To, "nuala.html"),
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("another form", answer.Output, StringComparison.Ordinal);
        var together = FolderBytes.Of(To);
        Directory.Delete(To, recursive: true);
        foreach (var form in (string[])["folder", "zip", "file"])
            Publish("--as", form);
        Assert.Equal(FolderBytes.Of(To), together);
        Assert.Contains("'paper' is not a value of --as", Publish("--as", "folder,paper").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_is_said_and_written_on_any_number_of_processors()
    {
        Folders.CopyDemonstration(Content, "maud", "nuala", "rufus");
        Change("clients/rufus/client.yaml", "wrist-pain: no", "wrist-pain: yes, left");
        var answers = ((string[])["1", "2", "7"])
            .Select(processors =>
            {
                var to = To + processors;
                var answer = Gradus.RunApart(
                    [new("DOTNET_PROCESSOR_COUNT", processors)],
                    "publish",
                    Content,
                    "--to",
                    to,
                    "--as",
                    "folder,file",
                    "--today",
                    "2026-12-07"
                );
                return (Said: answer.Output.Replace(to, To, StringComparison.Ordinal), answer.Status, Files: FolderBytes.Of(to));
            })
            .ToArray();
        Assert.Equal(1, answers[0].Status);
        foreach (var other in answers[1..])
        {
            Assert.Equal(answers[0].Said, other.Said);
            Assert.Equal(answers[0].Files, other.Files);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    public void Parts_put_together_are_the_whole(int parts)
    {
        Folders.Copy(Repository.Path("content"), Content);
        Change("clients/rufus/client.yaml", "wrist-pain: no", "wrist-pain: yes, left");
        File.WriteAllText(Path.Combine(Content, "exercises", "nobody-does.md"), "---\ntitle: Cut\n");
        var whole = Found(Audit());
        var each = Enumerable.Range(1, parts).Select(k => Found(Audit("--part", $"{k}/{parts}"))).ToArray();
        Assert.True(whole.Count > 5);
        Assert.Equal(whole, each.SelectMany(f => f).Distinct().Order(StringComparer.Ordinal));
        // What concerns one client alone is said once.
        Assert.All(each.SelectMany(f => f).GroupBy(f => f, StringComparer.Ordinal).Where(f => f.Count() > 1), f =>
            Assert.Contains("\"client\":null", f.Key, StringComparison.Ordinal)
        );

        for (var k = 1; k <= parts; k++)
            Gradus.Run("publish", Content, "--to", To, "--part", $"{k}/{parts}", "--today", "2026-12-07");
        var together = FolderBytes.Of(To);
        Directory.Delete(To, recursive: true);
        Gradus.Run("publish", Content, "--to", To, "--today", "2026-12-07");
        Assert.Equal(FolderBytes.Of(To), together);
    }

    [Theory]
    [InlineData("0/2")]
    [InlineData("3/2")]
    [InlineData("1")]
    [InlineData("1/2/3")]
    [InlineData("a/b")]
    [InlineData("1/1001")]
    public void What_is_no_part_is_refused(string part)
    {
        var answer = Audit("--part", part);
        Assert.Equal(2, answer.Status);
        Assert.Contains($"'{part}' is no part.", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_audit_of_sites_takes_the_record_only_for_the_very_bytes()
    {
        published.CopyTo(To);
        Plant();
        Assert.Contains(Planted, Audit("--site", To).Output, StringComparison.Ordinal);
        File.AppendAllText(Path.Combine(To, "nuala", "session-1.html"), "<p>Never mind the pain.");
        var answer = Audit("--site", To);
        Assert.DoesNotContain(Planted, answer.Output, StringComparison.Ordinal);
        Assert.Contains("text-not-planned", answer.Output, StringComparison.Ordinal);
        Assert.Contains("not-as-published", answer.Output, StringComparison.Ordinal);
    }

    /// <summary>An error that was found on a page is said again, and nobody is published by a record.</summary>
    [Fact]
    public void An_error_in_a_record_blocks()
    {
        published.CopyTo(To);
        Plant(Level.Error);
        var answer = Publish();
        Assert.Equal(1, answer.Status);
        Assert.Contains("nuala: NOT published", answer.Output, StringComparison.Ordinal);
        Assert.Contains(Planted, answer.Output, StringComparison.Ordinal);
    }

    /// <summary>Writes into the record of one client that something was found which was not.</summary>
    private void Plant(Level level = Level.Warning)
    {
        var records = new SiteRecords(To);
        var record = records.Read(Nuala, Rendition.Pages) ?? throw new InvalidOperationException("There is no record.");
        Assert.Empty(record.Found);
        records.Keep(
            Nuala,
            Rendition.Pages,
            record with
            {
                Found = [new(new("heading-skipped"), level, Nuala, new("session-1.html", 3, 1), Planted, "Take it out.")],
                Lines = [new("session-1.html", 3, "the line")],
            }
        );
    }

    private Answer Publish(params string[] words) =>
        Gradus.Run(["publish", Sources, "--to", To, .. words.Contains("--today") ? words : [.. words, "--today", "2026-12-07"]]);

    private Answer Audit(params string[] words) =>
        Gradus.Run(["audit", Sources, "--format", "json", .. words, "--today", "2026-12-07"]);

    private string Sources => Directory.Exists(Content) ? Content : Repository.Path("content");

    private static List<string> Found(Answer answer) =>
        [
            .. JsonDocument
                .Parse(answer.Output)
                .RootElement.GetProperty("findings")
                .EnumerateArray()
                .Select(f => f.GetRawText())
                .Order(StringComparer.Ordinal),
        ];

    private void Change(string file, string from, string to)
    {
        var path = Path.Combine(Content, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }

    private void Append(string file, string text) => File.AppendAllText(Path.Combine(Content, file), text);
}
