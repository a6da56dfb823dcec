using System.Text.Json.Nodes;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>Findings for other programs: <c>{"findings": [{"rule", "level", "client", "file", "line", "column", "message",
/// "help"}]}</c>.</summary>
internal static class FindingJson
{
    public static string Write(Series<Finding> findings) =>
        JsonText.Of(new JsonObject { ["findings"] = JsonText.ListOf(findings, f => new JsonObject
                {
                    ["rule"] = f.Rule.Text,
                    ["level"] = FindingText.Word(f.Level),
                    ["client"] = f.Client?.Text,
                    ["file"] = f.At.File,
                    ["line"] = f.At.Line,
                    ["column"] = f.At.Column,
                    ["message"] = f.Sentence,
                    ["help"] = f.Help,
                }) }, plain: true);
}
