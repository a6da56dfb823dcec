using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>Findings for editors and for programs that gather them: SARIF 2.1.0, with the page of every rule that found
/// something. Files are named from the practice, the sites or the theme, never from the root of a disk.</summary>
/// <seealso href="https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/sarif-v2.1.0-errata01-os-complete.html"/>
internal static class FindingSarif
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <param name="pages">Those of every rule, in the order in which rules are listed.</param>
    /// <param name="unjudged">The clients whose published sites could not be judged.</param>
    public static string Write(Series<Finding> findings, Series<RulePage> pages, SourceFolder practice, Series<ClientId> unjudged)
    {
        var found = findings.Select(f => f.Rule).ToHashSet();
        var told = pages.Where(p => found.Contains(p.Rule)).ToSeries();
        var places = told.Select((page, index) => (page.Rule, index)).ToDictionary(p => p.Rule, p => p.index);
        return JsonSerializer.Serialize(
            new Dictionary<string, object>(StringComparer.Ordinal)
            {
                ["$schema"] = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
                ["version"] = "2.1.0",
                ["runs"] = new[]
                {
                    new
                    {
                        Tool = new { Driver = new { Name = "Gradus", Rules = told.Select(RuleOf) } },
                        Invocations = new[]
                        {
                            new
                            {
                                ExecutionSuccessful = true,
                                ToolExecutionNotifications = unjudged.Select(NotificationOf).ToArray(),
                            },
                        },
                        // Without an address: whoever reads it knows where these folders lie, and others need not.
                        OriginalUriBaseIds = Enum.GetValues<FindingFolder>().ToDictionary(BaseOf, DescriptionOf),
                        Results = findings.Select(f => ResultOf(f, places[f.Rule], practice)),
                        ColumnKind = "utf16CodeUnits",
                    },
                },
            },
            Layout
        );
    }

    private static object RuleOf(RulePage page) =>
        new
        {
            Id = page.Rule.Text,
            ShortDescription = new { Text = page.Summary },
            Help = new { page.Text, Markdown = page.Text },
            DefaultConfiguration = new { Level = FindingText.Word(page.Level) },
        };

    private static object ResultOf(Finding finding, int rule, SourceFolder practice) =>
        new
        {
            RuleId = finding.Rule.Text,
            RuleIndex = rule,
            Level = FindingText.Word(finding.Level),
            Message = MessageOf($"{finding.Sentence} {finding.Help}"),
            Locations = new[]
            {
                new
                {
                    PhysicalLocation = new
                    {
                        ArtifactLocation = new
                        {
                            Uri = UriOf(FindingFolders.PathOf(finding, practice)),
                            UriBaseId = BaseOf(FindingFolders.Of(finding, practice)),
                        },
                        Region = RegionOf(finding),
                    },
                },
            },
            Properties = finding.Client is { } client ? new { Client = client.Text } : null,
        };

    private static object NotificationOf(ClientId client) =>
        new
        {
            Level = "warning",
            Message = MessageOf(
                $"{client}: an error stands in the way, and the site of before is still there, not judged: tell the client."
            ),
        };

    /// <summary>A brace stands for itself only when it stands there twice (SARIF 2.1.0, 3.11.5).</summary>
    private static object MessageOf(string text) =>
        new { Text = text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal) };

    private static object? RegionOf(Finding finding) =>
        finding.At.Line < 1
            ? null
            : new
            {
                StartLine = finding.At.Line,
                StartColumn = Math.Max(1, finding.At.Column),
                EndColumn = Math.Max(1, finding.At.Column) + finding.Length,
            };

    /// <summary>A name may have letters that an address must not.</summary>
    private static string UriOf(string path) => string.Join('/', path.Split('/').Select(Uri.EscapeDataString));

    private static string BaseOf(FindingFolder folder) => folder.ToString().ToUpperInvariant();

    private static object DescriptionOf(FindingFolder folder) =>
        new
        {
            Description = new
            {
                Text = folder switch
                {
                    FindingFolder.Practice => "The practice's folder, the one that holds practice.md.",
                    FindingFolder.Site => "The folder that holds one site for each client.",
                    FindingFolder.Theme => "The theme's folder.",
                    _ => throw new ArgumentOutOfRangeException(nameof(folder), folder, null),
                },
            },
        };
}
