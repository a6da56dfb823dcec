using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Gradus.Domain;

namespace Gradus.Reading;

/// <param name="File">Its name: "client.schema.json".</param>
/// <param name="Path">Which files it is for, as "clients/ID/client.yaml".</param>
/// <param name="Text">JSON Schema, draft 2020-12.</param>
public sealed record PracticeSchema(string File, string Path, string Text);

/// <summary>A JSON Schema for every header and every YAML file of a practice, for editors. It is not written by anybody: the
/// readers read the examples of <c>practice-format.md</c>, and what they ask for is noted. It says what a file may look like;
/// whether ids are known, days fit together and texts are good stays with the readers.</summary>
public static class PracticeSchemas
{
    /// <summary>The folder of a practice that they lie in; the readers pass it over.</summary>
    public const string Folder = "schemas";

    public const string Ending = ".schema.json";

    private static readonly JsonSerializerOptions Written = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>In the order of <c>practice-format.md</c>; the same bytes each time.</summary>
    public static Series<PracticeSchema> All()
    {
        var notes = Noted();
        var rows = FormatPage.Rows();
        return SchemaKind
            .All.Select(kind => new PracticeSchema(kind.Name + Ending, kind.Path, Text(kind, notes.Of(Specimen(kind)), rows)))
            .ToSeries();
    }

    /// <summary>The schema's file for a file of a practice; null where there is none.</summary>
    public static string? FileOf(string path) => SchemaKind.Of(path) is { } kind ? kind.Name + Ending : null;

    /// <summary>Every key that a reader asks for, as the group and the key, and whether it was seen what it may be.</summary>
    internal static Series<(string Group, string Key, bool IsSeen)> Keys()
    {
        var notes = Noted();
        var keys = new List<(string, string, bool)>();
        var seen = new HashSet<GroupNotes>();
        foreach (var kind in SchemaKind.All)
            Look(notes.Of(Specimen(kind))?.Root ?? new());
        return keys.ToSeries();

        void Look(ValueNotes value)
        {
            if (value.Items is { } items)
                Look(items);
            if (value.Group is not { } group || !seen.Add(group))
                return;
            foreach (var (key, inside) in group.Keys)
            {
                keys.Add((group.Name, key, !inside.IsEmpty));
                Look(inside);
            }

            if (group.Own is { } own)
            {
                keys.Add((group.Name, "", !own.IsEmpty));
                Look(own);
            }
        }
    }

    private static ReadingNotes Noted()
    {
        var notes = new ReadingNotes();
        foreach (var specimen in FormatPage.Specimens())
            PracticeReader.Read(specimen.Noting(notes), []);
        return notes;
    }

    /// <summary>A path of that kind.</summary>
    private static string Specimen(SchemaKind kind) =>
        kind
            .Path.Replace("LANG", "de", StringComparison.Ordinal)
            .Replace("ID", "x", StringComparison.Ordinal)
            .Replace("N.yaml", "1.yaml", StringComparison.Ordinal);

    private static string Text(SchemaKind kind, FileNotes? notes, IReadOnlyDictionary<(string, string), string> rows)
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = kind.Path.EndsWith(".md", StringComparison.Ordinal) ? $"The header of {kind.Path}" : kind.Path,
        };
        foreach (var (key, value) in new SchemaWriter(rows).Whole(notes?.Root ?? new()).ToArray())
            schema[key] = value?.DeepClone();
        return schema.ToJsonString(Written) + "\n";
    }
}
