using System.Text.Json;
using Gradus.Reading;
using Gradus.Tests.House;
using Json.Schema;

namespace Gradus.Tests.Reading;

/// <summary>The schemas for editors, asked by JsonSchema.Net of the files of this house and the mistakes of the tables here;
/// tests/Browser asks npm ajv.</summary>
public sealed class PracticeSchemasTests(ITestOutputHelper output)
{
    private static readonly Dictionary<string, JsonSchema> Read = SchemaFiles.Schemas.ToDictionary(
        s => s.File,
        s => JsonSchema.FromText(s.Text),
        StringComparer.Ordinal
    );

    [Fact]
    public void They_are_the_same_each_time_and_name_a_draft()
    {
        Assert.Equal(SchemaFiles.Schemas, PracticeSchemas.All());
        Assert.All(SchemaFiles.Schemas, s =>
        {
            using var document = JsonDocument.Parse(s.Text);
            Assert.Equal("https://json-schema.org/draft/2020-12/schema", document.RootElement.GetProperty("$schema").GetString());
        });
    }

    [Fact]
    public void Of_every_key_it_was_seen_what_it_may_be() =>
        Assert.Empty(PracticeSchemas.Keys().Where(k => !k.IsSeen).Select(k => $"{k.Group}: {k.Key}"));

    /// <summary>The tables of the format are held against the readers elsewhere; so no key is read that the schemas do not
    /// have.</summary>
    [Fact]
    public void They_have_the_keys_of_the_format_and_a_sentence_for_each() =>
        Assert.Equal(
            FormatPage.Rows().Keys.Select(k => $"{k.Group}: {k.Key}").Order(StringComparer.Ordinal),
            PracticeSchemas
                .Keys()
                .Where(k => k.Key.Length > 0 && !k.Group.Contains("edition", StringComparison.Ordinal))
                .Where(k => k is not ("what weeks ask", _, _) and not ("answers", "pain-now", _) and not ("a catalogue", _, _))
                .Select(k => $"{k.Group}: {k.Key}")
                .Distinct()
                .Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_good_file_is_taken()
    {
        var good = SchemaCases.Good();
        foreach (var kind in good.GroupBy(c => c.Schema).OrderBy(k => k.Key, StringComparer.Ordinal))
            output.WriteLine($"{kind.Key, -40}{kind.Count(), 4} good");
        Assert.Empty(good.Where(c => !IsTaken(c)).Select(c => c.Name));
        Assert.Equal(
            Read.Keys.Order(StringComparer.Ordinal),
            good.Select(c => c.Schema).Distinct().Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Every_mistake_of_shape_is_refused()
    {
        var (bad, taken) = (SchemaCases.Bad(), new List<string>());
        foreach (var rule in bad.GroupBy(c => c.Rule).OrderBy(r => r.Key, StringComparer.Ordinal))
        {
            var unseen = rule.Where(IsTaken).ToArray();
            output.WriteLine($"{rule.Key, -24}{rule.Count(), 4} rows {rule.Count() - unseen.Length, 4} refused");
            if (rule.Key is "key-unknown" or "key-missing" or "value-wrong")
                taken.AddRange(unseen.Select(c => c.Name));
        }

        Assert.Equal(OfMeaning().Order(StringComparer.Ordinal), taken.Order(StringComparer.Ordinal));
    }

    /// <summary>What no schema can say: keys twice, what hangs on another key, file or day, and what a text means.</summary>
    private static IEnumerable<string> OfMeaning() =>
        File.ReadLines(Repository.Path("tests", "Reading", "Schemas", "of-meaning.txt")).Skip(2);

    private static bool IsTaken(SchemaCase asked)
    {
        using var document = JsonDocument.Parse(asked.Value?.ToJsonString() ?? "null");
        return Read[asked.Schema].Evaluate(document.RootElement).IsValid;
    }
}
