using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A client's programme that comes from a shared one → the programme as this client does it.</summary>
internal static class FollowedReader
{
    public static Programme? Read(
        SourceFile sheet,
        Headed headed,
        Fields fields,
        KnownIds known,
        DoseSettings settings,
        IReadOnlyDictionary<string, SharedProgramme?> shared
    )
    {
        var from = fields.NeedMention("from");
        var start = fields.NeedDate("start");
        var followed = from is null ? null : Named(sheet, from, shared);
        var weeks = followed?.Weeks ?? ProgrammeReader.WeeksLimit;
        var pauses = PauseReader.In(fields, start, weeks);
        var calendar = start is { } first ? new WeekCalendar(first, pauses) : null;
        var retest = ProgrammeReader.RetestIn(fields, calendar, weeks);
        var days = DaysIn(fields, followed);
        var minutes = fields.Whole("minutes", 1, Client.MostMinutes);
        var differences = followed is null ? [] : DifferenceReader.Read(fields, followed, new UseReader(weeks, known, settings));
        if (followed is null)
            fields.Take("differences");
        fields.Done();
        var own = headed.Body.Trim().Length > 0;
        var letter = own ? ProgrammeReader.Letter(sheet, headed, known) : followed?.Letter;
        if (from is null || start is null || followed is null || letter is null || calendar is null)
            return null;
        return new(
            followed.Title,
            start.Value,
            followed.Weeks,
            followed.Lighter,
            Own(followed.Sessions),
            Own(followed.Alternates),
            followed.MoveOn,
            letter,
            followed.LighterAt,
            sheet.Whole
        )
        {
            Retest = retest
                ?? (followed.RetestWeek is { } week ? new(calendar.FirstDayOf(week), calendar.LastDayOf(week)) : null),
            Pauses = pauses,
            From = new(from, differences, days.Keys.Order(StringComparer.Ordinal).ToSeries(), minutes, own),
        };

        Series<ProgrammeSession> Own(Series<ProgrammeSession> sessions) =>
            sessions
                .Select(s => Difference.Applied(s, differences))
                .Select(s => days.TryGetValue(s.InsteadOf?.Value ?? s.Name, out var other) ? s with { Days = other } : s)
                .ToSeries();
    }

    /// <summary>The client's programme, with the client's name in the letter.</summary>
    public static Programme Addressed(Client client) =>
        client.Programme with
        {
            Letter = client.Programme.Letter.With(inline =>
                inline is Inline.Placeholder { Name: SharedProgramme.NamePlaceholder } ? new Inline.Plain(client.Name) : inline
            ),
        };

    public static SharedProgramme? Named(
        SourceFile sheet,
        Mention<string> from,
        IReadOnlyDictionary<string, SharedProgramme?> shared
    )
    {
        if (shared.TryGetValue(from.Value, out var followed) && followed is not null)
            return followed;
        if (shared.ContainsKey(from.Value))
            sheet.Fault(
                Faults.FileUnreadable,
                from.At,
                $"{SharedProgramme.PathOf(from.Value)} cannot be read, so that nothing comes of it.",
                "Correct what is wrong with that file.",
                from.Value.Length
            );
        else
            sheet.Fault(
                Faults.IdUnknown,
                from.At,
                $"There is no shared programme {Quote.Of(from.Value)}.",
                Nearest.Ask(
                    from.Value,
                    shared.Keys.Order(StringComparer.Ordinal),
                    $"Write {SharedProgramme.PathOf("ID")}, or the programme itself in this file."
                ),
                from.Value.Length
            );
        return null;
    }

    /// <summary>Days of the client's own, by the names of the sessions.</summary>
    private static Dictionary<string, SessionDays> DaysIn(Fields fields, SharedProgramme? followed)
    {
        var own = new Dictionary<string, SessionDays>(StringComparer.Ordinal);
        if (fields.Group("days", "days") is not { } days)
            return own;
        foreach (var entry in days.OwnEntries)
        {
            if (followed is not null && followed.Sessions.All(s => s.Name != entry.Key))
                fields.SourceFile.Fault(
                    Faults.IdUnknown,
                    entry.KeyAt,
                    $"There is no session {Quote.Of(entry.Key)} in {SharedProgramme.PathOf(followed.Id)}.",
                    Nearest.Ask(entry.Key, followed.Sessions.Select(s => s.Name), "Write the name of one of its sessions."),
                    entry.Key.Length
                );
            else if (SessionReader.DaysIn(fields.SourceFile, entry.Key, entry.Value) is { } said)
                own[entry.Key] = said;
        }

        return own;
    }
}
