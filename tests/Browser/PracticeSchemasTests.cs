using System.Text.Json;
using System.Text.Json.Nodes;
using Gradus.Tests.House;
using Gradus.Tests.Reading;
using Json.Schema;

namespace Gradus.Tests.Browser;

/// <summary>The schemas for editors, asked by npm ajv and by JsonSchema.Net of good files, and of each of them with one mistake
/// in each place; in <c>tests/run</c> once for each place that a schema has, however many files have something there.</summary>
public sealed class PracticeSchemasTests(ITestOutputHelper output)
{
    [Fact]
    public async Task Both_take_what_is_good_and_refuse_the_same()
    {
        var good = SchemaFiles.Good().ToArray();
        var made = good.SelectMany(one => Mistakes(one.Value).Select(m => (m.Kind, m.Place, Case: one with { Value = m.Value })));
        var bad = (LongProof.Whole ? made : made.DistinctBy(m => (m.Case.Schema, m.Kind, m.Place))).ToArray();
        var taken = await Node.Ask<object, bool[]>(
            "check-schemas.mjs",
            new
            {
                schemas = SchemaFiles.Schemas.ToDictionary(s => s.File, s => JsonNode.Parse(s.Text), StringComparer.Ordinal),
                cases = good.Concat(bad.Select(b => b.Case)).Select(c => new { schema = c.Schema, value = c.Value }),
            }
        );
        Assert.Empty(good.Where((_, index) => !taken[index]).Select(c => c.Name));
        var read = SchemaFiles.Schemas.ToDictionary(s => s.File, s => JsonSchema.FromText(s.Text), StringComparer.Ordinal);
        Assert.All(good.Concat(bad.Select(b => b.Case)).Index(), c =>
        {
            using var document = JsonDocument.Parse(c.Item.Value?.ToJsonString() ?? "null");
            Assert.Equal(taken[c.Index], read[c.Item.Schema].Evaluate(document.RootElement).IsValid);
        });
        foreach (var kind in bad.Index().GroupBy(b => b.Item.Kind))
        {
            var refused = kind.Count(b => !taken[good.Length + b.Index]);
            output.WriteLine($"{kind.Key, -24}{kind.Count(), 6} made {refused, 6} refused");
            if (kind.Key is "no value" or "a group for a text")
                Assert.Equal(kind.Count(), refused);
        }
    }

    /// <summary>Each kind in each place that has something; the place as the keys that lead there.</summary>
    private static IEnumerable<(string Kind, string Place, JsonNode? Value)> Mistakes(JsonNode? good)
    {
        foreach (var path in Places(good, []).ToArray())
        {
            var place = string.Join('/', path.Select(step => step is int ? "" : step));
            switch (At(good, path))
            {
                case JsonObject map:
                    yield return (
                        "a key that nobody knows",
                        place,
                        With(good, path, inner => inner!.AsObject().Add("zzz zzz", 1))
                    );
                    foreach (var key in map.Select(e => e.Key).ToArray())
                        yield return (
                            "a key left out",
                            $"{place}/{key}",
                            With(good, path, inner => inner!.AsObject().Remove(key))
                        );
                    break;
                case JsonArray:
                    yield return (
                        "a group in a list",
                        place,
                        With(good, path, inner => inner!.AsArray().Add(new JsonObject { ["zzz"] = 1 }))
                    );
                    break;
                case JsonValue when path.Length > 0:
                    yield return ("a group for a text", place, Put(good, path, new JsonObject { ["zzz"] = 1 }));
                    yield return ("no value", place, Put(good, path, null));
                    yield return ("another text", place, Put(good, path, "Zzz zzz"));
                    break;
            }
        }
    }

    private static IEnumerable<object[]> Places(JsonNode? node, object[] path) =>
        node switch
        {
            JsonObject map => map.SelectMany(e => Places(e.Value, [.. path, e.Key])).Prepend(path),
            JsonArray list => list.SelectMany((item, index) => Places(item, [.. path, index])).Prepend(path),
            _ => [path],
        };

    private static JsonNode? At(JsonNode? node, IEnumerable<object> path) =>
        path.Aggregate(node, (inner, step) => step is int index ? inner?[index] : inner?[(string)step]);

    private static JsonNode? With(JsonNode? good, object[] path, Action<JsonNode?> change)
    {
        var changed = good?.DeepClone();
        change(At(changed, path));
        return changed;
    }

    private static JsonNode? Put(JsonNode? good, object[] path, JsonNode? value) => With(good, path[..^1], around =>
        {
            if (path[^1] is int index)
                around!.AsArray()[index] = value;
            else
                around!.AsObject()[(string)path[^1]] = value;
        });
}
