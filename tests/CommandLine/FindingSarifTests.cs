using System.Text.Json;
using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

public sealed class FindingSarifTests
{
    private static readonly SourceFolder Practice = SourceFolder.Of([
        new("practice.md", []),
        new("clients/tess/programme.md", []),
        new("exercises/wall sit é.md", []),
        new("clients/tess/session-9.html", []),
    ]);

    private static readonly Finding OfASource = new(
        new("dose-unreadable"),
        Level.Error,
        null,
        new("exercises/wall sit é.md", 8, 7),
        "'{side}' is no dose.",
        "Write it anew.",
        6
    );

    private static readonly Finding OfAPage = new(
        new("caution-altered"),
        Level.Error,
        new("tess"),
        new("session-1.html", 14, 1),
        "A caution is other.",
        "Show it whole."
    );

    private static readonly Finding OfAWholeFile = new(
        new("answers-stale"),
        Level.Note,
        new("tess"),
        Location.Whole("clients/tess/answers.yaml"),
        "They are old.",
        "Ask again."
    );

    [Fact]
    public void A_finding_has_rule_level_sentence_remedy_place_and_client()
    {
        var result = Results(OfAPage)[0];
        Assert.Equal("caution-altered", result.GetProperty("ruleId").GetString());
        Assert.Equal("error", result.GetProperty("level").GetString());
        Assert.Equal("A caution is other. Show it whole.", result.GetProperty("message").GetProperty("text").GetString());
        Assert.Equal("tess", result.GetProperty("properties").GetProperty("client").GetString());
        Assert.Equal(("tess/session-1.html", "SITE", "14:1-2"), PlaceOf(result));
    }

    [Fact]
    public void A_source_is_named_from_the_practice_as_an_address_may_be_written()
    {
        var result = Results(OfASource)[0];
        Assert.Equal(("exercises/wall%20sit%20%C3%A9.md", "PRACTICE", "8:7-13"), PlaceOf(result));
        Assert.False(result.TryGetProperty("properties", out _));
    }

    [Fact]
    public void A_rule_about_pages_that_leads_to_a_source_names_the_practice() =>
        Assert.Equal(
            ("clients/tess/programme.md", "PRACTICE", "3:1-2"),
            PlaceOf(Results(OfAPage with { At = new("clients/tess/programme.md", 3, 1) })[0])
        );

    [Fact]
    public void A_template_is_named_from_the_theme() =>
        Assert.Equal(
            ("session.html", "THEME", "3:1-2"),
            PlaceOf(Results(OfAPage with { Rule = new("theme-broken"), At = new("session.html", 3, 1) })[0])
        );

    /// <summary>Rules about sources speak of files that are missing too.</summary>
    [Fact]
    public void A_whole_file_has_no_region_and_may_be_missing() =>
        Assert.Equal(("clients/tess/answers.yaml", "PRACTICE", ""), PlaceOf(Results(OfAWholeFile)[0]));

    /// <summary>SARIF 2.1.0, 3.11.5: the characters { and } shall be represented by {{ and }}.</summary>
    [Fact]
    public void A_brace_is_written_twice() =>
        Assert.Equal(
            "'{{side}}' is no dose. Write it anew.",
            Results(OfASource)[0].GetProperty("message").GetProperty("text").GetString()
        );

    [Fact]
    public void A_rule_has_its_page_once_and_each_finding_leads_to_it()
    {
        var run = Run(OfASource, OfAPage, OfAPage with { Message = "Another." });
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules").EnumerateArray().ToArray();
        Assert.Equal(["dose-unreadable", "caution-altered"], rules.Select(r => r.GetProperty("id").GetString()));
        Assert.All(run.GetProperty("results").EnumerateArray(), result =>
            Assert.Equal(
                result.GetProperty("ruleId").GetString(),
                rules[result.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString()
            )
        );
        var page = Explanations.All().First(p => p.Rule.Text == "caution-altered");
        Assert.Equal(page.Summary, rules[1].GetProperty("shortDescription").GetProperty("text").GetString());
        Assert.Equal(page.Text, rules[1].GetProperty("help").GetProperty("markdown").GetString());
        Assert.Equal("error", rules[1].GetProperty("defaultConfiguration").GetProperty("level").GetString());
    }

    [Fact]
    public void Every_rule_page_says_how_much_it_weighs()
    {
        var levels = Explanations.All().ToDictionary(p => p.Rule.Text, p => p.Level);
        Assert.Equal(Level.Note, levels["site-too-heavy"]);
        Assert.Equal(Level.Warning, levels["too-many-cautions"]);
        Assert.Equal(Level.Error, levels["caution-altered"]);
    }

    [Fact]
    public void A_site_that_was_not_judged_is_told_without_a_path() =>
        Assert.Equal(
            "tess: an error stands in the way, and the site of before is still there, not judged: tell the client.",
            JsonDocument
                .Parse(FindingSarif.Write([], Explanations.All(), Practice, [new("tess")]))
                .RootElement.GetProperty("runs")[0]
                .GetProperty("invocations")[0]
                .GetProperty("toolExecutionNotifications")[0]
                .GetProperty("message")
                .GetProperty("text")
                .GetString()
        );

    [Fact]
    [Trait("Slow", "yes")]
    public void The_command_says_the_same_as_it_does_in_json_and_no_path_of_the_machine()
    {
        var folder = Repository.Path("content");
        var json = Gradus.Run("audit", folder, "--today", "2031-12-01", "--format", "json");
        var sarif = Gradus.RunApart([], "audit", folder, "--today", "2031-12-01", "--format", "sarif");
        Assert.Equal((json.Status, ""), (sarif.Status, sarif.Error));
        var results = JsonDocument.Parse(sarif.Output).RootElement.GetProperty("runs")[0].GetProperty("results");
        var findings = JsonDocument.Parse(json.Output).RootElement.GetProperty("findings");
        Assert.True(findings.GetArrayLength() > 0);
        Assert.Equal(
            findings.EnumerateArray().Select(f => f.GetProperty("rule").GetString()),
            results.EnumerateArray().Select(f => f.GetProperty("ruleId").GetString())
        );
        Assert.DoesNotContain(Repository.Path(""), sarif.Output, StringComparison.Ordinal);
        Assert.Equal(sarif.Output, Gradus.RunApart([], "audit", folder, "--today", "2031-12-01", "--format", "sarif").Output);
    }

    private static (string? Uri, string? Base, string Region) PlaceOf(JsonElement result)
    {
        var place = result.GetProperty("locations")[0].GetProperty("physicalLocation");
        var file = place.GetProperty("artifactLocation");
        return (
            file.GetProperty("uri").GetString(),
            file.GetProperty("uriBaseId").GetString(),
            place.TryGetProperty("region", out var region)
                ? $"{region.GetProperty("startLine")}:{region.GetProperty("startColumn")}-{region.GetProperty("endColumn")}"
                : ""
        );
    }

    private static JsonElement[] Results(params Finding[] findings) => [.. Run(findings).GetProperty("results").EnumerateArray()];

    private static JsonElement Run(params Finding[] findings) =>
        JsonDocument
            .Parse(FindingSarif.Write(findings.ToSeries(), Explanations.All(), Practice, []))
            .RootElement.GetProperty("runs")[0];
}
