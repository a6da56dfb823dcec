using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>One line of a log as CSV.</summary>
/// <param name="Number">From 1.</param>
internal sealed record LogLine(LogColumns Columns, string[] Cells, int Number, LogRemarks Remarks)
{
    public LogField this[string name] => new(name, Columns.Of(Cells, name).Trim(), Number, Remarks);

    /// <summary>Null (and a remark) where it has no week.</summary>
    public LogEntry? Session(string file, DateOnly day, int session)
    {
        if (this["week"].Whole(1, 9999) is not { } week)
        {
            if (this["week"].IsBlank)
                Remarks.Unread(Number, "there is no number of a week; not taken");
            return null;
        }

        return new(
            day,
            LogDays.TimeOf(this["start"]),
            session,
            week,
            this["kind"].Is("full") ? null : this["kind"].Word<AlternateKind>(),
            this["course"].Key(),
            this["edition"].Edition(),
            Outcome(),
            this["steps-done"].Whole(0, 9999),
            this["steps-planned"].Whole(0, 9999),
            this["minutes"].Number(0, 1440),
            this["effort"].Whole(0, 10),
            this["pain-before"].Pain(),
            this["pain-during"].Pain() ?? (Columns.HasPain ? OldPain() : this["where"].Pain()),
            this["pain-morning"].Pain(),
            this["worse-next-morning"].Flag(),
            this["alarm"].Alarm(),
            [],
            Columns.Of(Cells, "note"),
            new(file, Number, 1)
        );
    }

    /// <summary>Null (and a remark) where its id is none.</summary>
    public LoggedExercise? Exercise()
    {
        if (this["exercise"].Exercise() is not { } id)
        {
            Remarks.Unread(Number, $"exercise {Letters.Quoted(this["exercise"].Text)} is no id; not taken");
            return null;
        }

        var reason = this["stopped-for"].Word<StopReason>();
        return new(
            id,
            Columns.IsOld ? null : this["side"].Side(),
            this["sets"].Whole(0, 1000),
            this["repetitions"].Whole(0, 9999),
            Columns.Of(Cells, "load"),
            Columns.IsOld ? OldPain() : this["where"].Pain(),
            this["stopped"].Flag() == true || reason is not null,
            reason,
            this["measured"].Numbers()
        );
    }

    private LogOutcome Outcome()
    {
        var notToday = this["not-today"];
        if (!notToday.IsBlank)
            return new LogOutcome.NotToday(notToday.Is("yes") ? null : notToday.Word<NotTodayReason>());
        var reason = this["stopped-for"].Word<StopReason>();
        return this["stopped"].Flag() == true || reason is not null ? new LogOutcome.EndedEarly(reason) : new LogOutcome.Done();
    }

    /// <summary>As one number, a place and a side had a column each.</summary>
    private LoggedPain? OldPain() =>
        this["where"].PainAt(this["pain"].Whole(0, 10), this["side"].Text, this["where"].Text.ToLowerInvariant());
}
