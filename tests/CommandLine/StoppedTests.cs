using System.Text.Json;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>Who has stopped: no pages, and what stands is named. The practice is that of the rules' pages.</summary>
[Trait("Slow", "yes")]
public sealed class StoppedTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-stopped-").FullName;

    public StoppedTests() => Folders.Copy(Repository.Path("tests", "Auditing", "little-practice"), Practice);

    private string Practice => Path.Combine(folder, "practice");

    private string Sites => Path.Combine(folder, "sites");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void No_pages_are_made_and_what_stands_is_named()
    {
        Run("publish", "--to", Sites, "--today", "2026-12-07");
        var (sources, sites) = (FolderBytes.Of(Practice), FolderBytes.Of(Sites));
        Stop();
        Assert.NotEqual(sources, FolderBytes.Of(Practice));
        sources = FolderBytes.Of(Practice);
        var published = Run("publish", "--to", Sites, "--today", "2026-12-20", "--client", "tess");
        Assert.Equal(0, published.Status);
        Assert.Matches(
            @"tess: stopped on 2026-12-20; the site of \d{4}-\d\d-\d\d is still there: tell the client\.\n  .*tess\n",
            published.Output
        );
        Assert.DoesNotContain("moved away", published.Output, StringComparison.Ordinal);
        Assert.Equal(sites, FolderBytes.Of(Sites));
        Assert.Equal(sources, FolderBytes.Of(Practice));
        var audited = Run("audit", "--site", Sites, "--today", "2026-12-20", "--client", "tess");
        Assert.Matches(@"tess: stopped on 2026-12-20, and .*tess is still there: tell the client\.\n", audited.Output);
        Assert.Equal(0, audited.Status);
    }

    [Fact]
    public void Before_that_day_pages_are_made()
    {
        Stop();
        var published = Run("publish", "--to", Sites, "--today", "2026-12-19", "--client", "tess");
        Assert.Equal(0, published.Status);
        Assert.True(Directory.Exists(Path.Combine(Sites, "tess")));
    }

    [Fact]
    public void Where_nothing_stands_nothing_is_made()
    {
        Stop();
        var published = Run("publish", "--to", Sites, "--today", "2026-12-20", "--client", "tess");
        Assert.Equal(0, published.Status);
        Assert.EndsWith("tess: stopped on 2026-12-20.\n", published.Output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(Sites, "tess")));
    }

    /// <summary>Long after the programme is over the audit says so of who goes on, and not of who has stopped.</summary>
    [Fact]
    public void The_audit_says_what_cannot_be_read_and_nothing_else()
    {
        const string Over = "programme-over  [tess]";
        Assert.Contains(Over, Audit().Output, StringComparison.Ordinal);
        Stop();
        var stopped = Audit();
        Assert.DoesNotContain("[tess]", stopped.Output, StringComparison.Ordinal);
        Assert.Equal(0, stopped.Status);
        Edit("programme.md", "weeks: 2", "weeks: two");
        var unread = Audit();
        Assert.Contains("programme.md", unread.Output, StringComparison.Ordinal);
        Assert.Equal(1, unread.Status);

        Answer Audit() => Run("audit", "--today", "2027-03-01", "--client", "tess");
    }

    [Fact]
    public void The_review_names_them_once_and_asks_nothing_of_them()
    {
        Assert.Contains("Tess", Review("text"), StringComparison.Ordinal);
        Stop();
        var text = Review("text");
        Assert.Contains("\nStopped\n  Tess", text, StringComparison.Ordinal);
        Assert.Contains("on 2026-12-20 (moved away)\n", text, StringComparison.Ordinal);
        Assert.Single(text.Split('\n'), line => line.Contains("(tess)", StringComparison.Ordinal));
        using var json = JsonDocument.Parse(Review("json"));
        Assert.Equal("tess", json.RootElement.GetProperty("stopped")[0].GetProperty("client").GetString());
        Assert.DoesNotContain(json.RootElement.GetProperty("clients").EnumerateArray(), c =>
            c.GetProperty("client").GetString() == "tess"
        );
        Assert.Contains("<h2>Stopped</h2>", Review("html"), StringComparison.Ordinal);

        // A page is written as bytes, past the words that a test hears.
        string Review(string format)
        {
            string[] words = ["review", Practice, "--format", format, "--today", "2026-12-20"];
            return (format == "html" ? Gradus.RunApart([], words) : Gradus.Run(words)).Output;
        }
    }

    [Fact]
    public void In_a_pause_and_right_after_it_nobody_has_gone_quiet()
    {
        const string Quiet = "Gone quiet";
        Assert.Contains(Quiet, Review("2026-12-17"), StringComparison.Ordinal);
        Edit("programme.md", "weeks: 2", "weeks: 2\npause: { from: 2026-12-14, until: 2026-12-20, because: a trip }");
        Assert.DoesNotContain(Quiet, Review("2026-12-17"), StringComparison.Ordinal);
        Assert.DoesNotContain(Quiet, Review("2026-12-27"), StringComparison.Ordinal);
        Assert.Contains("; pause from 2026-12-14 to 2026-12-20 (a trip)\n", Review("2026-12-27"), StringComparison.Ordinal);

        string Review(string today) => Run("review", "--today", today, "--client", "tess").Output;
    }

    private void Stop() => Edit("client.yaml", "minutes:", "stopped: { on: 2026-12-20, because: moved away }\nminutes:");

    private void Edit(string file, string passage, string replacement)
    {
        var path = Path.Combine(Practice, "clients", "tess", file);
        var text = File.ReadAllText(path);
        Assert.Contains(passage, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(passage, replacement, StringComparison.Ordinal));
    }

    private Answer Run(string command, params string[] words) => Gradus.Run([command, Practice, .. words]);
}
