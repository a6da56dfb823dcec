using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>How a log came.</summary>
public enum LogForm
{
    /// <summary>As CSV.</summary>
    File,

    /// <summary>As lines for a program in a message.</summary>
    Message,
}

/// <summary>What came of reading a log.</summary>
/// <param name="Form">Null where it is no log, or one that cannot be read at all; then a remark says why.</param>
/// <param name="Entries">In the order in which they stand there; two may tell of the same session.</param>
/// <param name="Remarks">What could not be read, and what was read otherwise than it is written, in the order of the
/// lines.</param>
public sealed record LogReading(LogForm? Form, Series<LogEntry> Entries, Series<LogRemark> Remarks)
{
    /// <summary>Whether all of it was read.</summary>
    public bool IsWhole => Form is not null && Remarks.All(r => r.Level == Level.Note);
}

/// <summary>Something to say about a line of a log.</summary>
/// <param name="Line">From 1; 0 means all of it.</param>
/// <param name="Level">A warning where something was not read, a note where it was read otherwise than it is written.</param>
/// <param name="Text">The end of a sentence that begins with the line: "effort 14 is not 0 to 10; not taken".</param>
/// <param name="CannotWait">Whether it may hide a sign that cannot wait.</param>
public sealed record LogRemark(int Line, Level Level, string Text, bool CannotWait = false)
{
    public override string ToString() => Line == 0 ? Text : FormattableString.Invariant($"line {Line}: {Text}");
}
