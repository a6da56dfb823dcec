using System.Text.Json;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class AuditCommandTests(PublishedDemonstration published) : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-audit-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_published_tree_is_judged_as_it_stands()
    {
        published.CopyTo(folder);
        Assert.Equal(0, Gradus.Run("audit", Repository.Path("content"), "--site", folder, "--today", "2026-12-07").Status);

        var page = Path.Combine(folder, "rufus", "session-1.html");
        File.WriteAllText(
            page,
            File.ReadAllText(page)
                .Replace("<h4>Sharp or sudden pain</h4>", "<h4 hidden>Sharp or sudden pain</h4>", StringComparison.Ordinal)
        );
        var answer = Gradus.Run(
            "audit",
            Repository.Path("content"),
            "--site",
            folder,
            "--today",
            "2026-12-07",
            "--format",
            "json"
        );
        Assert.Equal(1, answer.Status);
        var findings = JsonDocument
            .Parse(answer.Output)
            .RootElement.GetProperty("findings")
            .EnumerateArray()
            .Where(f => f.GetProperty("level").GetString() != "note")
            .ToArray();
        Assert.Equal(
            ["caution-hidden", "caution-not-in-session", "file-list-wrong", "markup-not-known", "not-as-published"],
            findings.Select(f => f.GetProperty("rule").GetString() ?? "").Distinct().Order(StringComparer.Ordinal)
        );
        var finding = findings.First(f => f.GetProperty("rule").GetString() == "caution-hidden");
        Assert.Equal("error", finding.GetProperty("level").GetString());
        Assert.Equal("rufus", finding.GetProperty("client").GetString());
        Assert.Equal("session-1.html", finding.GetProperty("file").GetString());
        Assert.Equal(
            ["rule", "level", "client", "file", "line", "column", "message", "help"],
            finding.EnumerateObject().Select(p => p.Name)
        );
    }

    /// <summary>A program asks which client is blocked; people are told of the one cause.</summary>
    [Fact]
    [Trait("Slow", "yes")]
    public void What_a_theme_does_to_several_is_one_sentence_for_people_and_one_finding_each_for_programs()
    {
        var theme = Path.Combine(folder, "theme");
        Folders.Copy(Repository.Path("themes", "plain"), theme);
        var top = Path.Combine(theme, "top.html");
        File.WriteAllText(
            top,
            File.ReadAllText(top).Replace("</header>", "</header><p>Never mind.</p>", StringComparison.Ordinal)
        );
        string[] asked = ["audit", Repository.Path("content"), "--theme", theme, "--today", "2026-12-07"];
        var told = Gradus.Run(asked).Output.Split('\n').Where(l => l.Contains("text-not-planned", StringComparison.Ordinal));
        Assert.Contains("It touches 6 clients", Assert.Single(told), StringComparison.Ordinal);
        var json = JsonDocument.Parse(Gradus.Run([.. asked, "--format", "json"]).Output).RootElement.GetProperty("findings");
        Assert.Equal(
            ["hedley", "maud", "nuala", "piers", "rufus", "tamsin"],
            json.EnumerateArray()
                .Where(f => f.GetProperty("rule").GetString() == "text-not-planned")
                .Select(f => f.GetProperty("client").GetString())
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_finding_for_people_has_place_sentence_caret_and_remedy()
    {
        var content = CopyOf("content");
        var exercise = Path.Combine(content, "exercises", "side-lying-foot-lift.md");
        File.WriteAllText(exercise, File.ReadAllText(exercise).Replace("rest 30 s", "rest 30 seconds", StringComparison.Ordinal));
        var answer = Gradus.Run("audit", content, "--today", "2026-12-07");
        Assert.Equal(1, answer.Status);
        var lines = answer.Output.Split('\n');
        Assert.StartsWith("exercises/side-lying-foot-lift.md:8:", lines[0], StringComparison.Ordinal);
        Assert.Contains("  error  dose-unreadable  ", lines[0], StringComparison.Ordinal);
        Assert.Equal(lines[1].IndexOf("seconds", StringComparison.Ordinal), lines[2].IndexOf('^', StringComparison.Ordinal));
        Assert.StartsWith("    ", lines[3], StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_but_the_asked_client_is_spoken_of()
    {
        var answer = Gradus.Run("audit", Repository.Path("content"), "--client", "maud", "--today", "2031-12-01");
        Assert.Equal(0, answer.Status);
        Assert.Contains("[maud]", answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("[rufus]", answer.Output, StringComparison.Ordinal);
    }

    /// <summary>Both are to read German, and no caution has a German text.</summary>
    [Fact]
    public void What_a_shared_file_does_to_several_clients_is_said_once()
    {
        var content = CopyOf("content");
        foreach (var client in (string[])["maud", "rufus"])
        {
            var card = Path.Combine(content, "clients", client, "client.yaml");
            File.WriteAllLines(
                card,
                File.ReadAllLines(card).Where(l => !l.StartsWith("language:", StringComparison.Ordinal)).Append("language: de")
            );
        }

        var answer = Gradus.Run("audit", content, "--today", "2026-12-07");
        Assert.Equal(1, answer.Status);
        var line = Assert.Single(answer.Output.Split('\n'), l =>
            l.StartsWith("cautions/sharp-pain.md", StringComparison.Ordinal)
            && l.Contains(" translation-missing ", StringComparison.Ordinal)
        );
        Assert.EndsWith(" It touches 2 clients: maud, rufus.", line, StringComparison.Ordinal);
    }

    private string CopyOf(string practice)
    {
        var content = Path.Combine(folder, "practice");
        foreach (var file in Repository.Files(practice, ""))
        {
            var path = Path.Combine(content, Path.GetRelativePath(Repository.Path(practice), file));
            Directory.CreateDirectory(Path.GetDirectoryName(path) ?? content);
            File.Copy(file, path);
        }

        return content;
    }
}
