using System.Text.Json.Nodes;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>Findings for editors and for programs that gather them: SARIF 2.1.0, with the page of every rule that found
/// something. Files are named from the practice, the sites or the theme, never from the root of a disk.</summary>
/// <seealso href="https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/sarif-v2.1.0-errata01-os-complete.html"/>
internal static class FindingSarif
{
    /// <param name="pages">Those of every rule, in the order in which rules are listed.</param>
    /// <param name="unjudged">The clients whose published sites could not be judged.</param>
    public static string Write(Series<Finding> findings, Series<RulePage> pages, SourceFolder practice, Series<ClientId> unjudged)
    {
        var found = findings.Select(f => f.Rule).ToHashSet();
        var told = pages.Where(p => found.Contains(p.Rule)).ToSeries();
        var places = told.Select((page, index) => (page.Rule, index)).ToDictionary(p => p.Rule, p => p.index);
        return JsonText.Of(
            new JsonObject
            {
                ["$schema"] = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
                ["version"] = "2.1.0",
                ["runs"] = new JsonArray(
                    new JsonObject
                    {
                        ["tool"] = new JsonObject
                        {
                            ["driver"] = new JsonObject { ["name"] = "Gradus", ["rules"] = JsonText.ListOf(told, RuleOf) },
                        },
                        ["invocations"] = new JsonArray(
                            new JsonObject
                            {
                                ["executionSuccessful"] = true,
                                ["toolExecutionNotifications"] = JsonText.ListOf(unjudged, NotificationOf),
                            }
                        ),
                        // Without an address: whoever reads it knows where these folders lie, and others need not.
                        ["originalUriBaseIds"] = new JsonObject(
                            Enum.GetValues<FindingFolder>().Select(f => KeyValuePair.Create(BaseOf(f), DescriptionOf(f)))
                        ),
                        ["results"] = JsonText.ListOf(findings, f => ResultOf(f, places[f.Rule], practice)),
                        ["columnKind"] = "utf16CodeUnits",
                    }
                ),
            },
            plain: true
        );
    }

    private static JsonObject RuleOf(RulePage page) =>
        new()
        {
            ["id"] = page.Rule.Text,
            ["shortDescription"] = new JsonObject { ["text"] = page.Summary },
            ["help"] = new JsonObject { ["text"] = page.Text, ["markdown"] = page.Text },
            ["defaultConfiguration"] = new JsonObject { ["level"] = FindingText.Word(page.Level) },
        };

    private static JsonObject ResultOf(Finding finding, int rule, SourceFolder practice)
    {
        var place = new JsonObject
        {
            ["artifactLocation"] = new JsonObject
            {
                ["uri"] = UriOf(FindingFolders.PathOf(finding, practice)),
                ["uriBaseId"] = BaseOf(FindingFolders.Of(finding, practice)),
            },
        };
        if (finding.At.Line >= 1)
            place["region"] = RegionOf(finding);
        var result = new JsonObject
        {
            ["ruleId"] = finding.Rule.Text,
            ["ruleIndex"] = rule,
            ["level"] = FindingText.Word(finding.Level),
            ["message"] = MessageOf($"{finding.Sentence} {finding.Help}"),
            ["locations"] = new JsonArray(new JsonObject { ["physicalLocation"] = place }),
        };
        if (finding.Client is { } client)
            result["properties"] = new JsonObject { ["client"] = client.Text };
        return result;
    }

    private static JsonObject NotificationOf(ClientId client) =>
        new()
        {
            ["level"] = "warning",
            ["message"] = MessageOf(
                $"{client}: an error stands in the way, and the site of before is still there, not judged: tell the client."
            ),
        };

    /// <summary>A brace stands for itself only when it stands there twice (SARIF 2.1.0, 3.11.5).</summary>
    private static JsonObject MessageOf(string text) =>
        new() { ["text"] = text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal) };

    private static JsonObject RegionOf(Finding finding) =>
        new()
        {
            ["startLine"] = finding.At.Line,
            ["startColumn"] = Math.Max(1, finding.At.Column),
            ["endColumn"] = Math.Max(1, finding.At.Column) + finding.Length,
        };

    /// <summary>A name may have letters that an address must not.</summary>
    private static string UriOf(string path) => string.Join('/', path.Split('/').Select(Uri.EscapeDataString));

    private static string BaseOf(FindingFolder folder) => folder.ToString().ToUpperInvariant();

    private static JsonNode? DescriptionOf(FindingFolder folder) =>
        new JsonObject
        {
            ["description"] = new JsonObject
            {
                ["text"] = folder switch
                {
                    FindingFolder.Practice => "The practice's folder, the one that holds practice.md.",
                    FindingFolder.Site => "The folder that holds one site for each client.",
                    FindingFolder.Theme => "The theme's folder.",
                    _ => throw new ArgumentOutOfRangeException(nameof(folder), folder, null),
                },
            },
        };
}
