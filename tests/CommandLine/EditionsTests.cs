using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>What publishing records in the practice, and what comes of it. The practice is that of the rules' pages.</summary>
[Trait("Slow", "yes")]
public sealed class EditionsTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-editions-").FullName;

    public EditionsTests() => Folders.Copy(Repository.Path("tests", "Auditing", "little-practice"), Practice);

    private string Practice => Path.Combine(folder, "practice");

    private string Sites => Path.Combine(folder, "sites");

    private string Records => Path.Combine(Practice, "clients", "tess", "editions");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_first_publish_records_an_edition_and_the_next_writes_nothing()
    {
        Publish("2026-12-07");
        Assert.Equal(["1.yaml"], Recorded());
        Assert.Contains("date: 2026-12-07\n", File.ReadAllText(Path.Combine(Records, "1.yaml")), StringComparison.Ordinal);
        var (sources, sites) = (FolderBytes.Of(Practice), FolderBytes.Of(Sites));
        Publish("2026-12-09");
        Assert.Equal(sources, FolderBytes.Of(Practice));
        Assert.Equal(sites, FolderBytes.Of(Sites));
        Assert.DoesNotContain("New since", Home(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_changed_sign_is_an_edition_that_the_pages_tell_of()
    {
        Publish("2026-12-07");
        ChangeSign();
        var output = Publish("2026-12-08");
        Assert.Contains("tess: edition 2 is recorded; 'gradus compare ", output, StringComparison.Ordinal);
        Assert.Equal(["1.yaml", "2.yaml"], Recorded());
        Assert.Contains("New since 7 December 2026", Home(), StringComparison.Ordinal);
        Assert.Contains("Read this sign again: Sharp pain", Home(), StringComparison.Ordinal);
        Assert.Contains("New since", Page("exercise-calf-press.html"), StringComparison.Ordinal);
        Assert.Contains("New since", Page("session-1.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("New since", Page("weeks.html"), StringComparison.Ordinal);
        Assert.Contains("SEQUENCE:1\r\n", Page("calendar.ics"), StringComparison.Ordinal);
        var (sources, sites) = (FolderBytes.Of(Practice), FolderBytes.Of(Sites));
        Publish("2026-12-10");
        Assert.Equal(sources, FolderBytes.Of(Practice));
        Assert.Equal(sites, FolderBytes.Of(Sites));
    }

    [Fact]
    public void Whoever_is_not_published_and_would_be_another_is_named()
    {
        const string Said = "Changed since their last edition, and not published now: bram.\n";
        Publish("2026-12-07");
        Assert.DoesNotContain(Said, Publish("2026-12-08", "--client", "tess"), StringComparison.Ordinal);
        ChangeSign();
        Assert.EndsWith(Said, Publish("2026-12-08", "--client", "tess"), StringComparison.Ordinal);
        Assert.DoesNotContain(Said, Publish("2026-12-08"), StringComparison.Ordinal);
    }

    /// <summary>Whoever is cut off between the exchange of the site and the record has the site without the record.</summary>
    [Theory]
    [InlineData("1.yaml")]
    [InlineData("2.yaml")]
    public void A_record_that_is_missing_is_completed_and_the_pages_stay_as_they_are(string last)
    {
        Publish("2026-12-07");
        if (last == "2.yaml")
        {
            ChangeSign();
            Publish("2026-12-08");
        }

        var sites = FolderBytes.Of(Sites);
        File.Delete(Path.Combine(Records, last));
        Publish("2026-12-09");
        Assert.Equal(last, Recorded()[^1]);
        Assert.Equal(sites, FolderBytes.Of(Sites));
    }

    [Fact]
    public void A_practice_that_cannot_be_written_is_a_warning()
    {
        File.WriteAllText(Records, "");
        var output = Publish("2026-12-07");
        Assert.Contains("tess: warning: edition 1 is not recorded, because ", output, StringComparison.Ordinal);
        Assert.Contains("the next run records it.", output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Sites, "tess", "index.html")));
    }

    [Fact]
    public void Of_somebody_who_is_blocked_nothing_is_recorded()
    {
        var client = Path.Combine(Practice, "clients", "tess", "client.yaml");
        File.WriteAllText(
            client,
            File.ReadAllText(client).Replace("ankle-injury: no", "ankle-injury: yes", StringComparison.Ordinal)
        );
        Assert.Equal(1, Gradus.Run("publish", Practice, "--to", Sites, "--today", "2026-12-07").Status);
        Assert.False(Directory.Exists(Records));
        Assert.True(Directory.Exists(Path.Combine(Practice, "clients", "bram", "editions")));
    }

    [Fact]
    public void An_audit_records_nothing()
    {
        Publish("2026-12-07");
        ChangeSign();
        var sources = FolderBytes.Of(Practice);
        Gradus.Run("audit", Practice, "--site", Sites, "--today", "2026-12-08");
        Gradus.Run("audit", Practice, "--today", "2026-12-08");
        Gradus.Run("compare", Practice, "--client", "tess");
        Assert.Equal(sources, FolderBytes.Of(Practice));
    }

    [Fact]
    public void A_damaged_record_is_a_warning_and_stops_nobody()
    {
        Publish("2026-12-07");
        var record = Path.Combine(Records, "1.yaml");
        File.WriteAllText(record, File.ReadAllText(record)[..400]);
        var output = Publish("2026-12-08");
        Assert.Contains("clients/tess/editions/1.yaml", output, StringComparison.Ordinal);
        Assert.Equal(["1.yaml", "2.yaml"], Recorded());
        var sites = FolderBytes.Of(Sites);
        Publish("2026-12-09");
        Assert.Equal(["1.yaml", "2.yaml"], Recorded());
        Assert.Equal(sites, FolderBytes.Of(Sites));
    }

    [Fact]
    public void Editions_are_compared_with_each_other_and_with_the_sources()
    {
        Assert.Equal((1, ""), Compared());
        Publish("2026-12-07");
        Assert.Equal((0, "Tess Harrowby: edition 1 of 2026-12-07, then the sources now\nNothing is other.\n"), Compared());
        ChangeSign();
        const string Change = "sign: Sharp pain (sharp-pain) has other words\n";
        Assert.Equal((0, "Tess Harrowby: edition 1 of 2026-12-07, then the sources now\n" + Change), Compared());
        Publish("2026-12-08");
        Assert.Equal((0, "Tess Harrowby: edition 2 of 2026-12-08, then the sources now\nNothing is other.\n"), Compared());
        Assert.Equal((0, "Tess Harrowby: edition 1 of 2026-12-07, then the sources now\n" + Change), Compared("1"));
        var both = "Tess Harrowby: edition 1 of 2026-12-07, then edition 2 of 2026-12-08\n" + Change;
        Assert.Equal((0, both), Compared("1", "2"));
        Assert.Equal((2, ""), Compared("3"));
        Assert.Equal((2, ""), Compared("one"));
        Assert.Equal((2, ""), Compared("1", "2", "3"));
    }

    private (int, string) Compared(params string[] numbers)
    {
        var answer = Gradus.Run(["compare", Practice, "--client", "tess", .. numbers]);
        return (answer.Status, answer.Output);
    }

    private string Publish(string today, params string[] more)
    {
        var (status, output, error) = Gradus.Run(["publish", Practice, "--to", Sites, "--today", today, .. more]);
        Assert.Equal((0, ""), (status, error));
        return output;
    }

    private void ChangeSign() =>
        File.AppendAllText(Path.Combine(Practice, "cautions", "sharp-pain.md"), "Tell your coach the same day.\n");

    private string[] Recorded() => [.. Directory.GetFileSystemEntries(Records).Select(f => Path.GetFileName(f)).Order()];

    private string Home() => Page("index.html");

    private string Page(string path) => File.ReadAllText(Path.Combine(Sites, "tess", path));
}
