using Gradus.Domain;
using nietras.SeparatedValues;

namespace Gradus.Reading;

/// <summary>A log as CSV: a line for each session, and below it one for each of its exercises.</summary>
internal sealed class LogTable
{
    /// <summary>Of somebody who trains every day for years; what has more was made to be slow.</summary>
    private const int MostLines = 100_000;

    private static readonly char[] Separators = [',', ';', '\t'];

    private readonly LogRemarks remarks;
    private readonly List<LogEntry> entries = [];
    private readonly List<List<LoggedExercise>> exercises = [];
    private readonly List<(DateOnly Day, int Session, int Line, LoggedExercise Exercise)> waiting = [];
    private readonly string name;
    private readonly HashSet<string> unknown = new(StringComparer.Ordinal);
    private LogColumns? columns;

    private LogTable(string name, LogRemarks remarks) => (this.name, this.remarks) = (name, remarks);

    /// <summary>Where the first head stands, and what separates its cells; null where there is none.</summary>
    public static LogStart? StartOf(string text)
    {
        var (at, number) = (0, 1);
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            foreach (var separator in Separators)
            {
                if (
                    line.Length < 4096
                    && line.Contains("date", StringComparison.OrdinalIgnoreCase)
                    && line.Contains("session", StringComparison.OrdinalIgnoreCase)
                    && LogColumns.In([.. line.ToString().Split(separator).Select(c => c.Trim().Trim('"'))]) is not null
                )
                    return new(at, number, separator);
            }

            at += line.Length;
            at += text.AsSpan(at) is ['\r', '\n', ..] ? 2 : 1;
            number++;
        }

        return null;
    }

    public static LogReading Read(string name, string text, LogStart start, LogRemarks remarks)
    {
        var table = new LogTable(name, remarks);
        if (!string.IsNullOrWhiteSpace(text[..start.At].Replace("\"", "", StringComparison.Ordinal)))
            remarks.Note(1, "what stands before the head is no line of a log, and was left out");
        foreach (var (number, row) in RowsOf(text, start).Index())
        {
            if (number == MostLines)
            {
                remarks.Unread(row.Line, "there are more than 100,000 lines here, and none from here on was taken");
                break;
            }

            if (row.IsOpen)
                remarks.Unread(row.Line, "a quotation mark is never closed, so nothing from here on was taken");
            else
                table.Read(row);
        }

        table.Settle();
        return remarks.Reading(LogForm.File, table.entries.Zip(table.exercises, (e, x) => e with { Exercises = x.ToSeries() }));
    }

    /// <summary>Whether what is written behind the text stands below a head with these columns, in this order.</summary>
    public static bool EndsBelow(Series<string> columns, string text, LogStart start) =>
        RowsOf(text, start).LastOrDefault(row => LogColumns.In(row.Cells) is not null)?.Cells.SequenceEqual(columns) ?? false;

    private static IEnumerable<LogRow> RowsOf(string text, LogStart start)
    {
        using var rows = Sep.New(start.Separator)
            .Reader(o => o with { HasHeader = false, Unescape = true, DisableColCountCheck = true })
            .FromText(text[start.At..]);
        var endsOpen = text is [.., not ('\n' or '\r')];
        foreach (var row in rows)
        {
            if (row.Span.IsWhiteSpace())
                continue;
            var isOpen = row.Span.Count('"') % 2 != 0;
            var isCut = endsOpen && text.AsSpan().EndsWith(row.Span, StringComparison.Ordinal);
            var cells = new string[row.ColCount];
            for (var i = 0; i < cells.Length; i++)
                cells[i] = WithoutApostrophe(row[i].ToString());
            yield return new(cells, row.LineNumberFrom + start.Line - 1, isOpen, isCut);
        }
    }

    /// <summary>The apostrophe that was put before what a spreadsheet would take for a formula.</summary>
    private static string WithoutApostrophe(string cell) => LogWriter.IsFormula(cell) && cell[0] == '\'' ? cell[1..] : cell;

    private void Read(LogRow row)
    {
        var (cells, line) = (row.Cells, row.Line);
        if (LogColumns.In(cells) is { } head)
        {
            columns = head;
            return;
        }

        if (columns is null || cells.All(string.IsNullOrWhiteSpace))
            return;
        var isTaken = false;
        if (cells.Length > columns.Count)
            remarks.Unread(
                line,
                FormattableString.Invariant($"it has {cells.Length} cells, and its head {columns.Count}; not taken")
            );
        else if (cells.Length < columns.Count && row.IsCut)
            remarks.Unread(line, "it is cut off; not taken");
        else
            isTaken = IsTaken(new(columns, cells, line, remarks), cells);
        if (!isTaken)
            remarks.Alarm(line, LogAlarms.In(cells));
    }

    private bool IsTaken(LogLine line, string[] cells)
    {
        foreach (var (place, other) in line.Columns.Others)
            if (place < cells.Length && cells[place].Length > 0 && unknown.Add(other))
                remarks.Note(line.Number, $"the column {Letters.Quoted(other)} is not known here, and was left out");
        if (LogDays.DayOf(line["date"]) is not { } day)
            return false;
        if (line["session"].Whole(1, 9999) is not { } session)
        {
            if (line["session"].IsBlank)
                remarks.Unread(line.Number, "there is no number of a session; not taken");
            return false;
        }

        if (line["exercise"].IsBlank)
            return IsBegun(line, day, session);
        if (line.Exercise() is not { } exercise)
            return false;
        Keep(day, session, line.Number, exercise);
        return true;
    }

    private bool IsBegun(LogLine line, DateOnly day, int session)
    {
        if (line.Session(name, day, session) is not { } entry)
            return false;
        entries.Add(entry);
        exercises.Add([]);
        return true;
    }

    private void Keep(DateOnly day, int session, int line, LoggedExercise exercise)
    {
        if (entries.Count > 0 && entries[^1].Day == day && entries[^1].Session == session)
            exercises[^1].Add(exercise);
        else
            waiting.Add((day, session, line, exercise));
    }

    /// <summary>Lines that were sorted away from their session, where there is but one that they can be of.</summary>
    private void Settle()
    {
        var sessions = entries.Index().ToLookup(e => (e.Item.Day, e.Item.Session), e => e.Index);
        foreach (var (day, session, line, exercise) in waiting)
        {
            if (sessions[(day, session)].ToArray() is [var one])
                exercises[one].Add(exercise);
            else
                remarks.Unread(
                    line,
                    FormattableString.Invariant($"there is no line of session {session} on {day.Iso()} above it; not taken")
                );
        }
    }
}

/// <summary>Where the first head of a log stands.</summary>
/// <param name="At">How many letters stand before it.</param>
/// <param name="Line">From 1.</param>
internal sealed record LogStart(int At, int Line, char Separator);

/// <param name="Line">From 1.</param>
/// <param name="IsOpen">Whether a quotation mark in it is never closed.</param>
/// <param name="IsCut">Whether it is the last one, and nothing ends it.</param>
internal sealed record LogRow(string[] Cells, int Line, bool IsOpen, bool IsCut);
