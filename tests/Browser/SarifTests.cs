using System.Text.Json.Nodes;
using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Browser;

/// <summary>What <c>audit --format sarif</c> writes, held against the published schema.</summary>
public sealed class SarifTests
{
    private static readonly SourceFolder Practice = SourceFolder.Of([new("practice.md", [])]);

    [Fact]
    public async Task A_finding_of_every_rule_is_a_document_of_the_schema()
    {
        var pages = Explanations.All();
        var findings = pages
            .SelectMany(
                (page, index) =>
                    new Finding[]
                    {
                        new(page.Rule, page.Level, null, new("practice.md", index + 1, 1), "A {sentence}.", "A remedy.", 3),
                        new(page.Rule, Level.Note, new("tess"), Location.Whole("ä b/c%d.md"), "A sentence.", "A remedy."),
                    }
            )
            .ToSeries();
        Assert.Equal(
            [
                [],
                [],
            ],
            await Faults(Written(findings), Written([]))
        );
    }

    /// <summary>Shows that the schema is asked.</summary>
    [Theory]
    [InlineData("\"level\": \"error\"", "\"level\": \"grave\"")]
    [InlineData("\"startLine\": 1,", "\"startLine\": 0,")]
    [InlineData("\"uri\": \"practice.md\"", "\"uri\": \"a b\"")]
    [InlineData("\"ruleIndex\"", "\"ruleNumber\"")]
    [InlineData("\"version\": \"2.1.0\"", "\"version\": \"2.2.0\"")]
    public async Task A_document_that_says_something_else_is_refused(string said, string instead)
    {
        var text = FindingSarif.Write(
            [new(new("dose-unreadable"), Level.Error, null, new("practice.md", 1, 1), "A sentence.", "A remedy.")],
            Explanations.All(),
            Practice,
            [new("tess")]
        );
        Assert.Contains(said, text, StringComparison.Ordinal);
        var faults = await Faults(JsonNode.Parse(text), JsonNode.Parse(text.Replace(said, instead, StringComparison.Ordinal)));
        Assert.Empty(faults[0]);
        Assert.NotEmpty(faults[1]);
    }

    private static JsonNode? Written(Series<Finding> findings) =>
        JsonNode.Parse(FindingSarif.Write(findings, Explanations.All(), Practice, [new("tess")]));

    private static Task<string[][]> Faults(params JsonNode?[] documents) =>
        Node.Ask<JsonNode?[], string[][]>("check-sarif.mjs", documents);
}
