using System.Text.Json.Nodes;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Notes of what readers ask → JSON Schema, draft 2020-12.</summary>
/// <param name="rows">What is said of the keys of a group.</param>
internal sealed class SchemaWriter(IReadOnlyDictionary<(string Group, string Key), string> rows)
{
    private const string SomethingSeen = @"\S";

    private readonly SortedDictionary<string, JsonObject?> inner = new(StringComparer.Ordinal);

    /// <summary>The schema of a whole file. Groups in groups stand under <c>$defs</c>, because one may hold itself.</summary>
    public JsonObject Whole(ValueNotes root)
    {
        var schema = root switch
        {
            { Group: { } group } => Of(group),
            { Items.Group: { } group } => new() { ["type"] = "array", ["items"] = Of(group) },
            _ => Of(root),
        };
        if (inner.Count > 0)
            schema["$defs"] = new JsonObject(inner.Select(i => KeyValuePair.Create<string, JsonNode?>(i.Key, i.Value)));
        return schema;
    }

    private JsonObject Of(ValueNotes value)
    {
        var ways = Scalars(value.Kinds).ToList();
        if (value.Items is { } items)
            ways.Add(new() { ["type"] = "array", ["items"] = Of(items) });
        if (value.Group is { } group)
            ways.Add(new() { ["$ref"] = "#/$defs/" + Named(group) });
        return ways.Count == 1 ? ways[0] : new() { ["anyOf"] = new JsonArray([.. ways]) };
    }

    private string Named(GroupNotes group)
    {
        var name = group.Name.Replace(' ', '-');
        if (inner.TryAdd(name, null))
            inner[name] = Of(group);
        return name;
    }

    private JsonObject Of(GroupNotes group)
    {
        var properties = new JsonObject();
        foreach (var (key, value) in group.Keys)
        {
            var schema = Of(value);
            if (rows.TryGetValue((group.Name, key), out var said))
                schema.Insert(0, "description", said);
            properties[key] = schema;
        }

        var written = new JsonObject { ["type"] = "object" };
        if (properties.Count > 0)
            written["properties"] = properties;
        AddNeeded(written, group);
        if (group.OwnNames is { IsEmpty: false } names)
            written["propertyNames"] = Names(names, group);
        written["additionalProperties"] = group.Own is { } own ? Of(own) : false;
        return written;
    }

    /// <summary>What every reading needed is needed; beside it one of the sets that some reading needed.</summary>
    private static void AddNeeded(JsonObject written, GroupNotes group)
    {
        var needed = group.Needed;
        var always = group.Keys.Select(k => k.Key).Where(key => needed.All(one => one.Contains(key))).ToArray();
        if (always.Length > 0)
            written["required"] = List(always);
        var others = needed
            .Select(one => one.Except(always).Order(StringComparer.Ordinal).ToSeries())
            .Distinct()
            .OrderBy(one => string.Join(' ', one), StringComparer.Ordinal)
            .ToArray();
        if (others.Length > 1 && others.All(one => one.Count > 0))
            written["anyOf"] = new JsonArray([.. others.Select(one => new JsonObject { ["required"] = List(one) })]);
    }

    /// <summary>A key is a text, whatever is written with it. Keys that a reader asks for by name are none of the practice's
    /// own.</summary>
    private static JsonObject Names(ValueNotes names, GroupNotes group)
    {
        var ways = Narrow(names.Kinds)
            .Select(kind =>
                kind switch
                {
                    ValueKind.Whole or ValueKind.Number => new() { ["pattern"] = "^[0-9]+$" },
                    ValueKind.Pattern pattern => new JsonObject { ["pattern"] = pattern.Regex },
                    ValueKind.OneOf one => new() { ["enum"] = List(one.Words) },
                    _ => new() { ["pattern"] = SomethingSeen },
                }
            )
            .Concat(group.Keys.Any() ? [new JsonObject { ["enum"] = List(group.Keys.Select(k => k.Key)) }] : [])
            .ToArray();
        return ways.Length == 1 ? ways[0] : new() { ["anyOf"] = new JsonArray([.. ways]) };
    }

    /// <summary>Where something narrower was asked for, any text is not enough.</summary>
    private static ValueKind[] Narrow(IReadOnlyList<ValueKind> kinds) =>
        kinds.Where(k => k is not ValueKind.Plain).ToArray() is [_, ..] narrow ? narrow : [.. kinds];

    private static IEnumerable<JsonObject> Scalars(IReadOnlyList<ValueKind> kinds)
    {
        var narrow = Narrow(kinds);
        if (narrow is [ValueKind.Plain])
            return [new() { ["type"] = new JsonArray("string", "number", "boolean"), ["pattern"] = SomethingSeen }];
        var words = narrow.OfType<ValueKind.OneOf>().SelectMany(one => one.Words).Distinct(StringComparer.Ordinal).ToArray();
        return narrow
            .Where(k => k is not ValueKind.OneOf)
            .Select(Of)
            .Concat(words.Length > 0 ? [new JsonObject { ["enum"] = List(words) }] : []);
    }

    private static JsonObject Of(ValueKind kind) =>
        kind switch
        {
            ValueKind.Whole whole => new()
            {
                ["type"] = "integer",
                ["minimum"] = whole.Least,
                ["maximum"] = whole.Most,
            },
            ValueKind.Number => new() { ["type"] = "number", ["minimum"] = 0 },
            ValueKind.Pattern { IsOfDigits: true } pattern => new()
            {
                ["type"] = new JsonArray("string", "integer"),
                ["pattern"] = pattern.Regex,
            },
            ValueKind.Pattern pattern => new() { ["type"] = "string", ["pattern"] = pattern.Regex },
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    private static JsonArray List(IEnumerable<string> words) => new([.. words.Select(w => JsonValue.Create(w))]);
}
