using System.Text.Encodings.Web;
using System.Text.Json;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>Findings for other programs: <c>{"findings": [{"rule", "level", "client", "file", "line", "column", "message",
/// "help"}]}</c>.</summary>
internal static class FindingJson
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write(Series<Finding> findings) =>
        JsonSerializer.Serialize(
            new
            {
                Findings = findings.Select(f => new Entry(
                    f.Rule.Text,
                    FindingText.Word(f.Level),
                    f.Client?.Text,
                    f.At.File,
                    f.At.Line,
                    f.At.Column,
                    f.Sentence,
                    f.Help
                )),
            },
            Layout
        );

    private sealed record Entry(
        string Rule,
        string Level,
        string? Client,
        string File,
        int Line,
        int Column,
        string Message,
        string Help
    );
}
