using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>log.csv</c>: what came back from a client. What cannot be read of it is a warning: nobody who trains should be
/// without pages because a note of the past is smudged.</summary>
internal static class KeptLogReader
{
    /// <summary>Each session once, in the order of the days.</summary>
    public static Series<LogEntry> Read(SourceFolder folder, ClientId client, Findings findings)
    {
        var path = LogFile.PathOf(client);
        if (!folder.Has(path))
            return [];
        var reading = Opened(folder, path);
        foreach (var remark in reading.Remarks.Where(r => r.Level != Level.Note))
            findings.Add(
                new(
                    Faults.LogUnreadable,
                    Level.Warning,
                    null,
                    remark.Line == 0 ? Location.Whole(path) : new(path, remark.Line, 1),
                    $"The log cannot be read here: {remark.Text}.",
                    "Mend it as src/Reading/Logs/log-format.md says, or let it stand: what can be read is."
                )
            );
        return LogBook.Joined(reading.Entries);
    }

    private static LogReading Opened(SourceFolder folder, string path)
    {
        try
        {
            return LogReader.Read(path, folder.Size(path), () => new MemoryStream(folder.Read(path)));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return new(null, [], [new(0, Level.Warning, "it cannot be opened")]);
        }
    }
}
