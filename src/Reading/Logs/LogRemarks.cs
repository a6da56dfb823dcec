using System.Globalization;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The remarks of one reading, as they are made.</summary>
internal sealed class LogRemarks
{
    private readonly List<LogRemark> said = [];
    private (int Line, string Text, DateOnly Day)? firstTurned;
    private int turned;

    public void Unread(int line, string text, bool cannotWait = false) => said.Add(new(line, Level.Warning, text, cannotWait));

    /// <summary>Something that is not taken and tells of a sign that cannot wait.</summary>
    /// <param name="sign">Null where there is none, and nothing is said.</param>
    public void Alarm(int line, string? sign)
    {
        if (sign is not null)
            Unread(line, $"it was not taken, and it says {Letters.Quoted(sign)}: ask the client today", cannotWait: true);
    }

    public void Note(int line, string text) => said.Add(new(line, Level.Note, text));

    /// <summary>A day that is written as a spreadsheet writes it; said once for all of them.</summary>
    public void Turned(int line, string text, DateOnly day)
    {
        firstTurned ??= (line, text, day);
        turned++;
    }

    public LogReading Reading(LogForm? form, IEnumerable<LogEntry> entries) => new(form, entries.ToSeries(), InOrder());

    private Series<LogRemark> InOrder()
    {
        if (firstTurned is { } first)
            Note(
                first.Line,
                $"the date {Letters.Quoted(first.Text)} is read as {first.Day.Iso()}"
                    + (
                        turned == 1
                            ? ""
                            : string.Create(CultureInfo.InvariantCulture, $", and so are those of {turned - 1} more lines")
                    )
            );
        firstTurned = null;
        return said.OrderBy(r => r.Line).ToSeries();
    }
}
