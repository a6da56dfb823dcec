using System.Text.Json.Nodes;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What was received, for other programs: <c>{"urgent": [], "logs": [{"log", "client", "form", "new", "more", "known",
/// "refused", "written", "measured", "notCounted", "unread": [{"line", "text"}], "notes": [{"line", "text"}]}]}</c>. Client and
/// form (file, message) are null where nothing was taken; a line of 0 is the whole log.</summary>
internal static class ReceiveJson
{
    public static string Write(Series<ReceivedLog> received) =>
        JsonText.Of(
            new JsonObject
            {
                ["urgent"] = JsonText.ListOf(received.SelectMany(r => r.Urgent).Distinct()),
                ["logs"] = JsonText.ListOf(received, log => new JsonObject
                {
                    ["log"] = log.Owned.Name,
                    ["client"] = log.Owned.Owner?.Id.Text,
                    ["form"] = log.Owned.Reading.Form is { } form ? Kebab.Of(form.ToString()) : null,
                    ["new"] = log.New,
                    ["more"] = log.More,
                    ["known"] = log.Known,
                    ["refused"] = JsonText.ListOf(log.Owned.Refusals),
                    ["written"] = JsonText.ListOf(log.Written),
                    ["measured"] = JsonText.ListOf(log.Measured),
                    ["notCounted"] = JsonText.ListOf(log.NotCounted),
                    ["unread"] = Remarks(log, Level.Warning),
                    ["notes"] = Remarks(log, Level.Note),
                }),
            }
        );

    private static JsonArray Remarks(ReceivedLog log, Level level) =>
        JsonText.ListOf(log.Owned.Reading.Remarks.Where(r => r.Level == level), r => new JsonObject
        {
            ["line"] = r.Line,
            ["text"] = r.Text,
        });
}
