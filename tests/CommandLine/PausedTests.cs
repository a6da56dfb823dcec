using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>A pause from the sources to the pages: two weeks from Monday 7 December 2026, the second paused for. The practice is
/// that of the rules' pages.</summary>
[Trait("Slow", "yes")]
public sealed class PausedTests : IDisposable
{
    private const string Pause = "pause: { from: 2026-12-14, until: 2026-12-20, because: zz a trip }";

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-paused-").FullName;

    public PausedTests() => Folders.Copy(Repository.Path("tests", "Auditing", "little-practice"), Practice);

    private string Practice => Path.Combine(folder, "practice");

    private string Sites => Path.Combine(folder, "sites");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>The audit of the finished site holds every page and the calendar against the plan.</summary>
    [Fact]
    public void Pages_say_it_and_the_calendar_has_nothing_in_it()
    {
        var before = Run("publish", "--to", Sites, "--today", "2026-12-07", "--client", "tess");
        Assert.Contains("\r\nDTSTART:20261214T183000Z\r\n", Page("calendar.ics"), StringComparison.Ordinal);
        Write();
        var after = Run("publish", "--to", Sites, "--today", "2026-12-08", "--client", "tess");
        Assert.Equal((0, 0), (before.Status, after.Status));
        Assert.Contains(
            "Pause from Monday 14 December 2026 to Sunday 20 December 2026. Do nothing of this programme on these days. Week 2 "
                + "begins on Monday 21 December 2026.",
            Page("weeks.html"),
            StringComparison.Ordinal
        );
        Assert.Contains("Your pauses are other, so weeks begin on other days.", Page("index.html"), StringComparison.Ordinal);
        Assert.Contains("data-pauses=2026-12-14/2026-12-20", Page("index.html").Replace("\"", "", StringComparison.Ordinal));
        Assert.Equal(
            ["20261207T183000Z", "20261210T183000Z", "20261221T183000Z", "20261224T183000Z"],
            Page("calendar.ics")
                .Split("\r\n")
                .Where(l => l.StartsWith("DTSTART:", StringComparison.Ordinal))
                .Select(l => l["DTSTART:".Length..])
        );
        Assert.All(Directory.GetFiles(Sites, "*", SearchOption.AllDirectories), file =>
            Assert.DoesNotContain("zz a trip", File.ReadAllText(file), StringComparison.Ordinal)
        );
        Assert.Equal(0, Run("audit", "--site", Sites, "--today", "2026-12-08", "--client", "tess", "--strict").Status);
    }

    [Fact]
    public void It_is_an_edition_that_is_compared_with_the_one_before()
    {
        Run("publish", "--to", Sites, "--today", "2026-12-07", "--client", "tess");
        Write();
        var compared = Run("compare", "--client", "tess");
        Assert.EndsWith("\npauses: none, then 2026-12-14 to 2026-12-20\n", compared.Output, StringComparison.Ordinal);
        Run("publish", "--to", Sites, "--today", "2026-12-08", "--client", "tess");
        var record = File.ReadAllText(Path.Combine(Practice, "clients", "tess", "editions", "2.yaml"));
        Assert.Contains("\npauses:\n  - { from: 2026-12-14, until: 2026-12-20 }\n", record, StringComparison.Ordinal);
        Assert.EndsWith("Nothing is other.\n", Run("compare", "--client", "tess").Output, StringComparison.Ordinal);
    }

    private string Page(string name) => File.ReadAllText(Path.Combine(Sites, "tess", name));

    private void Write()
    {
        var path = Path.Combine(Practice, "clients", "tess", "programme.md");
        var text = File.ReadAllText(path);
        File.WriteAllText(path, text.Replace("weeks: 2\n", $"weeks: 2\n{Pause}\n", StringComparison.Ordinal));
    }

    private Answer Run(string command, params string[] words) => Gradus.Run([command, Practice, .. words]);
}
