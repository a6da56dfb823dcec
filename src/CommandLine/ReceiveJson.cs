using System.Text.Json;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What was received, for other programs: <c>{"urgent": [], "logs": [{"log", "client", "form", "new", "more", "known",
/// "refused", "notCounted", "unread": [{"line", "text"}], "notes": [{"line", "text"}]}]}</c>. Client and form (file, message) are
/// null where nothing was taken; a line of 0 is the whole log.</summary>
internal static class ReceiveJson
{
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
    };

    public static string Write(Series<ReceivedLog> received) =>
        JsonSerializer.Serialize(
            new
            {
                Urgent = received.SelectMany(r => r.Urgent).Distinct(),
                Logs = received.Select(log => new
                {
                    Log = log.Owned.Name,
                    Client = log.Owned.Owner?.Id.Text,
                    Form = log.Owned.Reading.Form is { } form ? Kebab.Of(form.ToString()) : null,
                    log.New,
                    log.More,
                    log.Known,
                    Refused = log.Owned.Refusals,
                    log.NotCounted,
                    Unread = Remarks(log, Level.Warning),
                    Notes = Remarks(log, Level.Note),
                }),
            },
            Indented
        );

    private static IEnumerable<object> Remarks(ReceivedLog log, Level level) =>
        log.Owned.Reading.Remarks.Where(r => r.Level == level).Select(r => new { r.Line, r.Text });
}
