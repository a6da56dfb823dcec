using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

/// <param name="Name">The file, and for a bad one what is wrong in the words of the reader.</param>
/// <param name="Schema">The file of its schema.</param>
/// <param name="Rule">Of the reader; empty for a good file.</param>
internal sealed record SchemaCase(string Name, string Schema, JsonNode? Value, string Rule, string Message);

/// <summary>Files of the practices in this house, as an editor holds them against their schemas.</summary>
internal static partial class SchemaFiles
{
    private static readonly string[] Folders =
    [
        "content",
        "tests/Auditing/little-practice",
        "src/CommandLine/Starter/practice",
        "src/ThemeCheck/Torture",
    ];

    /// <summary>What stands for days in a starter file.</summary>
    [GeneratedRegex("@(today|monday|pause-from|pause-until)@", RegexOptions.CultureInvariant)]
    private static partial Regex Day();

    public static readonly Series<PracticeSchema> Schemas = PracticeSchemas.All();

    /// <summary>Without a fault of reading.</summary>
    public static IEnumerable<SchemaCase> Good() =>
        from folder in Folders
        let practice = SourceFolder.Open(Repository.Path(folder.Split('/')))
        from path in practice.Paths
        let text = Day().Replace(Encoding.UTF8.GetString(practice.Read(path)), "2026-12-07")
        let one = Of($"{folder} {path}", path, text.Replace("\r\n", "\n", StringComparison.Ordinal), "", "")
        where one is not null
        select one;

    /// <summary>Null where there is no schema for such a file, or its YAML cannot be read at all.</summary>
    public static SchemaCase? Of(string name, string path, string text, string rule, string message) =>
        PracticeSchemas.FileOf(path) is { } schema && YamlAsJson.TryRead(Yaml(path, text), out var value)
            ? new(name, schema, value, rule, message)
            : null;

    private static string Yaml(string path, string text) =>
        path.EndsWith(".md", StringComparison.Ordinal)
            ? text.Split("---\n") is [_, var header, ..]
                ? header
                : ""
            : text;
}
