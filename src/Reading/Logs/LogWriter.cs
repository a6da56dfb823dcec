using System.Globalization;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Entries → CSV, as the page saves it and <see cref="LogReader"/> reads it.</summary>
public static class LogWriter
{
    private const string LineEnd = "\r\n";

    /// <summary>A head, and the lines of each entry.</summary>
    public static string Write(IEnumerable<LogEntry> entries) => Write(entries, ',');

    private static string Write(IEnumerable<LogEntry> entries, char separator) =>
        string.Concat(
            new[] { LogColumns.All.ToDictionary(name => name) }
                .Concat(entries.SelectMany(Lines))
                .Select(line =>
                    string.Join(separator, LogColumns.All.Select(name => Cell(line.GetValueOrDefault(name, ""), separator)))
                    + LineEnd
                )
        );

    /// <summary>A log with entries behind all that stands in it; to the byte what it was before them, in its own encoding and with
    /// its own separator.</summary>
    /// <param name="log">Empty where there is none yet.</param>
    /// <returns>Null where nothing can be written behind it: it is no log, or ends inside a cell.</returns>
    public static byte[]? Behind(ReadOnlySpan<byte> log, IReadOnlyCollection<LogEntry> entries)
    {
        var before = LogText.Of(log);
        if (before.IsGuessed)
            return null;
        if (before.Text.Length == 0)
            return [.. log, .. before.Encoding.GetBytes(Write(entries))];
        if (LogTable.StartOf(before.Text) is not { } start)
            return null;
        var lines = Write(entries, start.Separator);
        var head = lines[..(lines.IndexOf(LineEnd, StringComparison.Ordinal) + LineEnd.Length)];
        if (LogTable.EndsBelow(LogColumns.All, before.Text, start))
            lines = lines[head.Length..];
        byte[] all = [.. log, .. before.Encoding.GetBytes((before.Text[^1] == '\n' ? "" : LineEnd) + lines)];
        return IsSame(log, all, entries) ? all : null;
    }

    private static bool IsSame(ReadOnlySpan<byte> log, byte[] all, IEnumerable<LogEntry> entries) =>
        LogReader
            .Read("", all)
            .Entries.Select(Anywhere)
            .SequenceEqual(LogReader.Read("", log).Entries.Concat(entries).Select(Anywhere));

    private static LogEntry Anywhere(LogEntry entry) => entry with { At = Location.Whole("") };

    /// <summary>Whether a spreadsheet would reckon with it, also behind apostrophes.</summary>
    internal static bool IsFormula(string cell) => cell.TrimStart('\'') is ['=' or '+' or '-' or '@' or '\t' or '\r', ..];

    private static string Cell(string text, char separator)
    {
        var safe = IsFormula(text) ? "'" + text : text;
        return safe != text || safe.AsSpan().IndexOfAny(['"', '\r', '\n', separator]) >= 0
            ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : safe;
    }

    private static IEnumerable<Dictionary<string, string>> Lines(LogEntry entry) =>
        entry.Exercises.Select(e => Line(entry, e)).Prepend(Line(entry));

    private static Dictionary<string, string> Line(LogEntry entry)
    {
        var line = Beginning(entry);
        line["start"] = entry.Start?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "";
        line["kind"] = LogWords<AlternateKind>.Word(entry.Kind);
        line["edition"] = entry.Edition ?? "";
        line["course"] = entry.Course ?? "";
        line["steps-done"] = Number(entry.StepsDone);
        line["steps-planned"] = Number(entry.StepsPlanned);
        line["minutes"] = Number(entry.Minutes);
        line["effort"] = Number(entry.Effort);
        line["pain-before"] = Pain(entry.Before);
        line["pain-during"] = Pain(entry.During);
        line["pain-morning"] = Pain(entry.Morning);
        line["worse-next-morning"] = entry.Worse is { } worse ? Flag(worse) : "";
        line["alarm"] = LogWords<RedFlag>.Word(entry.Alarm);
        line["note"] = entry.Note;
        if (entry.Outcome is LogOutcome.EndedEarly ended)
            Stopped(line, ended.For);
        if (entry.Outcome is LogOutcome.NotToday not)
            line["not-today"] = not.For is { } why ? LogWords<NotTodayReason>.Word(why) : Flag(true);
        return line;
    }

    private static Dictionary<string, string> Line(LogEntry entry, LoggedExercise exercise)
    {
        var line = Beginning(entry);
        line["exercise"] = exercise.Exercise.Text;
        line["side"] = exercise.Side?.Word() ?? "";
        line["sets"] = Number(exercise.Sets);
        line["repetitions"] = Number(exercise.Repetitions);
        line["load"] = exercise.Load;
        line["where"] = Pain(exercise.Pain);
        line["measured"] = string.Join(' ', exercise.Measured.Select(m => Number(m)));
        if (exercise.IsStopped)
            Stopped(line, exercise.For);
        return line;
    }

    private static Dictionary<string, string> Beginning(LogEntry entry) =>
        new(StringComparer.Ordinal)
        {
            ["date"] = entry.Day.Iso(),
            ["session"] = Number(entry.Session),
            ["week"] = Number(entry.Week),
        };

    private static void Stopped(Dictionary<string, string> line, StopReason? why)
    {
        line["stopped"] = Flag(true);
        line["stopped-for"] = LogWords<StopReason>.Word(why);
    }

    private static string Flag(bool said) => said ? "yes" : "no";

    private static string Number(decimal? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static string Place(Region where, Side? side) =>
        side is { } one ? $"{one.Word()} {Kebab.OfWords(where.Name)}" : Kebab.OfWords(where.Name);

    private static string Pain(LoggedPain? pain) =>
        pain is null
            ? ""
            : string.Join(
                ' ',
                new[] { Number(pain.Level), pain.Where is { } where ? Place(where, pain.Side) : "" }.Where(p => p.Length > 0)
            );
}
